import { fileURLToPath } from 'node:url'
import { buildKnowledge, buildWorld, checkFormula } from '#engine/index.ts'
import type { InventoryRow, Knowledge, RawData, RawFile, World } from '#engine/index.ts'
import type { Finding } from '#engine/model/finding.ts'
import type { Formula, Line } from '#engine/model/formula.ts'
import { loadRaw } from '#load/load-raw.ts'

let raw: RawData | undefined
let world: World | undefined

/** The reviewed files as they stand, read once a worker. */
export const realRaw = (): RawData => (raw ??= loadRaw(fileURLToPath(new URL('../graph-data', import.meta.url))))

/** Everything known, with its graph, built once a worker. Read-only: never change it in a test. */
export const realWorld = (): World => (world ??= buildWorld(buildKnowledge(realRaw())))

type Shares = Readonly<Record<string, number>>

/** Lines from `{ id: share }`; what is missing to 100 % is filled by `fill` (water unless said otherwise; null: nothing). */
export function linesOf(shares: Shares, fill: string | null = 'aqua'): Line[] {
  const lines: Line[] = Object.entries(shares).map(([ingredient, share_percent]) => ({ ingredient, share_percent }))
  return fill === null || fill in shares ? lines : [{ ingredient: fill, fills: true }, ...lines]
}

/** A valid formula; a test names only what matters. Shares as `{ id: percent }`, topped up with water. */
export function makeFormula(
  shares: Shares,
  { fill = 'aqua', ...rest }: Partial<Omit<Formula, 'lines'>> & { fill?: string | null } = {},
): Formula {
  return { market: 'eu', product: 'leave-on', ph: 5.5, hottest_c: 75, ...rest, lines: linesOf(shares, fill) }
}

const file = (path: string, data: unknown): RawFile => ({ path, data })

export interface Parts {
  roles?: Record<string, unknown>
  classes?: Record<string, unknown>
  properties?: Record<string, unknown>
  clashes?: unknown[]
  limits?: Record<string, unknown>[]
  rules?: Record<string, unknown>[]
  ingredients?: Record<string, unknown>[]
  inventory?: InventoryRow[]
  tables?: RawData['tables']
  sources?: Record<string, string>[]
  /** by path below graph-data */
  lessons?: Record<string, unknown>
  /** pairs of an English and a German sentence */
  german?: unknown[]
}

const PROPERTIES = {
  ph_stability: { kind: 'range', unit: 'pH' },
  ph_effective: { kind: 'range', unit: 'pH' },
  heat_max_c: { kind: 'range', unit: 'C' },
  heat_min_c: { kind: 'range', unit: 'C' },
  active_percent: { kind: 'range', unit: '%' },
  molar_mass: { kind: 'range', unit: 'g/mol' },
  equivalents: { kind: 'range', unit: '1/mol' },
  fatty_acids: { kind: 'profile', unit: '%' },
  usual: { kind: 'range', unit: '1' },
  phase: { kind: 'one-of', unit: '', words: ['water', 'oil', 'powder', 'cool-down', 'either'] },
  solubility: { kind: 'one-of', unit: '', words: ['water', 'oil', 'both', 'insoluble'] },
  form: { kind: 'one-of', unit: '', words: ['liquid', 'paste', 'solid', 'powder'] },
  spectrum: { kind: 'spectrum', unit: '', words: ['strong', 'moderate', 'weak', 'none'] },
}

/** Raw data of a small world made by hand; ids are those of real names so that the name lint has nothing to say. */
export function makeRaw(parts: Parts = {}): RawData {
  const rules = parts.rules ?? []
  return {
    version: 'by-hand',
    roles: file('roles.yaml', { roles: parts.roles ?? {} }),
    classes: file('classes.yaml', { classes: parts.classes ?? {} }),
    properties: file('properties.yaml', parts.properties ?? PROPERTIES),
    clashes: file('clashes.yaml', { clashes: parts.clashes ?? [] }),
    relations: file('relations.yaml', { relations: {} }),
    names: file('names.yaml', {}),
    ingredients: (parts.ingredients ?? []).map((data) => file(`ingredients/${String(data['id'])}.yaml`, data)),
    limits: (parts.limits ?? []).map((data) => file(`limits/${String(data['id'])}.yaml`, data)),
    rules: rules.map((data) => file(`rules/${String(data['id'])}.yaml`, data)),
    allergens: [],
    lessons: Object.entries(parts.lessons ?? {}).map(([path, data]) => file(path, data)),
    languages: { de: [file('languages/de/by-hand.yaml', parts.german ?? [])] },
    tables: parts.tables ?? [],
    sources: [{ path: 'sources/by-hand.tsv', rows: parts.sources ?? [] }],
    inventory: parts.inventory ?? [],
  }
}

export const makeKnowledge = (parts: Parts = {}): Knowledge => buildKnowledge(makeRaw(parts))
export const makeWorld = (parts: Parts = {}): World => buildWorld(makeKnowledge(parts))

/** Findings of one rule on a formula of the real world. */
export const findingsOf = (rule: string, formula: Formula): Finding[] =>
  checkFormula(realWorld(), formula).findings.filter((finding) => finding.rule === rule)

/** Freezes a value all the way down: whoever writes to it throws. */
export function deepFrozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value)
    Object.values(value).forEach(deepFrozen)
  }
  return value
}

/** A formula without its lines' order: two formulas that differ in order only are equal. */
export const sortedLines = (lines: readonly Line[]): Line[] =>
  [...lines].sort((a, b) =>
    a.ingredient === b.ingredient
      ? (a.share_percent ?? 0) - (b.share_percent ?? 0)
      : a.ingredient < b.ingredient
        ? -1
        : 1,
  )
