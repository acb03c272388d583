import { isObject } from '#engine/knowledge/expand-claims.ts'
import type { Problem, PropertySpec } from '#engine/model/records.ts'
import type { Lint, Vocabulary } from './lint.ts'

const SHORTHANDS = ['phase', 'solubility', 'form', 'usual']

function wordProblems(spec: PropertySpec, value: unknown, path: string): Problem[] {
  if (spec.kind !== 'one-of' && spec.kind !== 'spectrum') return []
  const first: unknown = Array.isArray(value) ? value[0] : value
  const words =
    spec.kind === 'spectrum'
      ? ['gramPositive', 'gramNegative', 'yeast', 'mould'].flatMap((key) =>
          isObject(first) && first[key] !== undefined ? [first[key]] : [],
        )
      : [isObject(first) ? (first['is'] ?? first['value']) : first]
  return words
    .filter((word) => !spec.words.includes(String(word)))
    .map((word) => ({ path, message: `${String(word)} is not one of ${spec.words.join(', ')}` }))
}

function recordProblems(data: Record<string, unknown>, path: string, vocabulary: Vocabulary): Problem[] {
  const classes = Array.isArray(data['classes']) ? data['classes'].map(String) : []
  const roles = Array.isArray(data['roles']) ? data['roles'].filter(isObject).map((role) => String(role['role'])) : []
  const facts = isObject(data['facts']) ? data['facts'] : {}
  const written = {
    ...Object.fromEntries(SHORTHANDS.filter((key) => data[key] !== undefined).map((key) => [key, data[key]])),
    ...facts,
  }
  return [
    ...classes
      .filter((id) => !vocabulary.classes.has(id))
      .map((id) => ({ path: `${path}/classes`, message: `class ${id} is not known` })),
    ...roles
      .filter((id) => !vocabulary.roles.has(id))
      .map((id) => ({ path: `${path}/roles`, message: `role ${id} is not known` })),
    ...(roles.length === 0 ? [{ path: `${path}/roles`, message: 'a record needs at least one role' }] : []),
    ...Object.entries(written).flatMap(([property, value]) => {
      const spec = vocabulary.properties.get(property)
      if (!spec) return [{ path: `${path}/facts/${property}`, message: `property ${property} is not known` }]
      return wordProblems(spec, value, `${path}/facts/${property}`)
    }),
  ]
}

/** Guards against words outside the vocabularies: a misspelt class or role would silently mean nothing. */
export const wordIsKnown: Lint = (raw, vocabulary) =>
  raw.ingredients.flatMap(({ path, data }) => (isObject(data) ? recordProblems(data, path, vocabulary) : []))
