import { fileURLToPath } from 'node:url'
import { logReduction } from '#engine/chemistry/microbial-counts.ts'
import { acidInEmulsion } from '#engine/chemistry/preservation/acid-in-emulsion.ts'
import { acidSolubility } from '#engine/chemistry/preservation/acid-solubility.ts'
import { fasterTogether } from '#engine/chemistry/preservation/faster-together.ts'
import { halfInhibited } from '#engine/chemistry/preservation/half-inhibited.ts'
import { inhibition, ionPartOfEffect } from '#engine/chemistry/preservation/ion-effect.ts'
import { partitionWithMicelles, totalToFree } from '#engine/chemistry/preservation/partition-with-micelles.ts'
import { twoPhasePartition } from '#engine/chemistry/preservation/two-phase-partition.ts'
import { undissociatedShare } from '#engine/chemistry/undissociated-share.ts'
import { buildKnowledge, buildWorld, idOf } from '#engine/index.ts'
import type { World } from '#engine/index.ts'
import { takersOf } from '#engine/preservation/micelles.ts'
import { figuresOf } from '#engine/preservation/tables.ts'
import { growthAt } from '#engine/preservation/water-activity.ts'
import { loadRaw } from '#load/load-raw.ts'
import type { Example } from './example.ts'
import { expected, input, printedExamples } from './preservation-examples.ts'
import type { Printed } from './preservation-examples.ts'
import { agrees, verdictIn } from './preservation-lotions.ts'

type Answer = Pick<Example, 'expected' | 'got' | 'within'>
type Answerer = (one: Printed, world: World) => Answer

const show = (value: number): string => String(Number(value.toPrecision(4)))

/** @param tolerance absolute; relative where `relative` is set */
function numbers(want: number[], got: number[], tolerance: number, relative = false): Answer {
  const within = want.every((value, at) => {
    const off = Math.abs((got[at] ?? NaN) - value)
    return off <= (relative ? tolerance * Math.abs(value) : tolerance) + 1e-9
  })
  const bound = relative ? `within ${tolerance * 100} %` : `within ${tolerance}`
  return { expected: `${want.map(show).join(', ')} (${bound})`, got: got.map(show).join(', '), within }
}

const words = (want: unknown, got: unknown): Answer => ({
  expected: JSON.stringify(want),
  got: JSON.stringify(got),
  within: JSON.stringify(want) === JSON.stringify(got),
})

const phases = (one: Printed) => ({
  total_percent: input(one, 'total_pct_wv'),
  partition_ratio: input(one, 'K'),
  oil_to_water: input(one, 'oilWaterRatio'),
})

const twoPhases: Answerer = (one) => {
  const { water_percent, oil_percent } = twoPhasePartition(phases(one))
  const [water, oil] = [expected(one, 'waterPhasePct'), expected(one, 'oilPhasePct')]
  const relative = one.tolerance === '1 % relative' ? 0.01 : 0.005
  const first = numbers([water], [water_percent], relative, true)
  const second =
    one.tolerance === '1 % relative' || one.tolerance === 'exact'
      ? numbers([oil], [oil_percent], 0.01, true)
      : numbers([oil], [oil_percent], 0.002)
  return {
    expected: `water ${first.expected}, oil ${second.expected}`,
    got: `water ${first.got}, oil ${second.got}`,
    within: first.within && second.within,
  }
}

const capped: Answerer = (one) => {
  const solubility = input(one, 'waterSolubilityPct')
  const { water_percent } = twoPhasePartition({ ...phases(one), water_solubility_percent: solubility })
  return numbers([expected(one, 'waterPhasePct')], [water_percent], Number(/^[\d.]+/.exec(one.tolerance)?.[0]))
}

const lotion: Answerer = (one, world) => {
  const name = String(one.inputs['agent'])
  const where = String(one.inputs['lotion'])
  const preserved = one.expected['preserved'] === true
  const [, charge = '', ph = ''] = /^(\w+) lotion pH ([\d.]+)/.exec(where) ?? []
  const row = figuresOf(world).lotions.find(
    (each) => each.agent === idOf(name) && each.emulsifier === charge && each.ph.min === Number(ph),
  )
  const level = row?.level_percent ?? null
  const table = preserved
    ? level !== null && level <= 2 * expected(one, 'level_pct')
    : row !== undefined && level === null
  // An agent that the program does not know cannot be judged by it: the table answers alone.
  const verdict = verdictIn(world, where, { [name]: preserved ? expected(one, 'level_pct') : 1 })
  return {
    expected: preserved ? `preserved at ${expected(one, 'level_pct')} %` : 'not preserved',
    got: `${level === null ? 'no level in the table' : `${level} % in the table`}; verdict on a like lotion: ${verdict ?? 'agent not known'}`,
    within: table && (verdict === null || agrees(verdict, preserved)),
  }
}

