import type { Api } from '#contract/api.ts'
import type { Formula } from '#web/state/to-formula.ts'
import { call } from './call.ts'
import { useQuestion } from './question.ts'
import type { Question } from './question.ts'

export type PreservationReply = Api['POST /api/preservation']['reply']
export type Agent = PreservationReply['agents'][number]
export type Cover = PreservationReply['covers']['yeast']

/** Is the preservative of this recipe at work? */
export function usePreservation(formula: Formula | null): Question<PreservationReply> {
  return useQuestion({
    key: ['preservation', formula],
    ask: (signal) => call('POST /api/preservation', { ...(formula && { body: { formula } }), signal }),
    when: formula !== null,
    keep: true,
  })
}

/** What is left of each preservative at one pH or one share of oil. */
export interface CurvePoint {
  at: number
  agents: Agent[]
}
export interface PreservationCurves {
  byPh: CurvePoint[]
  byOil: CurvePoint[]
}

const PHS = [3, 3.5, 4, 4.5, 5, 5.5, 6, 6.5, 7, 7.5, 8]
const OILS_PERCENT = [1, 5, 10, 15, 20, 25, 30, 40, 50]
const LEAST_WATER_PERCENT = 20

/**
 * The recipe with another share of oil: its oils stay in their ratio to each other, water makes room.
 * Null when there is no oil, no water to make room, or too little of it.
 */
export function withOil(formula: Formula, oils: readonly string[], oil_percent: number): Formula | null {
  const isOil = ({ ingredient }: Formula['lines'][number]) => oils.includes(ingredient)
  const now_percent = formula.lines.filter(isOil).reduce((sum, line) => sum + (line.share_percent ?? 0), 0)
  const water =
    formula.lines.find(({ fills }) => fills === true) ?? formula.lines.find((one) => one.ingredient === 'aqua')
  if (now_percent === 0 || water === undefined || isOil(water)) return null
  const others = formula.lines.filter((line) => line !== water && !isOil(line))
  const room_percent = 100 - others.reduce((sum, line) => sum + (line.share_percent ?? 0), 0) - oil_percent
  if (room_percent < LEAST_WATER_PERCENT) return null
  const { share_percent: _, ...rest } = water
  const lines = formula.lines.map((line) => {
    if (line === water) return { ...rest, fills: true as const }
    return isOil(line) ? { ...line, share_percent: ((line.share_percent ?? 0) * oil_percent) / now_percent } : line
  })
  return { ...formula, lines }
}

async function askAll(
  recipes: readonly { at: number; formula: Formula }[],
  signal: AbortSignal,
): Promise<CurvePoint[]> {
  const points: CurvePoint[] = []
  for (const { at, formula } of recipes) {
    const { agents } = await call('POST /api/preservation', { body: { formula }, signal })
    points.push({ at, agents })
  }
  return points
}

const inOrder = (values: readonly number[]): number[] => [...new Set(values)].sort((a, b) => a - b)

/** The same recipe at other pH and with more or less oil; some twenty questions, one after the other. */
export function usePreservationCurves(formula: Formula | null, oils: readonly string[]): Question<PreservationCurves> {
  return useQuestion({
    key: ['preservation-curves', formula, oils],
    ask: async (signal) => {
      if (formula === null) return { byPh: [], byOil: [] }
      const oil_percent = formula.lines
        .filter(({ ingredient }) => oils.includes(ingredient))
        .reduce((sum, line) => sum + (line.share_percent ?? 0), 0)
      const phs = inOrder([...PHS, ...(formula.ph === null ? [] : [formula.ph])])
      const shares = inOrder([...OILS_PERCENT, ...(oil_percent > 0 ? [oil_percent] : [])])
      return {
        byPh: await askAll(
          phs.map((ph) => ({ at: ph, formula: { ...formula, ph } })),
          signal,
        ),
        byOil: await askAll(
          shares.flatMap((at) => {
            const other = withOil(formula, oils, at)
            return other ? [{ at, formula: other }] : []
          }),
          signal,
        ),
      }
    },
    when: formula !== null,
  })
}
