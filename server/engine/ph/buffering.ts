import { rangeOfProperty, wordOf } from '#engine/graph/subject.ts'
import type { Subject } from '#engine/graph/subject.ts'
import { readableName } from '#engine/units/readable-name.ts'
import { rangeText } from '#engine/units/range.ts'

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

/** What titrates and has no constant here. */
const TITRATES: Record<string, string> = {
  soap: 'soap takes up acid and turns into fatty acid',
  'acyl-amino-acid': 'its carboxyl group takes up acid below about pH 6',
  'carboxylate-surfactant': 'its carboxyl group takes up acid below about pH 6',
  amphoacetate: 'its amine and carboxyl groups titrate, and it is supplied alkaline',
  sulfosuccinate: 'its half ester splits and gives off acid',
  'amine-oxide': 'it takes up acid around pH 5 to 6.5 and turns cationic; its constant is not known here',
  amidoamine: 'the amine takes up acid until it is cationic',
  lactylate: 'its carboxyl group takes up acid below about pH 6',
  'phosphate-ester': 'its phosphate groups titrate',
  'citrate-ester': 'free citric acid groups titrate',
  protein: 'amino acids titrate over the whole range',
  'protein-hydrolysate': 'amino acids titrate over the whole range',
  'amino-acid': 'it titrates; its constants are not in the table',
  aminocarboxylate: 'a chelator of this kind takes up acid; its constants are not in the table',
  phytate: 'how much sodium the grade carries differs',
  phosphonate: 'phosphonic acid groups titrate',
  ascorbate: 'it titrates; its constants are not in the table',
  'swelling-clay': 'clay exchanges ions with the water',
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

const unknown = (subject: Subject, why: string, wash?: true): Unknown[] => [
  { ingredient: subject.id, says: `${readableName(subject.inci)}: ${why}`, ...(wash && { wash }) },
]

const bounded = (subject: Subject, why: string, most_mol_per_g: number): Unknown[] =>
  unknown(subject, why).map((one) => ({ ...one, most_mol_per_g }))

/** Surfactants that come alkaline, with what the claim says. */
function alkalinity(subject: Subject): Unknown[] {
  const supplied = rangeOfProperty(subject, 'ph_supplied')
  if ((supplied?.max ?? 0) < ALKALINE_FROM_PH) return []
  const ph = rangeText(supplied ?? {})
  return unknown(
    subject,
    `comes at pH ${ph}; how much alkali, soap and carbonate it brings differs by grade and is not known`,
    true,
  )
}

/**
 * What is not known of how a line buffers; empty for what holds nothing in this range of pH.
 * @param range lowest and highest pH that matter
 */
export function buffering(subject: Subject, range: { min: number; max: number }): Unknown[] {
  const { classes, allRoles } = subject
  if (classes.has('alkyl-glucoside') || has(subject, STRONG_SURFACTANT)) return alkalinity(subject)
  const titrates = Object.keys(TITRATES).find((one) => classes.has(one) && !classes.has('metal-soap'))
  if (titrates !== undefined) return unknown(subject, TITRATES[titrates] ?? '')
  if (classes.has('fatty-acid'))
    return range.max < FATTY_ACID_SILENT_TO_PH ? [] : unknown(subject, 'fatty acid takes up base above about pH 6')
  if (classes.has('polysaccharide') && classes.has('anionic'))
    return range.min >= GUM_SILENT_FROM_PH
      ? []
      : bounded(subject, 'its acid groups take up acid below about pH 4.5', MOST_MOL_PER_G.gum)
  if (classes.has('acrylic-polymer'))
    return bounded(subject, 'its acid groups take up base until it is neutralised', MOST_MOL_PER_G.acrylic)
  if (PLANT.some((role) => allRoles.has(role)))
    return unknown(subject, 'plant acids differ by batch; a reading tells what they take up')
  const oily = wordOf(subject, 'solubility') === 'oil' || wordOf(subject, 'solubility') === 'silicone'
  const silent = ['water', 'solvent', 'scent', 'emollient'].some((role) => allRoles.has(role))
  if (has(subject, NEUTRAL) || classes.has('nonionic') || oily || silent) return []
  return unknown(subject, 'whether it takes up or gives off acid is not known')
}