const combination: Answerer = (one, world) => {
  const agents = one.inputs['agents'] as Record<string, number>
  const verdicts = (one.inputs['lotions'] as string[]).map((where) => verdictIn(world, where, agents))
  const want = one.expected['satisfactory'] as boolean[]
  return {
    expected: want.map((ok) => (ok ? 'preserved' : 'not')).join(', '),
    got: verdicts.map((verdict) => verdict ?? 'agent not known').join(', '),
    within: verdicts.every((verdict, at) => agrees(verdict, want[at] === true)),
  }
}

/** Sorbic acid: growth stops at this much undissociated acid (0.06 % in all at pH 4.5, APARA2013); the ion by EKLUND1983. */
const growth: Answerer = (one, world) => {
  const [level] = figuresOf(world).levels.get('sorbic-acid') ?? []
  const ion = figuresOf(world).acidOverIon.get('sorbic-acid')?.range
  const pka = 4.76
  const alone = (level?.level_percent.min ?? NaN) * undissociatedShare(level?.ph.min ?? NaN, pka)
  const share = undissociatedShare(input(one, 'pH'), pka)
  const total = input(one, 'total_pct')
  const at = (ratio: number) =>
    inhibition({
      acid_percent: total * share,
      ion_percent: total * (1 - share),
      acid_alone_percent: alone,
      ion_alone_percent: alone * ratio,
    })
  const [most, least] = [at(ion?.min ?? NaN), at(ion?.max ?? NaN)]
  return {
    expected: one.expected['inhibited'] === true ? 'inhibited (1 or more)' : 'not inhibited (below 1)',
    got: `${show(least)} to ${show(most)} of what stops growth`,
    within: one.expected['inhibited'] === true ? least >= 1 : most < 1,
  }
}

const species: Answerer = (one, world) => {
  if (one.expected['pHDependence'] === false) {
    const agent = world.find('methylparaben')
    return words(false, agent?.classes.has('organic-acid'))
  }
  const ion = figuresOf(world).acidOverIon.get('sorbic-acid')?.range
  const parts = [ion?.min ?? NaN, ion?.max ?? NaN].map((ratio) => ionPartOfEffect(6.5, 4.76, ratio))
  return {
    expected: 'ion gives more than half above pH 6 for most of six organisms',
    got: `ion gives ${show(parts[1] ?? NaN)} to ${show(parts[0] ?? NaN)} at pH 6.5, by organism`,
    within: (parts[0] ?? 0) > 0.5,
  }
}

const counts: Answerer = (one) => {
  const cfu = one.inputs['cfuPerG'] as number[]
  const start = cfu[0] ?? NaN
  return numbers(
    one.expected['log10Reduction'] as number[],
    cfu.map((end) => logReduction(start, end, input(one, 'detectionLimit'))),
    0.02,
  )
}

const OUTCOME: Record<string, string> = { lost: 'lost', 'partly lost': 'partly lost', kept: 'kept' }

const nonionic: Answerer = (one, world) => {
  const surfactant = world.find(idOf(String(one.inputs['ingredient'])))
  const agent = world.find('methylparaben')
  if (!surfactant || !agent) return words(one.expected['activity'], null)
  const [taker] = takersOf(agent, [{ subject: surfactant, percent: input(one, 'ingredient_pct') }], world)
  return words(one.expected['activity'], OUTCOME[taker?.outcome ?? ''] ?? null)
}

const killTime: Answerer = (one, world) => {
  const row = (world.knowledge.tables.get('mic') ?? []).find(
    (each) =>
      each['property'] === 'minutes_to_no_growth' &&
      Number(/^[\d.]+/.exec(each['medium'] ?? '')?.[0]) === input(one, 'level_pct'),
  )
  return words(expected(one, 'minutesToNoGrowth'), Number(row?.['min']))
}

