import type { Claim, PropertySpec } from '#engine/model/records.ts'
import { claimsOf, isObject, seenOf } from './expand-claims.ts'
import type { RawData, RawFile } from './raw.ts'

/** Members of which a statement about a class holds; without it, all. */
export interface Only {
  form?: string
  solubility?: string
}

/** What a class or role states about its members. */
export interface ClassFact {
  property: string
  /** the first decides */
  claims: readonly Claim[]
  only?: Only
}

/** Statements about all members of a class, and about all whose first role is the role or one below it. */
export interface ClassFacts {
  classes: ReadonlyMap<string, readonly ClassFact[]>
  roles: ReadonlyMap<string, readonly ClassFact[]>
}

function onlyOf(written: unknown): { only?: Only } {
  const first: unknown = Array.isArray(written) ? written[0] : written
  return isObject(first) && isObject(first['only']) ? { only: first['only'] as Only } : {}
}

function factsIn(file: RawFile, of: 'class' | 'role', properties: ReadonlyMap<string, PropertySpec>) {
  const data = isObject(file.data) ? file.data : {}
  const written = isObject(data['facts']) ? data['facts'] : {}
  const seen = seenOf(data)
  return new Map(
    Object.entries(written).map(([id, facts]) => [
      id,
      Object.entries(isObject(facts) ? facts : {}).map(([property, value]): ClassFact => {
        const claims = claimsOf(property, value, { ingredient: `${of}:${id}`, seen, properties })
        return { property, claims, ...onlyOf(value) }
      }),
    ]),
  )
}

/** What classes.yaml and roles.yaml state about members, every claim with its provenance. */
export const expandClassFacts = (
  { classes, roles }: Pick<RawData, 'classes' | 'roles'>,
  properties: ReadonlyMap<string, PropertySpec>,
): ClassFacts => ({ classes: factsIn(classes, 'class', properties), roles: factsIn(roles, 'role', properties) })
