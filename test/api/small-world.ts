import { openWorld } from '#api/open-world.ts'
import { idOf } from '#engine/index.ts'
import type { RawData, World } from '#engine/index.ts'

const SEEN = { source: 'practice', locator: 'usual practice', access: 'common-practice', date: '2026-11-25' }

const ROLES = {
  'water-phase': { label: 'Water-phase base', says: 'What the water phase is made of', phase: 'water' },
  water: { label: 'Water', says: 'Carries the water phase', broader: 'water-phase', phase: 'water' },
  humectant: {
    label: 'Humectant',
    says: 'Holds water',
    phase: 'water',
    confused_with: ['water'],
    swap: {
      scope: 'humectant',
      dose: 'same',
      lost: 'fine',
      must: [{ word: 'solubility', one_of: ['water'], why: 'it has to dissolve in water' }],
      criteria: [{ by: 'class', group: 'charge', weight: 2, why: 'charge' }],
    },
  },
  preservative: { label: 'Preservative', says: 'Keeps germs down', phase: 'water' },
  acid: { label: 'Acid', says: 'Lowers the pH', phase: 'water' },
}

/** Five records, enough to answer every question of the API. */
const INGREDIENTS: Record<string, unknown>[] = [
  { id: 'aqua', inci: 'AQUA', seen: SEEN, same_as: ['water'], solubility: 'water', roles: [{ role: 'water' }] },
  {
    id: 'glycerin',
    inci: 'GLYCERIN',
    tier: 'short',
    cas: ['56-81-5'],
    names: { exact: ['glycerol'] },
    seen: SEEN,
    solubility: 'water',
    classes: ['nonionic'],
    roles: [{ role: 'humectant', level_percent: { min: 1, max: 10, typical: 3 } }],
    stands_in_for: [{ for: 'sorbitol', says: 'same job', ratio: 1, grade: 'good' }],
  },
  { id: 'sorbitol', inci: 'SORBITOL', seen: SEEN, classes: ['nonionic'], roles: [{ role: 'humectant' }] },
  {
    id: 'sodium-benzoate',
    inci: 'SODIUM BENZOATE',
    seen: SEEN,
    solubility: 'water',
    roles: [{ role: 'preservative', when: { ph: [2, 5], without: ['role:acid'] } }],
    facts: {
      ph_stability: [2, 8],
      heat_max_c: 90,
      ph_effective: [
        { min: 2, max: 4, source: 'S-1', locator: 'p. 1', access: 'read' },
        { min: 5, max: 6, source: 'S-1', locator: 'p. 9', access: 'read' },
      ],
    },
    cautions: ['dissolve it before the acid goes in'],
  },
  {
    id: 'citric-acid',
    inci: 'CITRIC ACID',
    seen: SEEN,
    solubility: 'water',
    roles: [{ role: 'acid' }],
    facts: { ph_stability: [2, 7], heat_max_c: 100 },
  },
]

const LIMIT = {
  id: 'eu-v-1',
  market: 'eu',
  act: 'Annex V',
  entry: '1',
  title: 'Benzoic acid and its salt',
  kind: 'law',
  basis: 'as benzoic acid',
  use: 'preservative',
  members: { 'sodium-benzoate': 0.8475 },
  rows: [
    { scope: { product: 'leave-on' }, max_percent: 0.5, source: 'S-1', locator: 'ref. no 1', access: 'read' },
    { scope: { areas: ['eye'] }, prohibited: true, source: 'S-1', locator: 'ref. no 1', access: 'read' },
  ],
  date: '2026-11-25',
}

const NAMES = ['AQUA', 'WATER', 'GLYCERIN', 'SORBITOL', 'SODIUM BENZOATE', 'CITRIC ACID', 'UREA']

/** What a loader would hand over, read from nothing. */
export const rawData = (): RawData => ({
  version: 'small-1',
  roles: { path: 'roles.yaml', data: { roles: ROLES } },
  classes: { path: 'classes.yaml', data: { classes: { nonionic: { group: 'charge', says: 'No charge' } } } },
  properties: {
    path: 'properties.yaml',
    data: {
      ph_stability: { kind: 'range', unit: 'pH', says: 'keeps' },
      ph_effective: { kind: 'range', unit: 'pH', says: 'works' },
      heat_max_c: { kind: 'range', unit: 'C', says: 'hottest' },
      solubility: { kind: 'one-of', words: ['water', 'oil'], says: 'dissolves in' },
    },
  },
  clashes: { path: 'clashes.yaml', data: { clashes: [] } },
  relations: { path: 'relations.yaml', data: { relations: {} } },
  names: { path: 'names.yaml', data: {} },
  ingredients: INGREDIENTS.map((data) => ({ path: `ingredients/${String(data['id'])}.yaml`, data })),
  limits: [{ path: 'limits/eu-v-1.yaml', data: LIMIT }],
  rules: [],
  allergens: [],
  tables: [],
  sources: [{ path: 'sources/list.tsv', rows: [{ source_id: 'S-1', title: 'A handbook', locator: 'shelf 1' }] }],
  inventory: NAMES.map((inci) => ({ id: idOf(inci), inci, cas: [], functions: inci === 'UREA' ? ['HUMECTANT'] : [] })),
})

export const smallWorld = (): World => openWorld(rawData())

/** A formula that holds together as far as the API is concerned. */
export const formula = (changes: Record<string, unknown> = {}) => ({
  market: 'eu',
  product: 'leave-on',
  ph: 4.5,
  hottest_c: 40,
  lines: [
    { ingredient: 'aqua', fills: true },
    { ingredient: 'glycerin', share_percent: 3 },
    { ingredient: 'sodium-benzoate', share_percent: 0.5 },
  ],
  ...changes,
})
