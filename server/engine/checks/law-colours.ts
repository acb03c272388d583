import type { FormulaContext, Substance } from '#engine/formula/context.ts'
import type { Say } from '#engine/words/say.ts'
import type { Check } from './check.ts'
import { because, nameOf } from './say.ts'

type Row = Readonly<Record<string, string>>

const tableOf = ({ world }: FormulaContext): ReadonlyMap<string, Row> =>
  new Map((world.knowledge.tables.get('us-colours') ?? []).map((row) => [row['ingredient'] ?? '', row]))

/** What colours here: by its role in this formula, or by being nothing but a colour. */
const colours = ({ subject }: Substance, context: FormulaContext): boolean =>
  context.rolesOf(subject)[0]?.role.endsWith('colour') === true

/** Areas stated for which a colour is not listed; empty when it is not on the list at all, null when nothing is missing. */
function missingAt(row: Row | undefined, { areas }: FormulaContext): ('eye' | 'lip')[] | null {
  if (!row) return []
  const out = (['eye', 'lip'] as const).filter((area) => areas?.includes(area) && row[area] === 'no')
  return out.length > 0 ? out : null
}

function notListed(name: string, missing: readonly string[], say: Say): string {
  const where = say.list(missing.map(say.text), 'and')
  return where === ''
    ? say`${name} is not among the colours listed in the US`
    : say`${name} is not among the colours listed in the US for ${where} products`
}

/**
 * rule:colour-not-listed. A colour that is not on the US list of colour additives, or not for this area, as the list is
 * remembered. What is on the remembered list is no yes: rule:colour-list-unknown still asks to look it up.
 */
export const colourNotListed: Check = (context) => {
  if (context.formula.market !== 'us') return []
  const table = tableOf(context)
  const { say } = context.world
  return context.substances
    .filter((substance) => colours(substance, context))
    .flatMap(({ subject }) => {
      const row = table.get(subject.id)
      const missing = missingAt(row, context)
      if (missing === null) return []
      const said = notListed(nameOf(subject), missing, say)
      const note = row?.['note']
      return [
        {
          about: [subject.id],
          message: note
            ? say`${said} (${say.text(note)}), as the list is remembered; look it up. No legal advice`
            : say`${said}, as the list is remembered; look it up. No legal advice`,
          remedy: say`Take a colour that 21 CFR 73, 74 or 82 lists for this use`,
          because: [because(say`used as a colour`), because(say`list of colour additives from memory, not looked up`)],
          sources: [],
        },
      ]
    })
}
