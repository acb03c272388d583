import { afterAll, beforeAll, describe } from 'vitest'
import type { App } from '#api/routes/shared.ts'
import { ASKED, BODY, FACE, run, SHAMPOO, SILENT, startLaw, STOP, WASH } from './law-world.ts'
import type { Rest } from './law-world.ts'

let app: App
beforeAll(async () => {
  app = await startLaw()
}, 180_000)
afterAll(() => app?.close())

const KEPT = { phenoxyethanol: 0.8 } // something else preserves, so that the acid is there for another purpose
const WAVING: Rest = { ...SHAMPOO, ph: 8.5, uses: ['hair-waving'] }

// Each figure: Annex II, III, V or VI of Regulation (EC) No 1223/2009 in the export of 9 September 2026 (read), at the entry
// that stands in the second place, unless a line says otherwise.

describe('bans come first (Annex II)', () => {
  run(
    () => app,
    [
      ['zinc pyrithione', '1670', { 'zinc-pyrithione': 0.5 }, SHAMPOO, STOP],
      ['butylphenyl methylpropional', '1666', { 'butylphenyl-methylpropional': 0.001 }, {}, STOP],
      ['formaldehyde itself', '1577', { formaldehyde: 0.05 }, {}, STOP],
      ['boric acid', '1395', { 'boric-acid': 1 }, {}, STOP],
      ['perborate', '1397', { 'sodium-perborate': 1 }, SHAMPOO, STOP],
      ['isopropylparaben', '1374', { isopropylparaben: 0.1 }, {}, STOP],
      ['hydroquinone in a face cream', '1339', { hydroquinone: 2 }, FACE, STOP],
      [
        'hydroquinone in artificial nails for professionals',
        '1339',
        { hydroquinone: 0.02 },
        { areas: ['nail'], uses: ['artificial-nails'], professional: true },
        SILENT,
      ],
      [
        'hydroquinone in artificial nails for anybody',
        '1339',
        { hydroquinone: 0.02 },
        { areas: ['nail'], uses: ['artificial-nails'], professional: false },
        STOP,
      ],
      ['4-methylbenzylidene camphor', '1730', { '4-methylbenzylidene-camphor': 3 }, BODY, STOP],
      ['diethanolamine', '411', { diethanolamine: 0.5 }, {}, STOP],
      ['verbena oil as a scent', '450', { 'lippia-citriodora-oil': 0.1 }, {}, STOP],
      ['vitamin D', '335', { cholecalciferol: 0.01 }, {}, STOP],
    ],
  )
})

