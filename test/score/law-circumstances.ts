import type { Area, Dispensing, Form, Use } from '#engine/model/formula.ts'
import type { LawRow } from './law-rows.ts'

/** A product on which a row bears. */
export interface Circumstances {
  product?: 'leave-on' | 'rinse-off'
  areas?: Area[]
  form?: Form
  ph?: number
  /** further lines that the use needs */
  beside?: Record<string, number>
  /** the substance to test with, where it is not the first name of the row */
  substance?: string
  /** what `beside` counts towards the limit already [%] */
  already_percent?: number
  /** other entries that judge the same amount (another use of the substance) */
  entries?: string[]
  /** grams that the entry counts in a gram of it, where the row gives no converted limit */
  factor?: number
  /** the row speaks of a use or purpose that no formula states: within it is asked, never stopped */
  named?: true
  /** what the maker states of it */
  uses?: Use[]
  professional?: boolean
  dispensing?: Dispensing
}

const BY_SCOPE: Record<string, Circumstances> = {
  all: { product: 'leave-on', areas: ['hand'] },
  'leave-on': { product: 'leave-on', areas: ['hand'] },
  'rinse-off': { product: 'rinse-off', areas: ['hand'] },
  hair: { product: 'rinse-off', areas: ['hair'] },
  face: { product: 'leave-on', areas: ['face'] },
  eye: { product: 'leave-on', areas: ['eye'] },
  lip: { product: 'leave-on', areas: ['lip'] },
  nail: { product: 'leave-on', areas: ['nail'] },
  deodorant: { product: 'leave-on', areas: ['deodorant'] },
  depilatory: { product: 'rinse-off', areas: ['body'], named: true },
  'raw-material': { product: 'leave-on', areas: ['hand'] },
}

const SCENTED: Circumstances = {
  product: 'leave-on',
  areas: ['body'],
  form: 'solution',
  beside: { 'alcohol-denat': 80 },
  named: true,
}
const MADE_UP: Circumstances = { beside: { 'ci-77491': 2 }, named: true }
const OTHERWISE_PRESERVED: Circumstances = { beside: { phenoxyethanol: 0.8 } }
const ALUMINA: Circumstances = { substance: 'alumina', factor: 0.5293 } // 2 x 26.982 / 101.96
const THIOGLYCOLATE: Circumstances = { substance: 'thioglycolic-acid', ph: 8.5 }
const TEA_TREE: Circumstances = { substance: 'melaleuca-alternifolia-leaf-oil' }

