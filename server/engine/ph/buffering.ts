import type { Say } from '#engine/words/say.ts'
import { rangeOfProperty, wordOf } from '#engine/graph/subject.ts'
import type { Subject } from '#engine/graph/subject.ts'
import { readableName } from '#engine/units/readable-name.ts'

/** What is not known of a line. `wash`: bench practice has a range for it. */
export interface Unknown {
  ingredient: string
  says: string
  wash?: true
  /** acid groups that a gram can have at most [mol]; missing: no bound is known */
  most_mol_per_g?: number
}

/** Classes that neither take up nor give off protons in water between pH 2 and 12. */
const NEUTRAL = new Set([
  ...['triglyceride', 'wax-ester', 'fatty-ester', 'hydrocarbon', 'silicone', 'cyclic-silicone', 'fatty-alcohol'],
  ...['dialkyl-ether', 'carbonate-ester', 'polyol', 'glycol', 'sugar', 'aromatic-alcohol', 'polysorbate'],
  ...['sorbitan-ester', 'glyceryl-ester', 'polyglyceryl-ester', 'sucrose-ester', 'glucose-ester'],
  ...['fatty-alcohol-ethoxylate', 'peg-ester', 'peg-castor-oil', 'peg-glyceride', 'alkanolamide', 'sterol'],
  ...['silicone-emulsifier', 'cellulose-ether', 'galactomannan', 'starch', 'vinyl-polymer', 'cationic-cellulose'],
  ...['cationic-guar', 'cationic-polymer', 'alkyl-quat', 'ester-quat', 'silicone-quat', 'retinoid'],
])

/** Strong acid or quaternary groups: charged at every pH of a cosmetic, so that they hold nothing. */
const STRONG_SURFACTANT = new Set([
  ...['alkyl-sulfate', 'ether-sulfate', 'olefin-sulfonate', 'sulfoacetate', 'isethionate', 'taurate'],
  'betaine-surfactant',
])

/** Why it is not known, in words. */
type Why = (say: Say) => string

/** What titrates and has no constant here. */
const TITRATES: Record<string, Why> = {
  soap: (say) => say`soap takes up acid and turns into fatty acid`,
  'acyl-amino-acid': (say) => say`its carboxyl group takes up acid below about pH 6`,
  'carboxylate-surfactant': (say) => say`its carboxyl group takes up acid below about pH 6`,
  amphoacetate: (say) => say`its amine and carboxyl groups titrate, and it is supplied alkaline`,
  sulfosuccinate: (say) => say`its half ester splits and gives off acid`,
  'amine-oxide': (say) => say`it takes up acid around pH 5 to 6.5 and turns cationic; its constant is not known here`,
  amidoamine: (say) => say`the amine takes up acid until it is cationic`,
  lactylate: (say) => say`its carboxyl group takes up acid below about pH 6`,
  'phosphate-ester': (say) => say`its phosphate groups titrate`,
  'citrate-ester': (say) => say`free citric acid groups titrate`,
  protein: (say) => say`amino acids titrate over the whole range`,
  'protein-hydrolysate': (say) => say`amino acids titrate over the whole range`,
  'amino-acid': (say) => say`it titrates; its constants are not in the table`,
  aminocarboxylate: (say) => say`a chelator of this kind takes up acid; its constants are not in the table`,
  phytate: (say) => say`how much sodium the grade carries differs`,
  phosphonate: (say) => say`phosphonic acid groups titrate`,
  ascorbate: (say) => say`it titrates; its constants are not in the table`,
  'swelling-clay': (say) => say`clay exchanges ions with the water`,
}

const PLANT = ['hydrosol', 'plant-juice', 'plant-extract']

/** One group in 176 g (alginate, the densest gum) and one in 72 g (poly(acrylic acid)); from the formulas. */
const MOST_MOL_PER_G = { gum: 1 / 176, acrylic: 1 / 72 }

/** Uronic and sulfate groups hold nothing above this pH. */
const GUM_SILENT_FROM_PH = 4.5
/** Fatty acid of an oil phase stays acid below this pH. */
const FATTY_ACID_SILENT_TO_PH = 6
/** Supplied above this pH a surfactant carries free alkali. */
const ALKALINE_FROM_PH = 9.5

const has = (subject: Subject, classes: ReadonlySet<string>): boolean =>
  [...subject.classes].some((one) => classes.has(one))

const unknownOf = (subject: Subject, why: string, say: Say): Unknown[] => [
  { ingredient: subject.id, says: say`${readableName(subject.inci)}: ${why}` },
]

const bounded = (gaps: Unknown[], most_mol_per_g: number): Unknown[] => gaps.map((one) => ({ ...one, most_mol_per_g }))

/** Surfactants that come alkaline, with what the claim says. */
function alkalinity(subject: Subject, say: Say): Unknown[] {
  const supplied = rangeOfProperty(subject, 'ph_supplied')
  if ((supplied?.max ?? 0) < ALKALINE_FROM_PH) return []
  const ph = say.range(supplied ?? {})
  const why = say`comes at pH ${ph}; how much alkali, soap and carbonate it brings differs by grade and is not known`
  return unknownOf(subject, why, say).map((one) => ({ ...one, wash: true }))
}

/**
 * What is not known of how a line buffers; empty for what holds nothing in this range of pH.
 * @param range lowest and highest pH that matter
 */
export function buffering(subject: Subject, range: { min: number; max: number }, say: Say): Unknown[] {
  const { classes, allRoles } = subject
  const unknown = (why: string): Unknown[] => unknownOf(subject, why, say)
  if (classes.has('alkyl-glucoside') || has(subject, STRONG_SURFACTANT)) return alkalinity(subject, say)
  const titrates = Object.keys(TITRATES).find((one) => classes.has(one) && !classes.has('metal-soap'))
  if (titrates !== undefined) return unknown(TITRATES[titrates]?.(say) ?? '')
  if (classes.has('fatty-acid'))
    return range.max < FATTY_ACID_SILENT_TO_PH ? [] : unknown(say`fatty acid takes up base above about pH 6`)
  if (classes.has('polysaccharide') && classes.has('anionic'))
    return range.min >= GUM_SILENT_FROM_PH
      ? []
      : bounded(unknown(say`its acid groups take up acid below about pH 4.5`), MOST_MOL_PER_G.gum)
  if (classes.has('acrylic-polymer'))
    return bounded(unknown(say`its acid groups take up base until it is neutralised`), MOST_MOL_PER_G.acrylic)
  if (PLANT.some((role) => allRoles.has(role)))
    return unknown(say`plant acids differ by batch; a reading tells what they take up`)
  const oily = wordOf(subject, 'solubility') === 'oil' || wordOf(subject, 'solubility') === 'silicone'
  const silent = ['water', 'solvent', 'scent', 'emollient'].some((role) => allRoles.has(role))
  if (has(subject, NEUTRAL) || classes.has('nonionic') || oily || silent) return []
  return unknown(say`whether it takes up or gives off acid is not known`)
}
