import { fileURLToPath } from 'node:url'
import { iodineOfMolecule, saponificationOfMolecule } from '#engine/chemistry/oil-constants.ts'
import { readFattyAcid } from '#engine/chemistry/fatty-acid.ts'
import { readTable } from '#load/read-table.ts'
import type { Example } from './example.ts'
import { inRange, near, readReference, worked } from './say.ts'

interface Midpoint {
  oil: string
  profile: string
  iodine_value: number
  iodine_range: [number, number]
  iodine_ok: boolean
  saponification_value_molar_mean: number
  saponification_range: [number, number]
  saponification_ok_molar: boolean
}

interface Constants {
  iodine_value: {
    triglyceride_factors: Record<string, number>
    free_acid_factors: Record<string, number>
    extension: { values: Record<string, number> }
  }
  non_triglycerides: {
    oil: string
    mean_ester_molar_mass?: number
    molar_mass?: number
    computed_saponification_value: number
    published?: number | [number, number]
    computed_iodine_value_two_double_bonds?: number
    published_iodine_value?: number
  }[]
}

const CXS210 = ['codex-cxs210-retyped', 'codex-cxs210', 'codex-cxs210-2022-amend']

/** Sources of the table that make up a profile, by its name; with the oil in front where one name means several. */
const SOURCES: Readonly<Record<string, string[]>> = {
  'CXS 210': CXS210,
  'CXS 210 (2022)': CXS210,
  'CXS 33': ['codex-cxs33', 'codex-cxs33-mem'],
  'CXS 325': ['codex-cxs325-mem'],
  'Ph. Eur. re-typed': ['pheur-almond-retyped'],
  'Ph. Eur.': ['pheur-mct-copy'],
  'IFCT sample': ['ifct2017'],
  '1974 sample': ['huyghebaert1974'],
  '1982 sample': ['goering1982'],
  'NM 08.5.090': ['nm-08-5-090'],
  NF: ['nf-cocoa'],
  'GC-MS sample': ['moringa-gcms'],
  'cocoa butter typical': ['mcn2011-t2'],
  'rosehip oil typical': ['mannozzi2020', 'handbook-general'],
  'hemp seed oil typical': ['kiralan2010', 'handbook-general'],
  'moringa oil typical': ['handbook-general'],
  'meadowfoam oil typical': ['handbook-general'],
  'baobab oil typical': ['handbook-general'],
  'kukui oil encyclopaedia': ['wiki-kukui'],
  'tamanu oil encyclopaedia': ['wiki-tamanu'],
  'neem oil encyclopaedia': ['wiki-neem'],
}

const TABLE = readTable(fileURLToPath(new URL('../../../graph-data/tables/fatty-acids.tsv', import.meta.url)))

/** Mid-points of the printed ranges; the later source of a list (an amendment) overrides the earlier. */
function profileOf({ oil, profile }: Midpoint): { acid: string; share_percent: number }[] {
  const sources = SOURCES[`${oil} ${profile}`] ?? SOURCES[profile] ?? []
  const shares = new Map<string, number>()
  for (const source of sources) {
    for (const row of TABLE.filter((one) => one['oil'] === oil && one['source_id'] === source)) {
      shares.set(row['fatty_acid'] ?? '', (Number(row['min_pct']) + Number(row['max_pct'])) / 2)
    }
  }
  return [...shares].flatMap(([acid, share_percent]) => (share_percent > 0 ? [{ acid, share_percent }] : []))
}

/**
 * What was worked out apart is printed with one decimal, from molar masses of two; its iodine values add up the official
 * factors, which take every oil for one of C18 acids and so read 0.16 high for coconut oil.
 */
const APART = 0.2

function ofMidpoint(row: Midpoint): Example[] {
  const fatty_acids = profileOf(row)
  const iodine = worked('iodine-value', { fatty_acids }, 'iodine_value')
  const saponification = worked('saponification-value', { fatty_acids }, 'saponification_value')
  const id = `${row.oil}, ${row.profile}`
  const [iv, sv] = [
    { topic: 'iodine-value', unit: 'g/100 g' },
    { topic: 'saponification-value', unit: 'mg/g' },
  ]
  return [
    inRange({ ...iv, id, flagged: !row.iodine_ok }, row.iodine_range, iodine),
    near({ ...iv, id: `${id}, worked out apart` }, row.iodine_value, APART, iodine),
    inRange({ ...sv, id, flagged: !row.saponification_ok_molar }, row.saponification_range, saponification),
    near({ ...sv, id: `${id}, worked out apart` }, row.saponification_value_molar_mean, APART, saponification),
  ]
}

function ofFactors({ iodine_value }: Constants): Example[] {
  const topic = 'iodine-value'
  const triglycerides = { ...iodine_value.triglyceride_factors, ...iodine_value.extension.values }
  return [
    ...Object.entries(triglycerides).map(([acid, factor]) =>
      near(
        { topic, id: `factor of ${acid} in a triglyceride` },
        factor,
        0.001,
        worked('iodine-value', { fatty_acids: [{ acid, share_percent: 100 }] }, 'iodine_value') / 100,
      ),
    ),
    ...Object.entries(iodine_value.free_acid_factors).map(([acid, factor]) => {
      const { molar_mass = Number.NaN, doubleBonds = Number.NaN } = readFattyAcid(acid) ?? {}
      return near(
        { topic, id: `factor of free ${acid}` },
        factor,
        0.001,
        iodineOfMolecule(molar_mass, doubleBonds) / 100,
      )
    }),
  ]
}

/** Measured values of one sample; a trade oil is no pure substance. */
const TO_MEASURED = { iodine: 3, saponification: 2 }

function ofOtherOils({ non_triglycerides }: Constants): Example[] {
  return non_triglycerides.flatMap((row) => {
    const molar_mass = row.mean_ester_molar_mass ?? row.molar_mass
    const saponification =
      molar_mass === undefined
        ? worked('saponification-value', { ingredient: row.oil }, 'saponification_value')
        : saponificationOfMolecule(molar_mass, 1)
    const sv = { topic: 'saponification-value', unit: 'mg/g' }
    const { published, computed_iodine_value_two_double_bonds: apart, published_iodine_value: printed } = row
    const iodine = molar_mass === undefined ? Number.NaN : iodineOfMolecule(molar_mass, 2)
    const iv = { topic: 'iodine-value', unit: 'g/100 g' }
    return [
      near({ ...sv, id: `${row.oil}, worked out apart` }, row.computed_saponification_value, 0.1, saponification),
      ...(Array.isArray(published) ? [inRange({ ...sv, id: `${row.oil}, printed` }, published, saponification)] : []),
      ...(typeof published === 'number'
        ? [near({ ...sv, id: `${row.oil}, printed` }, published, TO_MEASURED.saponification, saponification)]
        : []),
      ...(apart === undefined ? [] : [near({ ...iv, id: `${row.oil}, worked out apart` }, apart, 0.1, iodine)]),
      ...(printed === undefined
        ? []
        : [near({ ...iv, id: `${row.oil}, printed` }, printed, TO_MEASURED.iodine, iodine)]),
    ]
  })
}

/** Iodine and saponification values out of fatty acids and of single molecules, as printed and as worked out apart. */
export function examples(): Example[] {
  const { midpoint_check, oil_constants } = readReference<{ midpoint_check: Midpoint[]; oil_constants: Constants }>(
    'worked-examples.json',
  )
  return [...midpoint_check.flatMap(ofMidpoint), ...ofFactors(oil_constants), ...ofOtherOils(oil_constants)]
}