describe('restricted substances by product (Annex III)', () => {
  run(
    () => app,
    [
      ['salicylic acid 3 % in a shampoo', '98', { 'salicylic-acid': 3, ...KEPT }, SHAMPOO, SILENT],
      ['salicylic acid 3.5 % in a shampoo', '98', { 'salicylic-acid': 3.5, ...KEPT }, SHAMPOO, STOP],
      ['salicylic acid 2 % on the face', '98', { 'salicylic-acid': 2, ...KEPT }, { ...FACE, ph: 3.8 }, SILENT],
      ['salicylic acid 1 % in a body lotion', '98', { 'salicylic-acid': 1, ...KEPT }, { ...BODY, ph: 3.8 }, STOP],
      [
        'salicylic acid for children under 3',
        '3',
        { 'salicylic-acid': 0.3, ...KEPT },
        { areas: ['body', 'under-3'] },
        STOP,
      ],
      [
        'thioglycolate 10 % for waving, for anybody',
        '2a',
        { 'thioglycolic-acid': 10 },
        { ...WAVING, professional: false },
        STOP,
      ],
      [
        'thioglycolate 10 % for waving, for professionals',
        '2a',
        { 'thioglycolic-acid': 10 },
        { ...WAVING, professional: true },
        SILENT,
      ],
      ['thioglycolate 10 % for waving, for whom is not said', '2a', { 'thioglycolic-acid': 10 }, WAVING, ASKED],
      [
        'thioglycolate for professionals above pH 9.5',
        '2a',
        { 'thioglycolic-acid': 10 },
        { ...WAVING, professional: true, ph: 10 },
        'stop law-ph',
      ],
      // 10 % of the ammonium salt is 10 x 92.12 / 109.15 = 8.44 % of the acid
      [
        'ammonium thioglycolate counts by its acid',
        '2a',
        { 'ammonium-thioglycolate': 10 },
        { ...WAVING, professional: false },
        STOP,
      ],
      ['triethanolamine 3 % left on', '62', { triethanolamine: 3 }, {}, STOP],
      ['triethanolamine 3 % rinsed off has no figure', '62', { triethanolamine: 3 }, WASH, SILENT],
      ['kojic acid 1 % on the face', '375', { 'kojic-acid': 1 }, FACE, SILENT],
      ['kojic acid on the body', '375', { 'kojic-acid': 0.5 }, BODY, STOP],
      ['arbutin 7 % in a face cream', '378', { arbutin: 7 }, FACE, SILENT],
      ['arbutin in a body lotion', '378', { arbutin: 2 }, BODY, STOP],
      ['alpha-arbutin 1 % in a body lotion', '377', { 'alpha-arbutin': 1 }, BODY, STOP],
      [
        'methyl salicylate 0.1 % left on',
        '324',
        { 'methyl-salicylate': 0.1 },
        { ...BODY, uses: [], dispensing: 'other' },
        STOP,
      ],
      [
        'methyl salicylate 0.5 % in a hand wash',
        '324',
        { 'methyl-salicylate': 0.5 },
        { product: 'rinse-off', areas: ['hand'] },
        SILENT,
      ],
      ['methyl salicylate on lips 0.04 %', '324', { 'methyl-salicylate': 0.04 }, { areas: ['lip'], uses: [] }, STOP],
      [
        'methyl salicylate for small children',
        '324',
        { 'methyl-salicylate': 0.01 },
        { ...WASH, areas: ['body', 'under-3'] },
        STOP,
      ],
      ['hydrogen peroxide 5 % on skin', '12', { 'hydrogen-peroxide': 5 }, BODY, STOP],
      ['hydrogen peroxide 12 % on hair', '12', { 'hydrogen-peroxide': 12 }, SHAMPOO, SILENT],
      // 14 % of urea peroxide sets 14 x 34.01 / 94.07 = 5.06 % free
      ['urea peroxide counts by the peroxide it sets free', '12', { 'urea-peroxide': 14 }, BODY, STOP],
      ['lye at pH 6 is no matter of percentage', '15a', { 'sodium-hydroxide': 1 }, { ...BODY, ph: 6 }, SILENT],
      [
        'lye in a straightener for anybody',
        '15a',
        { 'sodium-hydroxide': 3 },
        { ...SHAMPOO, ph: 13, uses: ['hair-straightening'], professional: false },
        STOP,
      ],
      [
        'lye in a straightener for professionals',
        '15a',
        { 'sodium-hydroxide': 3 },
        { ...SHAMPOO, ph: 13, uses: ['hair-straightening'], professional: true },
        SILENT,
      ],
      [
        'selenium sulfide against dandruff',
        '49',
        { 'selenium-sulfide': 1 },
        { ...SHAMPOO, uses: ['anti-dandruff'] },
        SILENT,
      ],
      ['selenium sulfide in a conditioner', '49', { 'selenium-sulfide': 1 }, { ...SHAMPOO, uses: [] }, STOP],
      // 2.2 % of zinc chloride is 2.2 x 65.38 / 136.29 = 1.06 % of zinc
      ['zinc salts count as zinc', '24', { 'zinc-chloride': 2.2 }, BODY, STOP],
      ['BHT 0.9 %', '325', { bht: 0.9 }, {}, STOP],
      ['self-tanning 12 % on the face', '322', { dihydroxyacetone: 12 }, { ...FACE, uses: ['self-tanning'] }, STOP],
      [
        'zinc oxide 26 % as a filter (Annex VI)',
        '30',
        { 'zinc-oxide': 26 },
        { ...FACE, form: 'oil-in-water', uses: ['sun-protection'] },
        STOP,
      ],
    ],
  )
})

