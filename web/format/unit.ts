import { language } from '#web/text/language.ts'

/** Endings of a name and the unit that they stand for; the longest that fits counts. */
const UNITS: readonly (readonly [ending: string, unit: string])[] = [
  ['_mmol_per_l', 'mmol/L'],
  ['_g_per_100_ml', 'g/100 mL'],
  ['_kg_per_m3', 'kg/m³'],
  ['_cfu_per_g', 'CFU/g'],
  ['_mm_per_day', language === 'de' ? 'mm/Tag' : 'mm/day'],
  ['_mol_per_l', 'mol/L'],
  ['_molar_mass', 'g/mol'],
  ['_percent', '%'],
  ['_mpa_s', 'mPa·s'],
  ['_hours', 'h'],
  ['_um', 'µm'],
  ['_c', '°C'],
  ['_g', 'g'],
]

/** Unit that the name of a quantity carries; nothing for a plain number. */
export const unitOfName = (name: string): string => UNITS.find(([ending]) => `_${name}`.endsWith(ending))?.[1] ?? ''
