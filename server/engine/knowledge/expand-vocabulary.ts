import type { ClassClash, IngredientClass, PropertySpec, Role, Rule, SwapSpec } from '#engine/model/records.ts'
import { isObject, provenanceOf, seenOf } from './expand-claims.ts'
import { rangeOf, whenOf } from './expand-ingredient.ts'
import type { RawFile } from './raw.ts'

type Loose = Record<string, unknown>
const entries = (value: unknown): [string, Loose][] =>
  isObject(value) ? Object.entries(value).filter((e): e is [string, Loose] => isObject(e[1])) : []

const NO_SWAP: SwapSpec = { scope: '', dose: 'same', lost: 'workable', must: [], criteria: [] }

/** Roles with the swap description that each inherits from its nearest broader role. */
export function expandRoles(file: RawFile): Map<string, Role> {
  const raw = new Map(entries(isObject(file.data) ? file.data['roles'] : {}))
  const swapOf = (id: string, seen: string[] = []): SwapSpec => {
    const entry = raw.get(id)
    if (!entry || seen.includes(id)) return { ...NO_SWAP, scope: id }
    if (isObject(entry['swap'])) return { ...NO_SWAP, scope: id, ...(entry['swap'] as Partial<SwapSpec>) }
    return typeof entry['broader'] === 'string' ? swapOf(entry['broader'], [...seen, id]) : { ...NO_SWAP, scope: id }
  }
  const workOf = (id: string): { work?: string } => {
    const entry = raw.get(id)
    if (typeof entry?.['work'] === 'string') return { work: entry['work'] }
    return typeof entry?.['broader'] === 'string' && entry['broader'] !== id ? workOf(entry['broader']) : {}
  }
  return new Map(
    [...raw].map(([id, entry]) => [
      id,
      {
        id,
        label: String(entry['label'] ?? id),
        says: String(entry['says'] ?? ''),
        ...(typeof entry['broader'] === 'string' && { broader: entry['broader'] }),
        phase: String(entry['phase'] ?? 'either'),
        confusedWith: Array.isArray(entry['confused_with']) ? entry['confused_with'].map(String) : [],
        ...workOf(id),
        swap: swapOf(id),
      },
    ]),
  )
}

export function expandClasses(file: RawFile): Map<string, IngredientClass> {
  const data = isObject(file.data) ? file.data['classes'] : {}
  return new Map(
    entries(data).map(([id, entry]) => [id, { id, group: String(entry['group']), says: String(entry['says'] ?? '') }]),
  )
}

export function expandProperties(file: RawFile): Map<string, PropertySpec> {
  return new Map(
    entries(file.data).map(([id, entry]) => {
      const plausible = rangeOf(entry['plausible'])
      return [
        id,
        {
          id,
          kind: entry['kind'] as PropertySpec['kind'],
          unit: String(entry['unit'] ?? ''),
          words: Array.isArray(entry['words']) ? entry['words'].map(String) : [],
          says: String(entry['says'] ?? ''),
          ...(plausible && { plausible }),
        },
      ]
    }),
  )
}

export function expandClashes(file: RawFile): ClassClash[] {
  if (!isObject(file.data)) return []
  const seen = seenOf(file.data)
  const list = Array.isArray(file.data['clashes']) ? file.data['clashes'].filter(isObject) : []
  return list.map((entry) => {
    const ph = rangeOf(entry['ph'])
    const unless = whenOf(entry['unless'])
    const [first = '', second = ''] = Array.isArray(entry['between']) ? entry['between'].map(String) : []
    return {
      id: String(entry['id']),
      between: [first, second],
      mechanism: String(entry['mechanism']),
      severity: entry['severity'] as ClassClash['severity'],
      says: String(entry['says'] ?? ''),
      ...(typeof entry['min_percent'] === 'number' && { min_percent: entry['min_percent'] }),
      ...(ph && { ph }),
      ...(unless && { unless: unless.when }),
      ...provenanceOf(entry, seen),
    }
  })
}

export function expandRule(file: RawFile): Rule {
  const data = isObject(file.data) ? file.data : {}
  return {
    id: String(data['id']),
    title: String(data['title'] ?? ''),
    why: String(data['why'] ?? ''),
    severity: data['severity'] as Rule['severity'],
    swap: (data['swap'] as Rule['swap'] | undefined) ?? 'cost',
    ...(typeof data['cost'] === 'number' && { cost: data['cost'] }),
    status: String(data['status'] ?? 'current'),
    fires: Array.isArray(data['fires']) ? data['fires'] : [],
    silent: Array.isArray(data['silent']) ? data['silent'] : [],
  }
}
