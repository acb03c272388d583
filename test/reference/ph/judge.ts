import { calculate } from '#engine/index.ts'
import { solvePh } from '#engine/chemistry/ph/solve-ph.ts'
import { compoundNamed } from '#engine/knowledge/acids.ts'
import { undissociatedShare } from '#engine/chemistry/undissociated-share.ts'
import { capacity_mmol, mixtureOf, stated, writtenIn } from './cases.ts'
import type { AdjustCase } from './cases.ts'
import { measureTwice } from './judge-readings.ts'
import { dose, judged, MMOL, share, world } from './judged.ts'
import type { Figures, Judged } from './judged.ts'

const startPh = (systems: Record<string, number>, ions: [number, number][]): number =>
  solvePh(mixtureOf({ systems, ions, temp_c: 25 })).ph

function plainSolution(one: AdjustCase): Judged[] {
  const { ph } = solvePh(mixtureOf(writtenIn(one)))
  const { computed, measured_ph_range: range } = one.expected as {
    computed: { edh: number }
    measured_ph_range?: [number, number]
  }
  const rows = [judged('pH', computed.edh, ph, 0.05)]
  if (range) rows.push(judged('measured range', (range[0] + range[1]) / 2, ph, (range[1] - range[0]) / 2))
  return rows
}

function doseForAlkali({ inputs, expected }: AdjustCase): Judged[] {
  const alkali = Number(inputs['free_alkali_mmol_per_kg']) * MMOL
  const got = dose({}, [[1, alkali]], String(inputs['acid']), Number(inputs['target_ph']))
  return [
    judged('start pH', expected['start_ph'], startPh({}, [[1, alkali]]), 0.05),
    share('acid, mmol/kg', expected['acid_mmol_per_kg'], got['dose_mmol_per_l'] ?? NaN, 3),
    share('acid, %', expected['acid_percent'], got['dose_percent'] ?? NaN, 3),
  ]
}

function doseForWash({ inputs, expected }: AdjustCase): Judged[] {
  const systems = {
    carbonic: Number(inputs['carbonate_mmol_per_kg']) * MMOL,
    fattymicelle: Number(inputs['fatty_acid_mmol_per_kg']) * MMOL,
  }
  const ions: [number, number][] = [[1, Number(inputs['strong_base_mmol_per_kg']) * MMOL]]
  const got = dose(systems, ions, String(inputs['acid']), Number(inputs['target_ph']))
  return [
    judged('start pH', expected['start_ph'], startPh(systems, ions), 0.05),
    share('acid, mmol/kg', expected['citric_mmol_per_kg'], got['dose_mmol_per_l'] ?? NaN, 5),
    share('acid, %', expected['citric_percent'], got['dose_percent'] ?? NaN, 5),
  ]
}

function baseForAcid({ inputs, expected }: AdjustCase): Judged[] {
  const systems = { [String(inputs['acid'])]: Number(inputs['acid_mmol_per_kg']) * MMOL }
  const target_ph = Number(inputs['target_ph'])
  // 3 % of the dose up to an ionic strength of 0.15, 6 % above: acids of more than 0.2 mol/kg end above it.
  const percent = Number(inputs['acid_mmol_per_kg']) > 200 ? 6 : 3
  const bases = expected['base_dose'] as Record<string, { mmol_per_kg: number; percent: number }>
  return [
    judged('start pH', expected['start_ph'], startPh(systems, []), 0.05),
    ...Object.entries(bases).flatMap(([base, printed]) => {
      const got = dose(systems, [], base, target_ph)
      return [
        share(`${base}, mmol/kg`, printed.mmol_per_kg, got['dose_mmol_per_l'] ?? NaN, percent),
        share(`${base}, %`, printed.percent, got['dose_percent'] ?? NaN, percent),
      ]
    }),
  ]
}

function freeShare({ inputs, expected }: AdjustCase): Judged[] {
  const ph = Number(inputs['ph'])
  const pka = Number(inputs['pka'])
  // The printed figure at 0.1 mol/L is by another activity law; its shift of the constant is stated as 0.107.
  return [
    share('share', expected['ideal'], undissociatedShare(ph, pka), 0.5),
    share('share at 0.1 mol/L', expected['at_ionic_strength_0_1'], undissociatedShare(ph, pka - 0.107), 0.5),
  ]
}

function solubility({ inputs, expected }: AdjustCase): Judged[] {
  const pka = Number(inputs['pka'])
  const intrinsic = Number(inputs['intrinsic_solubility_percent'])
  if (expected['minimum_ph'] !== undefined) {
    const ph = pka + Math.log10(Number(inputs['total_percent']) / intrinsic - 1)
    return [
      judged(
        'total at the printed pH',
        inputs['total_percent'],
        solubilityAt(intrinsic, Number(expected['minimum_ph']), pka),
        0.2,
      ),
      judged('least pH', expected['minimum_ph'], ph, 0.1),
    ]
  }
  return [share('total, %', expected['total_percent'], solubilityAt(intrinsic, Number(inputs['ph']), pka), 3)]
}

/** By the calculation that the page offers. */
const solubilityAt = (intrinsic_solubility_percent: number, ph: number, pka: number): number =>
  calculate(world(), 'acid-solubility', { intrinsic_solubility_percent, ph, pka }).values['solubility_percent'] ?? NaN

