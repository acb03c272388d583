import type { FormulaContext } from '#engine/formula/context.ts'
import { nameOf } from '#engine/formula/say.ts'
import { lossOf } from './losses.ts'
import type { Told } from './told.ts'
import { agentsHere } from './work.ts'

/** What each surfactant takes of each agent, where a constant or a test of the pair is known. */
export const takenByMicelles = (context: FormulaContext): Told[] =>
  agentsHere(context).flatMap(({ subject, substances }) =>
    substances.flatMap((state) =>
      state.takers.flatMap((taker) => {
        const { say } = context.world
        const loss = lossOf(state, taker, say)
        if (!loss) return []
        return [
          {
            ...(loss.large && { severity: 'warn' as const }),
            about: [...new Set([subject.id, taker.surfactant.id])].sort(),
            message: say`${nameOf(taker.surfactant)} and ${nameOf(state.subject)}: ${loss.text}`,
            because: [
              {
                fact: say`${nameOf(taker.surfactant)} makes up ${say.figure(taker.percent.toPrecision(2))} % of the water phase`,
              },
              ...loss.because,
            ],
            sources: loss.sources,
          },
        ]
      }),
    ),
  )
