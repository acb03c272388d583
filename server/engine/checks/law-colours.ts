import type { FormulaContext, Substance } from '#engine/formula/context.ts'
import type { Check } from './check.ts'
import { because, nameOf } from './say.ts'

type Row = Readonly<Record<string, string>>

const tableOf = ({ world }: FormulaContext): ReadonlyMap<string, Row> =>
  new Map((world.knowledge.tables.get('us-colours') ?? []).map((row) => [row['ingredient'] ?? '', row]))

/** What colours here: by its role in this formula, or by being nothing but a colour. */
const colours = ({ subject }: Substance, context: FormulaContext): boolean =>
  context.rolesOf(subject)[0]?.role.endsWith('colour') === true

/** Where a colour is not listed, of the areas stated; "anywhere" when it is not on the list at all. */
function missingAt(row: Row | undefined, { areas }: FormulaContext): string | null {
  if (!row) return 'anywhere'
  const out = (['eye', 'lip'] as const).filter((area) => areas?.includes(area) && row[area] === 'no')
  return out.length > 0 ? out.join(' and ') : null
}

/**
 * rule:colour-not-listed. A colour that is not on the US list of colour additives, or not for this area, as the list is
 * remembered. What is on the remembered list is no yes: rule:colour-list-unknown still asks to look it up.
 */
export const colourNotListed: Check = (context) => {
  if (context.formula.market !== 'us') return []
  const table = tableOf(context)
  return context.substances
    .filter((substance) => colours(substance, context))
    .flatMap(({ subject }) => {
      const row = table.get(subject.id)
      const where = missingAt(row, context)
      if (where === null) return []
      const note = row?.['note'] ? ` (${row['note']})` : ''
      return [
        {
          about: [subject.id],
          message: `${nameOf(subject)} is not among the colours listed in the US${where === 'anywhere' ? '' : ` for ${where} products`}${note}, as the list is remembered; look it up. No legal advice`,
          remedy: 'Take a colour that 21 CFR 73, 74 or 82 lists for this use',
          because: [because('used as a colour'), because('list of colour additives from memory, not looked up')],
          sources: [],
        },
      ]
    })
}
