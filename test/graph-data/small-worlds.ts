import { makeRaw } from '../helpers.ts'
import type { Parts } from '../helpers.ts'
import type { RawData } from '#engine/index.ts'

export interface Small extends Parts {
  allergens?: object[]
  /** what classes and roles state about their members */
  about?: { classes?: object; roles?: object }
}

/** A small world, good and bad, whose parts an example names as far as they matter. */
export interface Example {
  good: Small
  bad: Small
  /** place of the fault and words that it has to hold */
  at: RegExp
  says: RegExp
}

export const SEEN = { source: 'practice', access: 'common-practice', date: '2026-01-31' }
export const GLYCERIN = {
  id: 'glycerin',
  inci: 'GLYCERIN',
  cas: ['56-81-5'],
  seen: SEEN,
  phase: 'water',
  solubility: 'water',
  form: 'liquid',
  usual: 5,
  roles: [{ role: 'humectant', level_percent: { min: 1, max: 10, typical: 3 } }],
}
type Loose = Record<string, unknown>

const row = (id: string, cas: string[] = []) => ({ id, inci: id.toUpperCase(), cas, functions: [] })

const range = (unit: string, plausible?: [number, number]) => ({ kind: 'range', unit, plausible })
const PROPERTIES = {
  ph_stability: range('pH', [-1, 15]),
  ph_effective: range('pH'),
  heat_max_c: range('C'),
  heat_min_c: range('C'),
  melting_c: range('C'),
  active_percent: range('%'),
  hlb: range('1'),
  acid_pka: range('1'),
  iodine_value: range('g/100 g'),
  saponification_value: range('mg/g'),
  usual: range('1'),
  fatty_acids: { kind: 'profile', unit: '%' },
  phase: { kind: 'one-of', words: ['water', 'oil'] },
  solubility: { kind: 'one-of', words: ['water', 'oil'] },
  form: { kind: 'one-of', words: ['liquid', 'solid'] },
  spectrum: { kind: 'spectrum', words: ['strong', 'weak'] },
}

/** Raw data of a small world with groups of classes and allergens. */
export function rawOf({ allergens = [], classes = {}, about = {}, ...parts }: Small): RawData {
  const groups = { chemistry: 'Family by structure' }
  return {
    ...makeRaw(parts),
    roles: { path: 'roles.yaml', data: { roles: parts.roles ?? {}, facts: about.roles ?? {} } },
    classes: { path: 'classes.yaml', data: { groups, classes, facts: about.classes ?? {} } },
    allergens: [{ path: 'allergens/by-hand.yaml', data: { allergens } }],
  }
}

export const AROUND: Small = {
  properties: PROPERTIES,
  roles: { humectant: { label: 'Humectant', few: 'a small world' } },
  inventory: [row('glycerin', ['56-81-5']), row('aqua'), row('betaine'), row('urea')],
  sources: [{ source_id: 'S-1', title: 'A book' }],
}

/** The record with some keys changed, in its usual surroundings. */
export const withRecord = (change: Loose, more: Small = {}): Small => ({
  ...AROUND,
  ...more,
  ingredients: [{ ...GLYCERIN, ...change }, ...(more.ingredients ?? [])],
})

/** A lesson about the role of glycerin in the small worlds. */
export const LESSON = {
  id: 'humectant',
  parts: [{ text: 'word '.repeat(50) }, { text: 'word '.repeat(50) }],
  seen: SEEN,
  sources: [],
  states: [{ says: 'Glycerin is a humectant.', plays: { ingredient: 'glycerin', role: 'humectant' } }],
  live: { kind: 'who-plays', role: 'humectant' },
}
export const lessonWorld = (change: Loose = {}): Small =>
  withRecord({}, { lessons: { 'lessons/roles/humectant.yaml': { ...LESSON, ...change } } })

/** One fact, good and bad. */
export const fact = (
  good: Loose,
  bad: Loose,
  says: RegExp,
  more: Loose = {},
  at = /^ingredients\/glycerin\.yaml/,
): Example => ({
  good: withRecord({ ...more, facts: good }),
  bad: withRecord({ ...more, facts: bad }),
  at,
  says,
})

/** The record changed in two ways. */
export const changed = (good: Loose, bad: Loose, says: RegExp, more: Small = {}): Example => ({
  good: withRecord(good, more),
  bad: withRecord(bad, more),
  at: /^ingredients\/glycerin\.yaml/,
  says,
})

export const roleOf = (role: string, more: Loose = {}) => ({ roles: [{ role, ...more }] })
export const ROLES = Object.fromEntries(
  ['preservative', 'surfactant', 'emulsifier', 'co-emulsifier', 'acid', 'wax', 'structurant', 'co-surfactant'].map(
    (role) => [role, { label: role, few: 'a small world' }],
  ),
)
export const playing: Small = { roles: { ...ROLES, humectant: { label: 'Humectant' } } }
export const oleic = { fatty_acids: { shares: { 'C18:1': 100 }, source: 'S-1', locator: 'p. 2', access: 'read' } }
export const OIL = { classes: ['triglyceride'] }
export const CLASSES = Object.fromEntries(
  ['anionic', 'cationic', 'nonionic', 'amphoteric', 'polyol', 'triglyceride'].map((id) => [id, { group: 'chemistry' }]),
)
export const other = (change: Loose): Loose => ({ ...GLYCERIN, id: 'betaine', inci: 'BETAINE', cas: [], ...change })
export const parts = (...shares: number[]) => ({
  made_of: shares.map((share_percent, at) => ({ ingredient: ['aqua', 'betaine', 'urea'][at], share_percent })),
})
export const limit = (change: Loose): Loose => ({
  id: 'eu-x-1',
  market: 'eu',
  kind: 'law',
  members: { glycerin: 1 },
  rows: [{ scope: {}, max_percent: 10, source: 'S-1', locator: 'no 1', access: 'read' }],
  date: '2026-01-31',
  ...change,
})
export const limits = (good: Loose, bad: Loose, says: RegExp): Example => ({
  good: withRecord({}, { limits: [limit(good)] }),
  bad: withRecord({}, { limits: [limit(bad)] }),
  at: /^limits\/eu-x-1\.yaml/,
  says,
})
export const casesOf = (count: number) => Array.from({ length: count }, () => ({ lines: [{ ingredient: 'glycerin' }] }))
export const rule = (change: Loose): Loose => ({
  id: 'r',
  why: 'because',
  severity: 'warn',
  swap: 'cost',
  fires: casesOf(2),
  silent: casesOf(2),
  ...change,
})