function bufferRecipe({ inputs, expected }: AdjustCase): Judged[] {
  const [acid, salt] =
    inputs['total_citrate_mmol_per_kg'] !== undefined ? (['citric acid', 3] as const) : (['lactic acid', 1] as const)
  const total_mmol = Number(inputs['total_citrate_mmol_per_kg'] ?? inputs['total_lactate_mmol_per_kg'])
  const got = dose({ [acid]: total_mmol * MMOL }, [], 'NaOH', Number(inputs['target_ph']))
  const lye_mmol = got['dose_mmol_per_l'] ?? NaN
  const mix = expected['as_mix'] as Figures
  const [, saltPercent = NaN] = Object.values(mix)
  const saltMass =
    compoundNamed(world().knowledge.acids, acid === 'citric acid' ? 'sodium citrate dihydrate' : 'sodium lactate')
      ?.molar_mass ?? NaN
  return [
    share('NaOH, mmol/kg', expected['NaOH_mmol_per_kg'], lye_mmol, 3),
    share('salt instead, %', saltPercent, ((lye_mmol / salt) * saltMass) / 10_000, 3),
  ]
}

function doseForSalt({ inputs, expected }: AdjustCase): Judged[] {
  const name = inputs['salt'] === 'benzoate' ? 'sodium benzoate' : 'potassium sorbate'
  const mass = compoundNamed(world().knowledge.acids, name)?.molar_mass ?? NaN
  const systems = { [name]: (Number(inputs['salt_percent']) * 10) / mass }
  const doses = expected['acid_dose'] as Record<string, { mmol_per_kg: number; percent: number }>
  return [
    judged('start pH', expected['start_ph'], startPh(systems, []), 0.05),
    ...Object.entries(doses).map(([acid, printed]) =>
      share(
        `${acid}, mmol/kg`,
        printed.mmol_per_kg,
        dose(systems, [], acid, Number(inputs['target_ph']))['dose_mmol_per_l'] ?? NaN,
        4,
      ),
    ),
  ]
}

function dilutionTest(one: AdjustCase): Judged[] {
  const { systems, ions, temp_c } = stated(writtenIn(one))
  const { ph = NaN, ph_diluted = NaN } = calculate(world(), 'dilution-ph', {
    systems: [...systems],
    ions: [...ions],
    temp_c,
    product_g: 1,
    water_g: 9,
  }).values
  return [
    judged('pH', one.expected['ph_neat'], ph, 0.05),
    judged('pH diluted', one.expected['ph_diluted'], ph_diluted, 0.05),
    judged('shift', one.expected['shift'], ph_diluted - ph, 0.05),
  ]
}

function bufferCapacityCase(one: AdjustCase): Judged[] {
  const written = writtenIn(one)
  const printed = one.expected as Figures
  if (printed['capacity_mmol_per_kg_per_ph'] === undefined) {
    const percent = Number.parseFloat(one.tolerance)
    return [
      share('capacity, mol/L per pH', printed['published_mol_per_L_per_ph'], capacity_mmol(written) / 1000, percent),
    ]
  }
  const lye = dose(written.systems, [], 'NaOH', Number(one.inputs['ph']))['dose_mmol_per_l'] ?? NaN
  return [
    share(
      'capacity, mmol/kg per pH',
      printed['capacity_mmol_per_kg_per_ph'],
      capacity_mmol({ ...written, ions: [[1, lye * MMOL]] }),
      5,
    ),
  ]
}

const temperature = (one: AdjustCase): Judged[] =>
  Object.entries(one.expected as Figures).map(([name, printed]) =>
    judged(name, printed, solvePh(mixtureOf(writtenIn(one, Number(/\d+/.exec(name)?.[0])))).ph, 0.05),
  )

/** 0.25 % citric acid took a wash from 7 to 5: the derived figures of that bench note. */
function benchNote({ inputs, expected }: AdjustCase): Judged[] {
  const citric = compoundNamed(world().knowledge.acids, 'citric acid')
  const mmol_per_kg = (Number(inputs['citric_acid_percent']) * 10_000) / (citric?.molar_mass ?? NaN)
  const charge = lyeFor(mmol_per_kg, 5) / mmol_per_kg
  return [
    share('citric acid, mmol/kg', expected['citric_mmol_per_kg'], mmol_per_kg, 10),
    share('charge per citrate', expected['charge_per_citrate_at_ph5'], charge, 10),
    share('base neutralised, mmol/kg', expected['base_neutralised_mmol_per_kg'], charge * mmol_per_kg, 10),
  ]
}

const lyeFor = (citric_mmol: number, target_ph: number): number =>
  dose({ citric: citric_mmol * MMOL }, [], 'NaOH', target_ph)['dose_mmol_per_l'] ?? NaN

const TOPICS: Record<string, (one: AdjustCase) => Judged[]> = {
  'pH of a plain solution': plainSolution,
  'acid dose for stated alkalinity': doseForAlkali,
  'acid dose for a surfactant product': doseForWash,
  'base dose for an acid product': baseForAcid,
  'free acid share': freeShare,
  'pH needed for solubility': solubility,
  'buffer recipe': bufferRecipe,
  'acid dose for a preservative salt': doseForSalt,
  'dilution test': dilutionTest,
  'measure twice': measureTwice,
  'buffer capacity': bufferCapacityCase,
  temperature,
  'common-practice data point': benchNote,
}

/** Rules of practice without a figure that a calculation could give. */
export const IN_WORDS = ['common-practice rule']

/** All figures of a case with what comes out; empty for a rule in words. @throws when the topic is new */
export function judge(one: AdjustCase): Judged[] {
  if (IN_WORDS.includes(one.topic)) return []
  const figures = TOPICS[one.topic]
  if (!figures) throw new Error(`${one.id}: topic ${one.topic} is judged by nothing`)
  return figures(one)
}
