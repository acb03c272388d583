import type { FormulaContext } from '#engine/formula/context.ts'
import { nameOf } from '#engine/formula/say.ts'
import type { Told } from './told.ts'
import { unknownAgents, waitingForPh } from './verdict.ts'
import { agentsHere } from './work.ts'

function phMissing(context: FormulaContext): Told[] {
  const waiting = waitingForPh(context)
  if (waiting.length === 0) return []
  const { say } = context.world
  const names = waiting.map(({ subject }) => nameOf(subject))
  return [
    {
      severity: 'unknown',
      about: waiting.map(({ subject }) => subject.id),
      message: say`The pH is not known, and it decides whether this works: ${say.list(names, 'and')}`,
      remedy: say`Measure the pH of the finished batch`,
      because: [{ fact: say`no pH was given` }],
      sources: [],
    },
  ]
}

const agentsUnknown = (context: FormulaContext): Told[] => {
  const { say } = context.world
  return unknownAgents(context).map((subject) => ({
    severity: 'unknown',
    about: [subject.id],
    message: say`${nameOf(subject)} is said to preserve; its level or the organisms that it covers are not known here`,
    remedy: say`Ask for its spectrum and level, and have a challenge test made`,
    because: [{ fact: say`no level or no spectrum in its record` }],
    sources: [],
  }))
}

/** Agents whose ratio in one of the oils was not found: their free level is not known. */
const ratiosUnknown = (context: FormulaContext): Told[] =>
  agentsHere(context).flatMap(({ subject, substances }) => {
    const { say } = context.world
    const names = substances.filter(({ free }) => free === null).map((state) => say.inside(nameOf(state.subject)))
    if (names.length === 0 || context.water_percent < 1) return []
    return [
      {
        severity: 'unknown' as const,
        about: [subject.id],
        message: say`How ${say.list(names, 'and')} divides between this oil and water was not found: its free level is not known; usual levels are all that speaks for it`,
        because: [{ fact: say`no ratio of oil to water and no log P in the tables` }],
        sources: [],
      },
    ]
  })

/** Surfactants whose hold on an agent was not found: the free level is open below. */
const bindingsUnknown = (context: FormulaContext): Told[] =>
  agentsHere(context).flatMap(({ subject, substances }) => {
    const takers = new Map(
      substances.flatMap(({ takers: all }) =>
        all
          .filter(({ total_to_free, outcome }) => total_to_free === undefined && outcome !== 'kept')
          .map(({ surfactant }) => [surfactant.id, surfactant] as const),
      ),
    )
    if (takers.size === 0) return []
    const { say } = context.world
    const names = [...takers.values()].map((one) => nameOf(one))
    return [
      {
        severity: 'unknown' as const,
        about: [...new Set([subject.id, ...takers.keys()])].sort(),
        message: say`How much of ${nameOf(subject)} the micelles of ${say.list(names, 'and')} take was not found: its free level is open below`,
        because: [{ fact: say`no binding constant of the pair in the tables` }],
        sources: [],
      },
    ]
  })

/** Figures that are missing, each named. */
export const unknownFindings = (context: FormulaContext): Told[] => [
  ...phMissing(context),
  ...agentsUnknown(context),
  ...ratiosUnknown(context),
  ...bindingsUnknown(context),
]
