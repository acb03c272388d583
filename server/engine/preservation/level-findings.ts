import type { FormulaContext } from '#engine/formula/context.ts'
import { nameOf } from '#engine/formula/say.ts'
import { GROUP_NAME } from './covers.ts'
import { atWork, groupLevels } from './levels.ts'
import { likeLotions } from './lotions.ts'
import type { SubstanceState } from './substance.ts'
import { GROUPS } from './tables.ts'
import type { LevelRow } from './tables.ts'
import { list, spanText } from './texts.ts'
import { cite, listed } from './told.ts'
import type { Told } from './told.ts'
import { agentsHere } from './work.ts'

const rowText = ({ source, locator, access }: LevelRow): string => `${source}, ${locator || 'no locator'}, ${access}`

/** Each source once, the row with the lowest number standing for it. */
const onePerSource = (rows: readonly LevelRow[]): LevelRow[] => [
  ...new Map([...rows].sort((a, b) => (a.id < b.id ? 1 : -1)).map((row) => [rowText(row), row])).values(),
]

function levelsOf(state: SubstanceState, context: FormulaContext, agent: string): Told[] {
  const levels = groupLevels(state, context.world)
  const here = atWork(state)
  if (levels.size === 0 || !here) return []
  const name = nameOf(state.form?.acid ?? state.subject)
  const what = state.form?.needsAcidForm ? 'undissociated' : 'free'
  const parts = GROUPS.flatMap((group) => {
    const span = levels.get(group)?.span
    if (!span) return []
    const word = here.max < span.min ? 'not reached' : here.min >= span.max ? 'reached' : 'reached in part'
    return [`${GROUP_NAME[group]} ${spanText(span)} (${word})`]
  })
  if (parts.length === 0) return []
  const rows = onePerSource([...levels.values()].flatMap(({ rows: all }) => all))
  return [
    {
      about: [agent],
      message: `${spanText(here)} ${what} ${name.toLowerCase()} in the water phase; growth stops in plain broth at: ${list(parts)}`,
      because: [
        { fact: `${state.in_water_phase_percent.toPrecision(3)} % in all, counted on the water phase` },
        ...(context.ph === null ? [] : [{ fact: `pH ${context.ph}` }]),
        ...rows.map((row) => cite(`inhibitory levels: ${rowText(row)}`, row)),
      ],
      sources: listed(rows),
    },
  ]
}

/** What is at work of each agent beside the levels that stop growth in print. To inhibit is less than to preserve. */
export const levelFindings = (context: FormulaContext): Told[] =>
  agentsHere(context).flatMap(({ subject, substances }) =>
    substances.flatMap((state) => levelsOf(state, context, subject.id)),
  )

/** Tests in a lotion like this one that the agent passed at this level or a lower one. */
export const testedInLotions = (context: FormulaContext): Told[] =>
  agentsHere(context).flatMap(({ subject, share_percent }) =>
    likeLotions(subject, context)
      .filter(({ level_percent }) => level_percent !== null && level_percent <= share_percent)
      .map((row) => ({
        about: [subject.id],
        message: `${row.level_percent ?? ''} % ${nameOf(subject)} alone kept bacteria, yeast and mould down in one lotion with ${row.emulsifier} emulsifier at pH ${row.ph.min} to ${row.ph.max}; another lotion may behave otherwise`,
        because: [cite(`lowest level that preserved (${row.source}, ${row.locator}, ${row.access})`, row)],
        sources: listed([row]),
      })),
  )
