import { CAUTION_STEPS } from '#engine/model/records.ts'
import type {
  Claim,
  Ingredient,
  Level,
  NameKind,
  Need,
  NotFor,
  Part,
  PlaysRole,
  PropertySpec,
  Provenance,
  Relation,
  StandsFor,
  When,
} from '#engine/model/records.ts'
import type { Range } from '#engine/units/range.ts'
import { claimsOf, isObject, provenanceOf, seenOf } from './expand-claims.ts'

type Loose = Record<string, unknown>

const list = (value: unknown): Loose[] => (Array.isArray(value) ? value.filter(isObject) : [])
const words = (value: unknown): string[] => (Array.isArray(value) ? value.map(String) : [])

/** [3, 5], { min, max } or a single number as a range. */
export function rangeOf(value: unknown): Range | undefined {
  if (typeof value === 'number') return { min: value, max: value }
  if (Array.isArray(value)) {
    return {
      ...(typeof value[0] === 'number' && { min: value[0] }),
      ...(typeof value[1] === 'number' && { max: value[1] }),
    }
  }
  if (!isObject(value)) return undefined
  return {
    ...(typeof value['min'] === 'number' && { min: value['min'] }),
    ...(typeof value['max'] === 'number' && { max: value['max'] }),
  }
}

export function whenOf(value: unknown): { when: When } | undefined {
  if (!isObject(value)) return undefined
  const ph = rangeOf(value['ph'])
  const { ph: _dropped, ...rest } = value
  return { when: { ...(rest as When), ...(ph && { ph }) } }
}

function roleOf(entry: Loose, seen: Provenance): PlaysRole {
  const level = isObject(entry['level_percent']) ? (entry['level_percent'] as Level) : undefined
  return {
    role: String(entry['role']),
    ...(level && { level_percent: level }),
    ...(typeof entry['share'] === 'number' && { share: entry['share'] }),
    ...whenOf(entry['when']),
    ...provenanceOf(entry, seen),
  }
}

function relationOf(entry: Loose, seen: Provenance): Relation {
  const ph = rangeOf(entry['ph'])
  return {
    with: String(entry['with']),
    says: String(entry['says'] ?? ''),
    ...(typeof entry['mechanism'] === 'string' && { mechanism: entry['mechanism'] }),
    ...(typeof entry['severity'] === 'string' && { severity: entry['severity'] as 'breaks' | 'weakens' | 'poor' }),
    ...(typeof entry['min_percent'] === 'number' && { min_percent: entry['min_percent'] }),
    ...(ph && { ph }),
    ...provenanceOf(entry, seen),
  }
}

const needOf = (entry: Loose, seen: Provenance): Need => ({
  any_of: words(entry['any_of']),
  need: String(entry['kind'] ?? entry['need'] ?? 'partner'),
  says: String(entry['says'] ?? ''),
  ...(entry['wets_in'] === 'hot-water' && { wetsIn: 'hot-water' as const }),
  ...(typeof entry['above_c'] === 'number' && { above_c: entry['above_c'] }),
  ...whenOf(entry['when']),
  ...provenanceOf({ ...entry, kind: undefined }, seen),
})

/** Cautions: a text, or a text and the step of the work at which it counts. */
function cautionsOf(value: unknown): Pick<Ingredient, 'cautions' | 'cautionsAt'> {
  const entries = (Array.isArray(value) ? value : []).map((entry) =>
    isObject(entry) ? { says: String(entry['says']), at: entry['at'] } : { says: String(entry), at: undefined },
  )
  const told = CAUTION_STEPS.map(
    (step) => [step, entries.flatMap(({ says, at }) => (at === step ? [says] : []))] as const,
  )
  return {
    cautions: entries.map(({ says }) => says),
    cautionsAt: Object.fromEntries(told.filter(([, texts]) => texts.length > 0)),
  }
}

const standsForOf = (entry: Loose, seen: Provenance): StandsFor => ({
  for: String(entry['for']),
  says: String(entry['says'] ?? ''),
  ...(typeof entry['ratio'] === 'number' && { ratio: entry['ratio'] }),
  ...(typeof entry['grade'] === 'string' && { grade: entry['grade'] as 'good' | 'workable' }),
  ...whenOf(entry['when']),
  ...provenanceOf(entry, seen),
})

const notForOf = (entry: Loose, seen: Provenance): NotFor => ({
  for: String(entry['for']),
  says: String(entry['says'] ?? ''),
  ...whenOf(entry['when']),
  ...(typeof entry['why'] === 'string' && { why: entry['why'] }),
  ...provenanceOf(entry, seen),
})

const SHORTHANDS = ['phase', 'solubility', 'form', 'usual']

function factsOf(record: Loose, id: string, seen: Provenance, properties: ReadonlyMap<string, PropertySpec>) {
  const facts = new Map<string, Claim[]>()
  const context = { ingredient: id, seen, properties }
  for (const key of SHORTHANDS) {
    if (record[key] !== undefined) facts.set(key, claimsOf(key, record[key], context))
  }
  const written = isObject(record['facts']) ? record['facts'] : {}
  for (const [property, value] of Object.entries(written)) facts.set(property, claimsOf(property, value, context))
  return facts
}

/** Turns a reviewed record into the engine's form: every statement with its provenance. */
export function expandIngredient(record: Loose, properties: ReadonlyMap<string, PropertySpec>): Ingredient {
  const id = String(record['id'])
  const seen = seenOf(record)
  const names = isObject(record['names']) ? record['names'] : {}
  const kinds: NameKind[] = ['exact', 'broad', 'narrow', 'former', 'foreign']
  return {
    id,
    inci: String(record['inci']),
    tier: record['tier'] === 'short' ? 'short' : 'full',
    cas: words(record['cas']),
    names: Object.fromEntries(kinds.map((kind) => [kind, words(names[kind])])) as Record<NameKind, string[]>,
    classes: new Set(words(record['classes'])),
    classProvenance: seen,
    roles: list(record['roles']).map((entry) => roleOf(entry, seen)),
    facts: factsOf(record, id, seen, properties),
    madeOf: list(record['made_of']) as unknown as Part[],
    clashes: list(record['clashes']).map((entry) => relationOf(entry, seen)),
    needs: list(record['needs']).map((entry) => needOf(entry, seen)),
    boostedBy: list(record['boosted_by']).map((entry) => relationOf(entry, seen)),
    inactivatedBy: list(record['inactivated_by']).map((entry) => relationOf(entry, seen)),
    standsFor: list(record['stands_in_for']).map((entry) => standsForOf(entry, seen)),
    notFor: list(record['does_not_stand_in_for']).map((entry) => notForOf(entry, seen)),
    ...cautionsOf(record['cautions']),
  }
}
