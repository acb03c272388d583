import type { Api } from '#contract/api.ts'
import { call, CallError } from './call.ts'
import { useQuestion } from './question.ts'
import type { Question } from './question.ts'
import { useDebounced } from './use-debounced.ts'

export type PhAdjustBody = Api['POST /api/ph/adjust']['body']
export type PhAdjustReply = Api['POST /api/ph/adjust']['reply']
export type PhWay = PhAdjustReply['ways'][number]

const WHILE_TYPING_MS = 400

/** How much acid or base brings this batch to a pH? */
export function usePhAdjust(body: PhAdjustBody | null): Question<PhAdjustReply> {
  const now = body === null ? '' : JSON.stringify(body)
  const asked = useDebounced(now, WHILE_TYPING_MS)
  const question = useQuestion({
    key: ['ph-adjust', asked],
    ask: (signal) => call('POST /api/ph/adjust', { body: JSON.parse(asked) as PhAdjustBody, signal }),
    when: body !== null && asked !== '',
    keep: true,
  })
  return question.state === 'ready' && now !== asked ? { ...question, old: true } : question
}

export interface DosePoint {
  ph: number
  min_g: number
  max_g: number
  likely_g: number | null
}

const POINTS = 12
const BEYOND_PH = 0.5

/** pH from the start to a little beyond the target, in even steps. */
export function targetsOf(start_ph: number, target_ph: number): number[] {
  const way = Math.sign(target_ph - start_ph)
  const end_ph = Math.min(14, Math.max(0, target_ph + way * BEYOND_PH))
  return Array.from({ length: POINTS }, (_, at) =>
    Number((start_ph + ((end_ph - start_ph) * (at + 1)) / POINTS).toFixed(3)),
  )
}

/** A pH that this acid or base cannot reach is no point of the curve; any other failure is one. */
function unreachable(error: unknown): null {
  if (error instanceof CallError && error.code === 'out-of-range') return null
  throw error
}

/** The dose asked for at other targets, with the same acid or base and the same readings: a titration curve by one way. */
export function usePhCurve(
  body: PhAdjustBody | null,
  reply: PhAdjustReply | null,
  way: PhWay['way'],
): Question<DosePoint[]> {
  // Readings cannot be taken back: what comes next starts at the last one.
  const start_ph = body?.measured?.at(-1)?.ph ?? reply?.start?.ph
  const added = reply?.with
  const can = body !== null && start_ph !== undefined && added && Math.abs(body.target_ph - start_ph) > 0.05
  return useQuestion({
    key: ['ph-curve', body, way, added?.ingredient],
    ask: async (signal) => {
      if (!can) return []
      const fixed = { ...body, with: added.ingredient, strength_percent: added.strength_percent }
      const points: DosePoint[] = []
      for (const target_ph of targetsOf(start_ph, body.target_ph)) {
        const answer = await call('POST /api/ph/adjust', { body: { ...fixed, target_ph }, signal }).catch(unreachable)
        const own = answer?.ways.find((one) => one.way === way)
        if (!own?.dose_g) continue
        points.push({ ph: target_ph, min_g: own.dose_g.min, max_g: own.dose_g.max, likely_g: own.likely_g })
      }
      return points
    },
    when: can === true,
  })
}
