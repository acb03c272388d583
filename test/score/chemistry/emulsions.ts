import type { Example } from './example.ts'
import { near, readReference, worked } from './say.ts'

interface Blend {
  id: string
  oil_phase: { required_hlb: number; pct?: number; g?: number }[]
  computed_required_hlb?: number
  published_required_hlb?: number
  emulsifiers: { hlb: number }[]
  emulsifier_total_pct?: number
  emulsifier_total_g?: number
  computed_share_pct?: number[]
  published_share_pct?: number[]
  published_pct_of_emulsion?: number[]
  share_pct_at_published_12_1?: number[]
  computed_g?: number[]
}

interface Check {
  id: string
  topic: string
  inputs: Record<string, unknown>
  expected: Record<string, number>
  tolerance: number | string
}

/** Printed where each contribution was rounded before adding. */
const ROUNDED_TOO_EARLY = new Set(['paraffin-cream-a'])

const two = (pair: number[] | undefined, total = 100): number[] => (pair ?? []).map((part) => (100 * part) / total)

function pairShares(target_hlb: number, [high, low]: { hlb: number }[]): number[] {
  const input = { target_hlb, high_hlb: high?.hlb ?? Number.NaN, low_hlb: low?.hlb ?? Number.NaN }
  return [worked('emulsifier-pair', input, 'high_percent'), worked('emulsifier-pair', input, 'low_percent')]
}

function ofBlend(blend: Blend): Example[] {
  const { id, emulsifiers, emulsifier_total_pct, emulsifier_total_g } = blend
  const oils = blend.oil_phase.map(({ required_hlb, pct, g }) => ({
    required_hlb,
    share_percent: pct ?? g ?? Number.NaN,
  }))
  const required = worked('required-hlb', { oils }, 'required_hlb')
  const target = blend.computed_required_hlb ?? required
  const shares = pairShares(target, emulsifiers)
  const beside = (kind: string, printed: number[], got: number[], tolerance: number): Example[] =>
    printed.map((expected, at) =>
      near(
        { topic: 'emulsifier-pair', id: `${id}, ${kind} ${at + 1}`, unit: '%' },
        expected,
        tolerance,
        got[at] ?? Number.NaN,
      ),
    )
  return [
    ...(blend.computed_required_hlb === undefined
      ? []
      : [near({ topic: 'required-hlb', id: `${id}, worked out apart` }, blend.computed_required_hlb, 0.006, required)]),
    ...(blend.published_required_hlb === undefined
      ? []
      : [
          near(
            { topic: 'required-hlb', id: `${id}, printed`, flagged: ROUNDED_TOO_EARLY.has(id) },
            blend.published_required_hlb,
            0.03,
            required,
          ),
        ]),
    ...beside('worked out apart', two(blend.computed_share_pct), shares, 0.1),
    ...beside('printed', two(blend.published_share_pct), shares, 0.1),
    ...beside('of the emulsion, printed', two(blend.published_pct_of_emulsion, emulsifier_total_pct), shares, 2),
    ...beside('at 12.1', two(blend.share_pct_at_published_12_1), pairShares(12.1, emulsifiers), 0.1),
    ...beside('in grams', two(blend.computed_g, emulsifier_total_g), shares, 1),
  ]
}

const numbers = (of: unknown): number[] => Object.values(of as Record<string, number>)

function ofCheck({ id, topic, inputs, expected }: Check): Example[] {
  if (topic === 'required HLB of an oil phase') {
    const [shares, required] = [numbers(inputs['oilPhasePct']), numbers(inputs['requiredHLB'])]
    const oils = shares.map((share_percent, at) => ({ share_percent, required_hlb: required[at] ?? Number.NaN }))
    return [
      near(
        { topic: 'required-hlb', id },
        expected['requiredHLB'] ?? Number.NaN,
        0.03,
        worked('required-hlb', { oils }, 'required_hlb'),
      ),
    ]
  }
  const [high_hlb, low_hlb] = [inputs['high'], inputs['low']].map((one) => (one as [string, number])[1])
  const input = {
    target_hlb: inputs['target'] as number,
    high_hlb: high_hlb ?? Number.NaN,
    low_hlb: low_hlb ?? Number.NaN,
  }
  const high = worked('emulsifier-pair', input, 'high_percent')
  if (topic === 'emulsifier pair to a target HLB') {
    return [near({ topic: 'emulsifier-pair', id, unit: '%' }, expected['highPctOfBlend'] ?? Number.NaN, 0.2, high)]
  }
  const total = inputs['totalEmulsifierPct'] as number
  const of = (share: number): number => (share * total) / 100
  const emulsifiers = [
    { share_percent: expected['highPct'] ?? Number.NaN, hlb: input.high_hlb },
    { share_percent: expected['lowPct'] ?? Number.NaN, hlb: input.low_hlb },
  ]
  return [
    near({ topic: 'emulsifier-pair', id: `${id}, high`, unit: '%' }, expected['highPct'] ?? Number.NaN, 0.02, of(high)),
    near(
      { topic: 'emulsifier-pair', id: `${id}, low`, unit: '%' },
      expected['lowPct'] ?? Number.NaN,
      0.02,
      of(100 - high),
    ),
    near(
      { topic: 'blend-hlb', id },
      expected['blendHLB'] ?? Number.NaN,
      0.03,
      worked('blend-hlb', { emulsifiers }, 'hlb'),
    ),
  ]
}

const TOPICS = new Set([
  'required HLB of an oil phase',
  'emulsifier blend for a required HLB',
  'emulsifier pair to a target HLB',
])

/** Required HLB of oil phases and pairs of emulsifiers as printed. */
export function examples(): Example[] {
  const { blends } = readReference<{ blends: Blend[] }>('worked-examples.json')
  const { checks } = readReference<{ checks: Check[] }>('calculation-checks.json')
  return [...blends.flatMap(ofBlend), ...checks.filter(({ topic }) => TOPICS.has(topic)).flatMap(ofCheck)]
}
