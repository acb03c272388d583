import { afterAll, beforeAll, describe } from 'vitest'
import type { App } from '#api/routes/shared.ts'
import { ASKED, BODY, FACE, run, SILENT, startLaw, STOP, WASH } from './law-world.ts'

let app: App
beforeAll(async () => {
  app = await startLaw()
}, 180_000)
afterAll(() => app?.close())

// Each figure: Annex II, III, V or VI of Regulation (EC) No 1223/2009 in the export of 9 September 2026 (read), at the entry
// that stands in the second place, unless a line says otherwise.

describe('preservatives are counted as the law counts them (Annex V)', () => {
  run(
    () => app,
    [
      ['benzoate: 0.589 % of the salt is 0.499 % of the acid', '1', { 'sodium-benzoate': 0.589 }, {}, SILENT],
      ['benzoate: acid and salt share the 0.5 %', '1', { 'sodium-benzoate': 0.4, 'benzoic-acid': 0.2 }, {}, STOP],
      ['benzoate: rinsed off 2.5 % as acid', '1', { 'sodium-benzoate': 2.94 }, WASH, SILENT],
      ['benzoate: rinsed off no more', '1', { 'sodium-benzoate': 3 }, WASH, STOP],
      ['potassium benzoate keeps 0.5 % as acid even rinsed off', '1a', { 'potassium-benzoate': 0.7 }, WASH, STOP],
      ['sorbate: 0.6 % as acid, the salt by its acid', '4', { 'potassium-sorbate': 0.8 }, {}, SILENT],
      ['sorbate: 0.85 % of the salt is 0.63 % of the acid', '4', { 'potassium-sorbate': 0.85 }, {}, STOP],
      ['propyl and butyl paraben together 0.14 %', '12a', { propylparaben: 0.1, butylparaben: 0.1 }, WASH, STOP],
      ['propylparaben below it', '12a', { propylparaben: 0.15 }, WASH, SILENT],
      [
        'phenoxyethanol in a blend and beside it',
        '29',
        { 'phenoxyethanol-and-ethylhexylglycerin': 1, phenoxyethanol: 0.2 },
        {},
        STOP,
      ],
      ['MIT left on', '57', { methylisothiazolinone: 0.0005 }, {}, STOP],
      ['MIT rinsed off', '57', { methylisothiazolinone: 0.0015 }, WASH, SILENT],
      // That the mixture and MIT alone exclude each other is from memory; the sum of both is what is tried.
      [
        'the mixture and MIT beside it are summed',
        '39',
        { methylchloroisothiazolinone: 0.0011, methylisothiazolinone: 0.0008 },
        WASH,
        STOP,
      ],
      [
        'sulfite counts as SO2: 0.39 % of sodium sulfite',
        '9',
        { 'sodium-sulfite': 0.39 },
        { ...FACE, uses: [] },
        SILENT,
      ],
      ['sulfite counts as SO2: 0.4 % of sodium sulfite', '9', { 'sodium-sulfite': 0.4 }, { ...FACE, uses: [] }, STOP],
      ['climbazole on the body is none of its four uses', '32', { climbazole: 0.2 }, { ...BODY, uses: [] }, STOP],
      ['climbazole for feet', '32', { climbazole: 0.2 }, { ...BODY, uses: ['foot-care'] }, SILENT],
      ['IPBC on lips', '56', { 'iodopropynyl-butylcarbamate': 0.005 }, { areas: ['lip'] }, STOP],
      [
        'IPBC in a deodorant above 0.0075 %',
        '56',
        { 'iodopropynyl-butylcarbamate': 0.009 },
        { areas: ['deodorant'] },
        STOP,
      ],
      [
        'triclosan in a soap, stated',
        '25',
        { triclosan: 0.3 },
        { product: 'rinse-off', areas: ['hand'], uses: ['soap'] },
        SILENT,
      ],
      [
        'triclosan in a deodorant that is a spray',
        '25',
        { triclosan: 0.3 },
        { areas: ['deodorant'], dispensing: 'aerosol' },
        STOP,
      ],
      [
        'triclosan in a deodorant of which nobody said how it comes out',
        '25',
        { triclosan: 0.3 },
        { areas: ['deodorant'] },
        ASKED,
      ],
      [
        'silver zinc zeolite in a cream',
        '61',
        { 'ammonium-silver-zinc-aluminum-silicate': 0.5 },
        { ...FACE, dispensing: 'other' },
        STOP,
      ],
      [
        'silver zinc zeolite in a deodorant spray',
        '61',
        { 'ammonium-silver-zinc-aluminum-silicate': 1 },
        { areas: ['deodorant'], dispensing: 'pump-spray' },
        SILENT,
      ],
      [
        'silver zinc zeolite in a deodorant stick',
        '61',
        { 'ammonium-silver-zinc-aluminum-silicate': 1 },
        { areas: ['deodorant'], dispensing: 'other' },
        STOP,
      ],
      ['bronopol 0.1 %', '21', { '2-bromo-2-nitropropane-1-3-diol': 0.11 }, {}, STOP],
    ],
  )
})
