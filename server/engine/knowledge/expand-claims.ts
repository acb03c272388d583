import type { Claim, PropertySpec, Provenance } from '#engine/model/records.ts'

type Loose = Record<string, unknown>
export const isObject = (value: unknown): value is Loose =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

const PROVENANCE_KEYS = ['kind', 'source', 'locator', 'access', 'date'] as const

/** Fills what an entry does not say of its origin from the record's own `seen`. */
export function provenanceOf(entry: unknown, seen: Provenance): Provenance {
  if (!isObject(entry)) return seen
  const own: Loose = { ...seen }
  if (entry['source'] !== undefined || entry['access'] !== undefined) own['kind'] = 'assertion'
  for (const key of PROVENANCE_KEYS) if (entry[key] !== undefined) own[key] = entry[key]
  return own as unknown as Provenance
}

/** The record-wide provenance; a rule of thumb unless it says otherwise. */
export function seenOf(record: Loose): Provenance {
  const seen = isObject(record['seen']) ? record['seen'] : {}
  return {
    kind: 'rule-of-thumb',
    source: 'practice',
    locator: '',
    access: 'common-practice',
    date: '',
    ...seen,
  } as Provenance
}

type Body = Pick<Claim, 'value' | 'min' | 'max' | 'is' | 'spectrum' | 'shares'>

const GROUPS = ['gramPositive', 'gramNegative', 'yeast', 'mould']

/** Reads the short ways of writing a value: 5, [3, 5], word, { min, max }, { gramPositive: strong, ... }. */
function bodyOf(value: unknown): Body {
  if (typeof value === 'number') return { value }
  if (typeof value === 'string') return { is: value }
  if (Array.isArray(value)) {
    const [min, max] = value as unknown[]
    return { ...(typeof min === 'number' && { min }), ...(typeof max === 'number' && { max }) }
  }
  if (!isObject(value)) return {}
  const body: Loose = {}
  for (const key of ['value', 'min', 'max', 'is', 'shares', 'spectrum']) {
    if (value[key] !== undefined && value[key] !== null) body[key] = value[key]
  }
  const groups = GROUPS.filter((group) => typeof value[group] === 'string')
  if (groups.length > 0) body['spectrum'] = Object.fromEntries(groups.map((group) => [group, value[group]]))
  return body as Body
}

export interface ClaimContext {
  ingredient: string
  seen: Provenance
  properties: ReadonlyMap<string, PropertySpec>
}

/** All claims of one property as a record writes them: one value or a list, the first is the one used. */
export function claimsOf(property: string, written: unknown, context: ClaimContext): Claim[] {
  const isPair = Array.isArray(written) && written.every((item) => typeof item === 'number' || item === null)
  const entries = Array.isArray(written) && !isPair ? written : [written]
  const unit = context.properties.get(property)?.unit ?? ''
  return entries.map((entry, index) => ({
    id: `${context.ingredient}#${property}/${index}`,
    property,
    ...bodyOf(entry),
    unit,
    ...provenanceOf(entry, context.seen),
    ...(isObject(entry) && typeof entry['conditions'] === 'string' && { conditions: entry['conditions'] }),
    ...(isObject(entry) &&
      typeof (entry['note'] ?? entry['why']) === 'string' && { note: String(entry['note'] ?? entry['why']) }),
    used: index === 0,
  }))
}
