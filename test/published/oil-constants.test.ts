import { fileURLToPath } from 'node:url'
import { describe, expect, test } from 'vitest'
import { iodineValue, saponificationValue } from '#engine/chemistry/oil-constants.ts'
import { readTable } from '#load/read-table.ts'

/**
 * Ranges as printed for iodine value [g/100 g] and saponification value [mg/g], beside the fatty acids of the same oil.
 * CXS 210 is the Codex standard for named vegetable oils, CXS 33 that for olive oil, CXS 325 that for shea butter; most
 * per-oil figures were seen in a re-typed copy (access secondary), those marked memory in none.
 */
interface Row {
  oil: string
  source: string
  sources: string[]
  iodine: readonly [number, number]
  saponification: readonly [number, number]
}

const CXS210 = ['codex-cxs210-retyped', 'codex-cxs210', 'codex-cxs210-2022-amend']
const row = (
  oil: string,
  source: string,
  sources: string[],
  iodine: readonly [number, number],
  saponification: readonly [number, number],
): Row => ({ oil, source, sources, iodine, saponification })

const PRINTED: Row[] = [
  row('coconut oil', 'CXS 210', CXS210, [6.3, 10.6], [248, 265]),
  row('palm oil', 'CXS 210', CXS210, [50, 55], [190, 209]),
  row('soya bean oil', 'CXS 210', CXS210, [124, 139], [189, 195]),
  row('rapeseed oil, low erucic', 'CXS 210', CXS210, [105, 126], [182, 193]),
  row('sunflower oil', 'CXS 210 with the amendment of 2022', CXS210, [118, 141], [187, 194]),
  row('sunflower oil, high oleic', 'CXS 210', CXS210, [78, 90], [182, 194]),
  row('sunflower oil, mid oleic', 'CXS 210', CXS210, [94, 122], [190, 191]),
  row('rice bran oil', 'CXS 210', CXS210, [90, 115], [180, 199]),
  row('flaxseed oil', 'CXS 210', CXS210, [170, 211], [185, 197]),
  row('safflower oil', 'CXS 210, ranges from memory', CXS210, [136, 148], [186, 198]),
  row('grapeseed oil', 'CXS 210', CXS210, [128, 150], [188, 194]),
  row('almond oil', 'CXS 210', CXS210, [85, 109], [183, 207]),
  row('almond oil', 'Ph. Eur., re-typed', ['pheur-almond-retyped'], [95, 109], [190, 195]),
  row('olive oil', 'CXS 33', ['codex-cxs33', 'codex-cxs33-mem'], [75, 94], [184, 196]),
  row('peanut oil', 'CXS 210, ranges from memory', CXS210, [77, 107], [187, 196]),
  row('argan oil', 'NM 08.5.090', ['nm-08-5-090'], [91, 110], [189, 199.1]),
  row('shea butter', 'CXS 325, from memory', ['codex-cxs325-mem'], [30, 75], [160, 195]),
  row('cocoa butter', 'NF', ['nf-cocoa'], [34, 38], [188, 198]),
  row('caprylic/capric triglyceride', 'Ph. Eur.', ['pheur-mct-copy'], [0, 1], [310, 360]),
  row('argan oil', 'sample of 1974', ['huyghebaert1974'], [97, 97], [192.4, 192.4]),
  row('castor oil', 'sample of 1982', ['goering1982'], [82, 90], [176, 187]),
  row('soya bean oil', 'food tables 2017, one sample', ['ifct2017'], [124, 139], [189, 195]),
  row('sunflower oil', 'food tables 2017, one sample', ['ifct2017'], [118, 141], [187, 194]),
  row('safflower oil', 'food tables 2017, one sample', ['ifct2017'], [136, 148], [186, 198]),
  row('rice bran oil', 'food tables 2017, one sample', ['ifct2017'], [90, 115], [180, 199]),
  row('coconut oil', 'food tables 2017, one sample', ['ifct2017'], [6.3, 10.6], [248, 265]),
  row('peanut oil', 'food tables 2017, one sample', ['ifct2017'], [77, 107], [187, 196]),
  row('cottonseed oil', 'food tables 2017, one sample', ['ifct2017'], [100, 123], [189, 198]),
]

/** Rows whose print and calculation disagree. Kept, not bent. */
const DISPUTED: Row[] = [
  // A retail sample that behaves like palm olein, whose iodine value is about 58.
  row('palm oil', 'food tables 2017, one sample', ['ifct2017'], [50, 55], [190, 209]),
  // The paper contradicts itself: its own acids give 52, it prints 96.6.
  row('moringa oil', 'GC-MS sample', ['moringa-gcms'], [96.6, 96.6], [185.2, 185.2]),
  // Wide ranges of an encyclopaedia whose mid-points add up to 91.5 %.
  row('neem oil', 'encyclopaedia', ['wiki-neem'], [65, 80], [175, 205]),
]

const IODINE_TOLERANCE = 3
const SAPONIFICATION_TOLERANCE = 2

const TABLE = readTable(fileURLToPath(new URL('../../graph-data/tables/fatty-acids.tsv', import.meta.url)))

/** Mid-points of the printed ranges; both functions scale by themselves. */
const profileOf = ({ oil, sources }: Row): Record<string, number> =>
  Object.fromEntries(
    TABLE.filter((entry) => entry['oil'] === oil && sources.includes(entry['source_id'] ?? '')).map((entry) => [
      entry['fatty_acid'],
      (Number(entry['min_pct']) + Number(entry['max_pct'])) / 2,
    ]),
  )

const within = (value: number, [min, max]: readonly [number, number], tolerance: number): void => {
  expect(value).toBeGreaterThanOrEqual(min - tolerance)
  expect(value).toBeLessThanOrEqual(max + tolerance)
}

describe('iodine value out of fatty acids', () => {
  test.each(PRINTED)('$oil ($source) comes to $iodine', (printed) =>
    within(iodineValue(profileOf(printed))!, printed.iodine, IODINE_TOLERANCE),
  )
  test.fails.each(DISPUTED)('disputed: $oil ($source) comes to $iodine', (printed) =>
    within(iodineValue(profileOf(printed))!, printed.iodine, IODINE_TOLERANCE),
  )
})

describe('saponification value out of fatty acids', () => {
  test.each(PRINTED)('$oil ($source) comes to $saponification', (printed) =>
    within(saponificationValue(profileOf(printed))!, printed.saponification, SAPONIFICATION_TOLERANCE),
  )
})

// Worked out apart from this program, with the molar average; last digit one decimal.
describe.each([
  ['coconut oil', CXS210, 9.5, 254.3],
  ['palm oil', CXS210, 52.8, 198.6],
  ['soya bean oil', CXS210, 132.4, 192.6],
  ['sunflower oil', CXS210, 126.9, 191.5],
  ['flaxseed oil', CXS210, 177.5, 192.5],
  ['almond oil', ['pheur-almond-retyped'], 99.9, 191.5],
  ['cocoa butter', ['nf-cocoa'], 35.6, 194.5],
  ['castor oil', ['goering1982'], 79.5, 181.5],
] as const)('%s of %o', (oil, sources, iodine, saponification) => {
  const profile = profileOf(row(oil, '', [...sources], [0, 0], [0, 0]))
  test(`has the iodine value ${iodine}`, () => expect(Math.abs(iodineValue(profile)! - iodine)).toBeLessThan(1))
  test(`has the saponification value ${saponification}`, () =>
    expect(Math.abs(saponificationValue(profile)! - saponification)).toBeLessThan(0.5))
})