/** What a row needs beside its scope, by the start of its name; all that fit are put together, the longest last. */
const BY_FACT: Record<string, Circumstances> = {
  'EU-V-preamble-2': { substance: 'dmdm-hydantoin' },
  'EU-V-12-10': { factor: 0.8789 }, // 2 x 138.12 / 314.3, one calcium for two acids
  // methyl 0.4 x 138.12/152.15 + ethyl 0.4 x 138.12/166.18, each below its own 0.4
  'EU-V-12-11': {
    substance: '4-hydroxybenzoic-acid',
    beside: { methylparaben: 0.4, ethylparaben: 0.4 },
    already_percent: 0.6956,
  },
  // and propyl 0.1 x 138.12/180.20
  'EU-V-12a-07': {
    substance: '4-hydroxybenzoic-acid',
    beside: { methylparaben: 0.4, ethylparaben: 0.35, propylparaben: 0.1 },
    already_percent: 0.7306,
  },
  'EU-V-3-': { areas: ['body'], named: true },
  'EU-V-9-': { named: true },
  'EU-V-15-': {},
  'EU-V-16-': { factor: 0.4955 }, // Hg 200.59 / thiomersal 404.81
  'EU-V-17-': { factor: 0.5957 }, // Hg / phenylmercuric acetate 336.74
  'EU-V-25-': { product: 'rinse-off', areas: ['hand'], beside: { 'sodium-laureth-sulfate': 10 }, named: true },
  'EU-V-32-01': { product: 'leave-on', areas: ['hair'] },
  'EU-V-32-02': { areas: ['face'] },
  'EU-V-32-03': { areas: ['body'], named: true },
  'EU-V-32-04': { areas: ['hair'] },
  'EU-V-34-': {},
  'EU-V-39-': { substance: 'methylisothiazolinone' },
  'EU-V-43-': { named: true },
  'EU-V-44-': { substance: 'laurtrimonium-chloride', named: true },
  'EU-V-45-': { ph: 7 },
  'EU-V-54-': {},
  'EU-V-59-': { substance: 'silver-citrate', factor: (0.2 * 0.6309) / 0.0024 }, // 0.2 % of the blend is 0.0024 % silver; 63.09 % of the citrate is silver
  'EU-V-61-02': { areas: ['face'], form: 'powder' },
  'EU-III-2a-': { ...THIOGLYCOLATE, named: true },
  'EU-III-2a-03': { ph: 12 },
  'EU-III-2a-04': { product: 'rinse-off', areas: ['hair'], named: true },
  'EU-III-2b-': { substance: 'glyceryl-thioglycolate', factor: 0.5543, ph: 8, named: true }, // 92.12 / 166.19
  'EU-III-3-': { named: true },
  'EU-III-12-02': { areas: ['body'] },
  'EU-III-12-03': { named: true },
  'EU-III-14-': { named: true },
  'EU-III-15a-01': { ph: 12.5, named: true },
  'EU-III-15a-02': { ph: 12.5, named: true },
  'EU-III-15a-03': { ph: 12.5, named: true },
  'EU-III-15a-04': { beside: { 'calcium-thioglycolate': 3 } },
  'EU-III-15a-06': { ph: 12.5, substance: 'potassium-hydroxide', product: 'leave-on', areas: ['body'], named: true },
  'EU-III-15a-07': { substance: 'potassium-hydroxide', areas: ['nail'], factor: 0.7129, ph: 12.5, named: true }, // 40.00 / 56.11
  'EU-III-15b-01': { factor: 1.6701, ph: 12.5, named: true }, // 40.00 / 23.95
  'EU-III-15c-01': { ph: 12.5, beside: { 'guanidine-carbonate': 5 }, named: true },
  'EU-III-15c-02': { beside: { 'calcium-thioglycolate': 3 } },
  'EU-III-21-01': { areas: ['hair'] },
  'EU-III-21-02': { areas: ['hair'] },
  'EU-III-22-01': { named: true },
  'EU-III-22-02': { beside: { 'hydrogen-peroxide': 3 }, named: true },
  'EU-III-24-04': { substance: 'zinc-chloride', factor: 0.4798 }, // 65.38 / 136.29
  'EU-III-24-07': { substance: 'zinc-sulfate' },
  'EU-III-49-': { areas: ['hair'], named: true },
  'EU-III-50-': { substance: 'aluminum-zirconium-tetrachlorohydrex-gly' },
  'EU-III-53-02': { form: 'bar' },
  'EU-III-59-': { product: 'leave-on', areas: ['under-3'], form: 'powder' },
  'EU-III-60-': { substance: 'cocamide-dea' },
  'EU-III-61-': { substance: 'tromethamine' },
  'EU-III-62-': { substance: 'triethanolamine' },
  'EU-III-54-': { entries: ['43'], named: true },
  'EU-III-65-': { areas: ['hair'], entries: ['54'], named: true },
  'EU-III-66-01': { areas: ['body'] },
  'EU-III-70-04': SCENTED,
  'EU-III-70-07': { areas: ['hair'] },
  'EU-III-70-09': { product: 'leave-on', areas: ['intimate'], named: true },
  'EU-III-75-01': SCENTED,
  'EU-III-75-03': { areas: ['body'], beside: { 'sodium-laureth-sulfate': 10 }, named: true },
  'EU-III-75-05': { product: 'leave-on', areas: ['hair'] },
  'EU-III-75-09': { product: 'leave-on', areas: ['deodorant'] },
  'EU-III-75-06': { areas: ['body'] },
  'EU-III-75-07': MADE_UP,
  'EU-III-98-': { ...OTHERWISE_PRESERVED, entries: ['3'] },
  'EU-III-98-01': { areas: ['hair'] },
  'EU-III-98-02': { areas: ['face'] },
  'EU-III-98-03': { areas: ['body'] },
  'EU-III-99-': { substance: 'sodium-sulfite', factor: 0.5083, named: true, ...OTHERWISE_PRESERVED }, // 64.06 / 126.04
  'EU-III-99-01': { beside: { 'hydrogen-peroxide': 3, phenoxyethanol: 0.8 } },
  'EU-III-99-03': { areas: ['face'], beside: { dihydroxyacetone: 3, phenoxyethanol: 0.8 } },
  'EU-III-99-04': { areas: ['body'], beside: { dihydroxyacetone: 3, phenoxyethanol: 0.8 } },
  'EU-III-102-01': SCENTED,
  'EU-III-102-02': SCENTED,
  'EU-III-102-03': { product: 'leave-on', areas: ['body'], form: 'oil-in-water', beside: { limonene: 1 }, named: true },
  'EU-III-187-': { beside: { 'hydrogen-peroxide': 3 }, named: true },
  'EU-III-194-': {},
  'EU-III-196-': {},
  'EU-III-197-': { product: 'leave-on', areas: ['deodorant'], entries: ['58'], named: true },
  'EU-III-286-01': { product: 'rinse-off', areas: ['hair'], substance: 'cetrimonium-chloride' },
  'EU-III-286-02': { product: 'leave-on', areas: ['hair'], substance: 'cetrimonium-chloride' },
  'EU-III-287-01': { areas: ['hair'] },
  'EU-III-287-02': { areas: ['hair'] },
  'EU-III-297-01': { beside: { 'hydrogen-peroxide': 3 }, named: true },
  'EU-III-297-02': { beside: { 'ci-77491': 1 }, named: true },
  'EU-III-313-': { product: 'leave-on', areas: ['nail'] },
  'EU-III-321-01': { product: 'leave-on', areas: ['face'], form: 'powder' },
  'EU-III-322-': { areas: ['body'] },
  'EU-III-324-02': MADE_UP,
  'EU-III-324-04': { product: 'leave-on', areas: ['hair'] },
  'EU-III-324-05': { product: 'leave-on', areas: ['deodorant'] },
  'EU-III-324-06': { product: 'leave-on', areas: ['body'] },
  'EU-III-321-02': { product: 'leave-on', areas: ['hair'] },
  'EU-III-321-03': { product: 'leave-on', areas: ['hair'] },
  'EU-III-297-05': SCENTED,
  'EU-V-61-01': { areas: ['deodorant'] },
  'EU-III-324-08': {},
  'EU-III-324-07': { areas: ['body'] },
  'EU-III-324-09': SCENTED,
  'EU-III-375-': { product: 'leave-on', areas: ['hand'] },
  'EU-III-376-01': { areas: ['body'] },
  'EU-III-376-03': { areas: ['body'] },
  'EU-III-376-05': { areas: ['body'] },
  'EU-III-377-02': { areas: ['body'] },
  'EU-III-380-01': SCENTED,
  'EU-III-380-06': { areas: ['under-3'] },
  'EU-III-381-': ALUMINA,
  'EU-III-381-02': { areas: ['deodorant'] },
  'EU-III-381-08': { product: 'leave-on', areas: ['hair'] },
  'EU-III-381-05': { areas: ['body'], form: 'wash' },
  'EU-III-381-06': { areas: ['body'], form: 'bar' },
  'EU-III-381-07': { areas: ['hair'], form: 'wash' },
  'EU-III-381-09': { product: 'leave-on', areas: ['hair'] },
  'EU-III-381-10': MADE_UP,
  'EU-III-381-11': MADE_UP,
  'EU-III-381-12': MADE_UP,
  'EU-III-381-14': MADE_UP,
  'EU-III-381-17': { areas: ['body'] },
  'EU-III-381-18': { product: 'leave-on', areas: ['body'], form: 'powder' },
  'EU-VI-': { product: 'leave-on', areas: ['face'], form: 'oil-in-water' },
  'EU-II-213-': { substance: 'pvp-iodine' },
  'EU-II-221-': { substance: 'mercuric-oxide' },
  'EU-II-300-': { substance: 'hydrocortisone-acetate' },
  'EU-II-335-': { substance: 'cholecalciferol' },
  'EU-II-358-': { substance: 'citrus-aurantium-bergamia-peel-oil' },
  'EU-II-360-': { substance: 'cinnamomum-zeylanicum-leaf-oil' },
  'EU-II-409-': { substance: 'pyrogallol' },
  'EU-II-416-': { substance: 'hydrolyzed-human-placental-protein' },
  'EU-II-423-': { substance: 'inula-helenium-extract' },
  'EU-II-436-': { substance: 'ficus-carica-leaf-extract', named: true },
  'EU-II-1133-': { substance: 'saussurea-lappa-root-extract', named: true },
  'EU-II-1136-': { substance: 'myroxylon-pereirae-resin' },
  'EU-II-1376-': { substance: 'phenylparaben' },
  'EU-II-1381-': { substance: 'evernia-prunastri-extract' },
  'EU-II-1382-': { substance: 'evernia-furfuracea-extract' },
  'EU-II-1711-': { substance: 'melamine' },
  'EU-II-1716-': { substance: 'azadirachta-indica-seed-extract' },
  'EU-II-1727-': { substance: 'colloidal-silver' },
  'EU-REACH-70-': {},
  'EU-REACH-78-': { substance: 'polyethylene' },
  'EU-SCCS-1681-': TEA_TREE,
  'EU-SCCS-1681-25-01': { areas: ['hair'] },
  'EU-SCCS-1681-25-02': { areas: ['body'] },
  'EU-SCCS-1681-25-03': { areas: ['face'] },
  'US-CIR-AHA-01': { substance: 'glycolic-acid', named: true },
  'US-CIR-AHA-02': { substance: 'glycolic-acid', named: true },
  'US-CIR-AHA-03': { named: true },
  'US-CIR-AHA-04': { named: true },
  'US-CFR-700.14-': { substance: 'vinyl-chloride' },
  'US-CFR-700.16-': { substance: 'zirconium-chlorohydrate' },
  'US-CFR-700.13-': { substance: 'thimerosal', factor: 0.4955, areas: ['eye'] },
  'US-CFR-700.35-': { substance: 'zinc-oxide' },
  'US-CFR-250.250-': { substance: 'hexachlorophene' },
  'US-CFR-73-': { substance: 'ci-77491' },
  'US-FDC-OTC-': { areas: ['face'] },
}

/** The product on which a row bears, put together from its scope and from what its use needs. */
export function circumstancesOf({ fact, scope }: LawRow): Circumstances {
  const starts = Object.keys(BY_FACT)
    .filter((start) => fact.startsWith(start))
    .sort((a, b) => a.length - b.length)
  return starts.reduce<Circumstances>((all, start) => ({ ...all, ...BY_FACT[start] }), {
    ...(BY_SCOPE[scope] ?? BY_SCOPE['all']),
  })
}