const ANSWERS: Record<string, Answerer> = {
  'two-phase partition': twoPhases,
  'two-phase partition with solubility cap': capped,
  'undissociated fraction at the inhibitory level': (one) => {
    const share = undissociatedShare(input(one, 'pH'), input(one, 'pKa'))
    return numbers([expected(one, 'undissociatedPct')], [input(one, 'total_pct') * share], 0.03, true)
  },
  'pure undissociated rule is wrong by a known factor': (one) => {
    const pka = input(one, 'pKa')
    const byRule = undissociatedShare(4.2, pka) / undissociatedShare(5.2, pka)
    const observed = input(one, 'fc50_pH5.2') / input(one, 'fc50_pH4.2')
    return numbers(
      [expected(one, 'ratioObserved'), expected(one, 'ratioByUndissociatedRule')],
      [observed, byRule],
      0.02,
      true,
    )
  },
  'dose response': (one) => {
    const grown = Object.entries(one.inputs['positivesOf48'] as Record<string, number>)
    const responses = grown.map(([level, count]) => ({ level_percent: Number(level), grown: count }))
    return numbers([expected(one, 'fc50Pct')], [halfInhibited(responses, 48) ?? NaN], 0.002)
  },
  'acid preservative, oil, pH together': (one) => {
    const total = acidInEmulsion(input(one, 'undissociatedWanted_mg_per_mL') / 10, {
      ph: input(one, 'pH'),
      pka: -Math.log10(input(one, 'Ka')),
      partition_ratio: input(one, 'K'),
      oil_to_water: input(one, 'oilWaterRatio'),
    })
    return numbers([expected(one, 'total_mg_per_mL_water')], [total * 10], 0.01, true)
  },
  'solubility of a weak acid against pH': (one) =>
    numbers(
      [expected(one, 'solubilityPct')],
      [acidSolubility(input(one, 'intrinsicSolubilityPct'), input(one, 'pH'), input(one, 'pKa'))],
      0.06,
      true,
    ),
  'growth verdict': growth,
  'which species inhibits': species,
  'lowest level that preserves a real lotion': lotion,
  'combination of preservatives': combination,
  'synergy by D-value': (one) =>
    words(
      one.expected['synergy'],
      fasterTogether(input(one, 'Dh_methylparaben_0.2pct'), input(one, 'Dh_EDTA_0.01pct'), expected(one, 'Dh_both')),
    ),
  'log reductions from plate counts': counts,
  'water activity hurdle': (one, world) => {
    const rows = figuresOf(world).leastWaterActivity
    const asked = (one.inputs['organisms'] as string[]).flatMap((name) => rows.filter((row) => row.organism === name))
    return words(one.expected['canGrow'], growthAt(input(one, 'aw'), asked).grow)
  },
  'undissociated fraction': (one) =>
    numbers([expected(one, 'fraction')], [undissociatedShare(input(one, 'pH'), input(one, 'pKa'))], 0.0002),
  'micellar binding in water': (one) => {
    const r = totalToFree(input(one, 'k_per_pct'), input(one, 'surfactant_pct'))
    return numbers([expected(one, 'R'), expected(one, 'free_pct')], [r, input(one, 'total_pct') / r], 0.005, true)
  },
  'oil and micelles together': (one) => {
    const { free_percent } = partitionWithMicelles({
      total_percent: input(one, 'total_pct'),
      partition_ratio: input(one, 'K'),
      oil_to_water: input(one, 'oilWaterRatio'),
      binding_per_percent: input(one, 'k_per_pct'),
      surfactant_percent: input(one, 'surfactant_pct_of_water'),
    })
    return numbers([expected(one, 'free_pct')], [free_percent], 0.005, true)
  },
  'nonionic inactivation warning': nonionic,
  'kill time': killTime,
}

/** What no relation of the program answers: the compositions of the products are not printed. */
const notComputed = (one: Printed): Answer => ({
  expected: JSON.stringify(one.expected),
  got: 'not computed: the compositions are not printed',
  within: false,
})

/** Every worked example on preservatives beside what the program says. */
export function examples(): Example[] {
  const world = buildWorld(buildKnowledge(loadRaw(fileURLToPath(new URL('../../../graph-data', import.meta.url)))))
  return printedExamples().map((one) => {
    const answer = ANSWERS[one.topic]
    return {
      topic: one.topic,
      id: one.id,
      flagged: one.flag !== undefined || answer === undefined,
      ...(answer ? answer(one, world) : notComputed(one)),
    }
  })
}
