import { isObject } from '#engine/knowledge/expand-claims.ts'
import type { RawFile } from '#engine/knowledge/raw.ts'
import { CAUTION_STEPS } from '#engine/model/records.ts'
import type { Problem, PropertySpec } from '#engine/model/records.ts'
import type { Lint, Vocabulary } from './lint.ts'

type Loose = Record<string, unknown>

const SHORTHANDS = ['phase', 'solubility', 'form', 'usual']
const GROUPS = ['gramPositive', 'gramNegative', 'yeast', 'mould']

/** Words that a claim uses; the first of several decides, the others are only shown. */
function wordsOf(spec: PropertySpec, value: unknown): unknown[] {
  const first: unknown = Array.isArray(value) ? value[0] : value
  if (spec.kind === 'one-of') return [isObject(first) ? (first['is'] ?? first['value']) : first]
  if (spec.kind !== 'spectrum' || !isObject(first)) return []
  return GROUPS.map((key) => first[key]).filter((word) => word !== undefined)
}

function factProblems(property: string, value: unknown, path: string, { properties }: Vocabulary): Problem[] {
  const spec = properties.get(property)
  if (!spec) return [{ path: `${path}/facts/${property}`, message: `property ${property} is not known` }]
  return wordsOf(spec, value)
    .filter((word) => !spec.words.includes(String(word)))
    .map((word) => ({
      path: `${path}/facts/${property}`,
      message: `${String(word)} is not one of ${spec.words.join(', ')}`,
    }))
}

function classProblems(data: Loose, path: string, { classes }: Vocabulary): Problem[] {
  const own = Array.isArray(data['classes']) ? data['classes'] : []
  return own
    .filter((id) => !classes.has(String(id)))
    .map((id) => ({ path: `${path}/classes`, message: `class ${String(id)} is not known` }))
}

function roleProblems(data: Loose, path: string, { roles }: Vocabulary): Problem[] {
  const own = Array.isArray(data['roles']) ? data['roles'].filter(isObject) : []
  if (own.length === 0) return [{ path: `${path}/roles`, message: 'a record needs at least one role' }]
  return own
    .filter(({ role }) => !roles.has(String(role)))
    .map(({ role }) => ({ path: `${path}/roles`, message: `role ${String(role)} is not known` }))
}

/** Cautions that count at one step of the work name a step that the batch sheet has. */
function cautionProblems(data: Loose, path: string): Problem[] {
  const cautions = Array.isArray(data['cautions']) ? data['cautions'].filter(isObject) : []
  return cautions
    .filter(({ at }) => !CAUTION_STEPS.some((step) => step === at))
    .map(({ at }) => ({ path: `${path}/cautions`, message: `${String(at)} is not one of ${CAUTION_STEPS.join(', ')}` }))
}

/** Statements about members: group, property, words, and the words that say of which members they hold. */
function aboutMembers(file: RawFile, known: ReadonlyMap<string, unknown>, vocabulary: Vocabulary): Problem[] {
  const groups = isObject(file.data) && isObject(file.data['facts']) ? file.data['facts'] : {}
  return Object.entries(groups).flatMap(([id, facts]) => {
    const path = `${file.path}/facts/${id}`
    const stated = Object.entries(isObject(facts) ? facts : {})
    const only = stated.flatMap(([, value]) => (isObject(value) && isObject(value['only']) ? [value['only']] : []))
    return [
      ...(known.has(id) ? [] : [{ path, message: `${id} is not known` }]),
      ...[...stated, ...only.flatMap((one) => Object.entries(one))].flatMap(([property, value]) =>
        factProblems(property, value, `${file.path}/${id}`, vocabulary),
      ),
    ]
  })
}

/** Guards against words outside the vocabularies: a misspelt class or role would silently mean nothing. */
export const wordIsKnown: Lint = (raw, vocabulary) => {
  const problems: Problem[] = [
    ...aboutMembers(raw.classes, vocabulary.classes, vocabulary),
    ...aboutMembers(raw.roles, vocabulary.roles, vocabulary),
  ]
  for (const { path, data } of raw.ingredients) {
    if (!isObject(data)) continue
    problems.push(...classProblems(data, path, vocabulary), ...roleProblems(data, path, vocabulary))
    problems.push(...cautionProblems(data, path))
    for (const property of SHORTHANDS)
      if (data[property] !== undefined) problems.push(...factProblems(property, data[property], path, vocabulary))
    const facts = isObject(data['facts']) ? data['facts'] : {}
    for (const property in facts) problems.push(...factProblems(property, facts[property], path, vocabulary))
  }
  return problems
}