describe('the day on which goods reach the market decides', () => {
  const RETINOL = { retinol: 0.5 }
  const CITRAL = { citral: 0.3 }
  const LIP: Rest = { areas: ['lip'], fill: 'ricinus-communis-seed-oil', ph: null }
  run(
    () => app,
    [
      ['retinol 0.5 % on the face from November 2025', '376', RETINOL, FACE, STOP, '2025-11-01'],
      ['retinol the day before: the earlier wording is not on record', '376', RETINOL, FACE, ASKED, '2025-10-31'],
      // 0.05 % as retinol; 0.5 % of the palmitate is 0.5 x 286.45 / 524.86 = 0.27 %
      ['retinyl palmitate counts as retinol', '376', { 'retinyl-palmitate': 0.5 }, BODY, STOP],
      ['retinol 0.2 % in a body lotion', '376', { retinol: 0.2 }, BODY, STOP],
      // Dates of (EU) 2026/909 are from summaries (secondary); the limits were read.
      ['citral on lips is announced', '70', CITRAL, LIP, 'warn limit-coming', '2026-11-27'],
      ['citral on lips binds from 2027', '70', CITRAL, LIP, STOP, '2027-01-01'],
      ['ring siloxane left on is announced', '70', { cyclopentasiloxane: 10 }, {}, 'warn limit-coming', '2026-11-27'],
      ['ring siloxane left on binds from June 2027', '70', { cyclopentasiloxane: 10 }, {}, STOP, '2027-06-06'],
      ['ring siloxane rinsed off is over', '70', { cyclopentasiloxane: 0.2 }, WASH, STOP, '2026-11-27'],
    ],
  )
})

// 21 CFR 74.2255 and 74.2333 (read in copies of the code), 74.2336 as the agency lists it (read)
describe('colours on lips in the US', () => {
  const LIPS: Rest = { market: 'us', areas: ['lip'] }
  run(
    () => app,
    [
      ['D&C Red No. 36 at 2.9 %', '74.2336', { 'ci-12085': 2.9 }, LIPS, SILENT],
      ['D&C Red No. 36 at 3.1 %', '74.2336', { 'ci-12085': 3.1 }, LIPS, STOP],
      ['D&C Red No. 36 at 3.1 % on the face', '74.2336', { 'ci-12085': 3.1 }, { ...LIPS, areas: ['face'] }, SILENT],
      ['D&C Red No. 33 at 3.1 %', '74.2333', { 'ci-17200': 3.1 }, LIPS, STOP],
      ['D&C Orange No. 5 at 4.9 %', '74.2255', { 'ci-45370': 4.9 }, LIPS, SILENT],
      ['D&C Orange No. 5 at 5.1 %', '74.2255', { 'ci-45370': 5.1 }, LIPS, STOP],
    ],
  )
})

describe('what is remembered or advised never stops', () => {
  run(
    () => app,
    [
      // Annex VI, entry 10, from memory
      ['octocrylene 12 %', '10', { octocrylene: 12 }, FACE, 'warn limit-by-law'],
      // 21 CFR 700.13 and 250.250, from memory
      ['mercury in the US, face', '700.13', { thimerosal: 0.01 }, { ...FACE, market: 'us' }, 'warn limit-by-law'],
      [
        'hexachlorophene in the US',
        '250.250',
        { hexachlorophene: 0.2 },
        { ...BODY, market: 'us' },
        'warn limit-by-law',
      ],
      // 21 CFR 700.18, quoted in a second text
      ['chloroform in the US was read in a quotation, and stops', '700.18', { chloroform: 1 }, { market: 'us' }, STOP],
      // SCCS/1681/25, conclusion 1 (read)
      [
        'tea tree oil 3 % in a shampoo',
        '1681/25',
        { 'melaleuca-alternifolia-leaf-oil': 3 },
        SHAMPOO,
        'warn limit-by-opinion',
      ],
      // CIR panel, 1998, page 15S (read): 10 % at pH 3.5 and above
      [
        'glycolic acid 9 % at pH 3 in the US',
        'AHA',
        { 'glycolic-acid': 9 },
        { ...FACE, market: 'us', ph: 3 },
        'warn limit-by-opinion',
      ],
      [
        'glycolic acid 9 % at pH 3.6 in the US',
        'AHA',
        { 'glycolic-acid': 9 },
        { ...FACE, market: 'us', ph: 3.6 },
        SILENT,
      ],
    ],
  )
})
