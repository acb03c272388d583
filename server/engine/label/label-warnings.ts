import { isWarningDue } from '#engine/checks/law-condition.ts'
import { entriesOf } from '#engine/checks/law-entries.ts'
import type { Entry } from '#engine/checks/law-entries.ts'
import { fitOf, givesWay } from '#engine/checks/law-fit.ts'
import { isInForce } from '#engine/checks/law-judge.ts'
import { questionsOf } from '#engine/checks/law-questions.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import type { LimitRow } from '#engine/model/records.ts'
import type { LabelQuestion } from '#engine/model/label.ts'
import type { Say } from '#engine/words/say.ts'

/**
 * Words that a row prescribes, one by one: the tables part them by semicolons. In the EU they stand in the language of the
 * country, in the US in English.
 */
const wordsOf = ({ warning }: LimitRow, { formula, world: { say } }: FormulaContext): string[] =>
  (warning ?? '')
    .split(/\s*;\s*/)
    .filter(Boolean)
    .map((words) => (formula.market === 'eu' ? say.text(words) : words))

/** The row whose words hold: the narrowest rows come with words of their own, so all that bear on the product speak. */
function dueRows(entry: Entry, context: FormulaContext, fits: 'yes' | 'unknown'): LimitRow[] {
  return entry.limit.rows.filter(
    (row) =>
      isInForce(row, entry.limit, context.placedOn) &&
      !givesWay(row, entry.limit.rows, context) &&
      isWarningDue(row, entry.counted_percent) &&
      fitOf(row, context).fits === fits,
  )
}

const spoken = (context: FormulaContext): readonly Entry[] =>
  entriesOf(context).filter(({ limit, members }) => limit.kind === 'law' && members.length > 0)

/** Words that the law prescribes for what is in, in the order of the entries. */
export const warningsOf = (context: FormulaContext): string[] => [
  ...new Set(
    spoken(context)
      .filter(({ concern }) => concern === 'yes')
      .flatMap((entry) => dueRows(entry, context, 'yes').flatMap((row) => wordsOf(row, context))),
  ),
]

const entryName = ({ limit }: Entry, say: Say): string => say`${say.text(limit.act)}, entry ${limit.entry}`

const ids = ({ members }: Entry): string[] => members.map(({ subject }) => subject.id).sort()

/** Words that are due for an area, a use or a spray that nobody stated, where they are not printed anyway. */
export function openWarnings(context: FormulaContext): LabelQuestion[] {
  const { say } = context.world
  const printed = new Set(warningsOf(context))
  return spoken(context).flatMap((entry) =>
    dueRows(entry, context, 'unknown')
      .filter((row) => wordsOf(row, context).some((words) => !printed.has(words)))
      .map((row) => ({
        text: say`${questionsOf(fitOf(row, context).asks, say).join(' ')} If so, these words are due: ${wordsOf(row, context).join('. ')}.`,
        why: entryName(entry, say),
        about: ids(entry),
        sources: [row.source],
      })),
  )
}

/** Words that are printed to be on the safe side, with the condition under which they are due. */
export function conditionalWarnings(context: FormulaContext): LabelQuestion[] {
  const { say } = context.world
  return spoken(context).flatMap((entry) =>
    dueRows(entry, context, 'yes')
      .filter(({ condition }) => condition !== undefined && /label words|label text/i.test(condition))
      .map((row) => ({
        text: say`Are the words “${wordsOf(row, context).join('. ')}” due? ${say.text(row.condition ?? '')}`,
        why: say`${entryName(entry, say)}; printed here until you know that they are not`,
        about: ids(entry),
        sources: [row.source],
      })),
  )
}
