import type { FormulaContext } from '#engine/formula/context.ts'
import { nameOf } from '#engine/formula/say.ts'
import { groupName } from './covers.ts'
import { atWork, groupLevels } from './levels.ts'
import { likeLotions } from './lotions.ts'
import type { SubstanceState } from './substance.ts'
import type { Say } from '#engine/words/say.ts'
import { GROUPS } from './tables.ts'
import type { LevelRow } from './tables.ts'
import { spanText } from './texts.ts'
import { cite, listed } from './told.ts'
import type { Told } from './told.ts'
import { agentsHere } from './work.ts'

const rowKey = ({ source, locator, access }: LevelRow): string => `${source}, ${locator}, ${access}`

const rowText = ({ source, locator, access }: LevelRow, say: Say): string =>
  `${source}, ${locator || say`no locator`}, ${say.text(access)}`

/** Each source once, the row with the lowest number standing for it. */
const onePerSource = (rows: readonly LevelRow[]): LevelRow[] => [
  ...new Map([...rows].sort((a, b) => (a.id < b.id ? 1 : -1)).map((row) => [rowKey(row), row])).values(),
]

function levelsOf(state: SubstanceState, context: FormulaContext, agent: string): Told[] {
  const levels = groupLevels(state, context.world)
  const here = atWork(state)
  if (levels.size === 0 || !here) return []
  const { say } = context.world
  const name = say.inside(nameOf(state.form?.acid ?? state.subject))
  const parts = GROUPS.flatMap((group) => {
    const span = levels.get(group)?.span
    if (!span) return []
    const level = spanText(span, say)
    const germs = groupName(group, say)
    if (here.max < span.min) return [say`${germs} ${level} (not reached)`]
    return [here.min >= span.max ? say`${germs} ${level} (reached)` : say`${germs} ${level} (reached in part)`]
  })
  if (parts.length === 0) return []
  const rows = onePerSource([...levels.values()].flatMap(({ rows: all }) => all))
  return [
    {
      about: [agent],
      message: state.form?.needsAcidForm
        ? say`${spanText(here, say)} undissociated ${name} in the water phase; growth stops in plain broth at: ${say.list(parts, 'and')}`
        : say`${spanText(here, say)} free ${name} in the water phase; growth stops in plain broth at: ${say.list(parts, 'and')}`,
      because: [
        { fact: say`${say.figure(state.in_water_phase_percent.toPrecision(3))} % in all, counted on the water phase` },
        ...(context.ph === null ? [] : [{ fact: say`pH ${context.ph}` }]),
        ...rows.map((row) => cite(say`inhibitory levels: ${rowText(row, say)}`, row)),
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
        message: context.world
          .say`${row.level_percent ?? ''} % ${nameOf(subject)} alone kept bacteria, yeast and mould down in one lotion with ${context.world.say.text(row.emulsifier)} emulsifier at pH ${row.ph.min} to ${row.ph.max}; another lotion may behave otherwise`,
        because: [
          cite(
            context.world
              .say`lowest level that preserved (${row.source}, ${row.locator}, ${context.world.say.text(row.access)})`,
            row,
          ),
        ],
        sources: listed([row]),
      })),
  )
