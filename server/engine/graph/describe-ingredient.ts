import { evidenceOf } from '#engine/model/evidence.ts'
import type { DescribedClaim, Evidence } from '#engine/model/evidence.ts'
import type { IngredientClass, Level, Limit, NameKind, Provenance, Source, Tier } from '#engine/model/records.ts'
import { inventoryClaims } from '#engine/knowledge/inventory-claims.ts'
import type { Range } from '#engine/units/range.ts'
import { contestedProperties } from './contested.ts'
import { decisionsOf } from './decisions.ts'
import type { Decision } from './decisions.ts'
import { limitTexts, limitTitle, whenText } from './in-words.ts'
import { linksOf, nodeOf, statementOf } from './links.ts'
import { rangeOfProperty } from './subject.ts'
import type { Subject } from './subject.ts'
import type { World } from './world.ts'

const MOST_NEIGHBOURS = 400

export interface Neighbour extends Partial<Provenance> {
  relation: string
  direction: 'out' | 'in'
  node: string
  label: string
  says?: string
  severity?: string
  level_percent?: Level
}

interface RoleClaim extends Provenance {
  evidence: Evidence
  role: string
  label: string
  level_percent?: Level
  when?: string
}

/** One record, whole, as plain data. */
export interface IngredientDescription {
  id: string
  inci: string
  tier: Tier
  cas: string[]
  names: Record<NameKind, string[]>
  roles: RoleClaim[]
  classes: (IngredientClass & { label: string })[]
  madeOf: { ingredient: string; inci: string; share_percent: number }[]
  windows: { ph_stability?: Range; ph_effective?: Range; heat_max_c?: number }
  claims: DescribedClaim[]
  contested: string[]
  decisions: Decision[]
  neighbours: Neighbour[]
  limits: { id: string; market: Limit['market']; title: string; text: string[] }[]
  cautions: string[]
  sources: { id: string; title: string; locator: string }[]
}

const rolesOf = (subject: Subject, world: World): RoleClaim[] =>
  subject.roles.map(({ role, level_percent, when, kind, source, locator, access, date }) => ({
    role,
    label: world.knowledge.roles.get(role)?.label ?? role,
    ...(level_percent && { level_percent }),
    ...(when && { when: whenText(when, world) }),
    kind,
    source,
    locator,
    access,
    date,
    evidence: evidenceOf({ id: role, access, kind }),
  }))

function windowsOf(subject: Subject): IngredientDescription['windows'] {
  const ph_stability = rangeOfProperty(subject, 'ph_stability')
  const ph_effective = rangeOfProperty(subject, 'ph_effective')
  const heat_max_c = rangeOfProperty(subject, 'heat_max_c')?.max
  return {
    ...(ph_stability && { ph_stability }),
    ...(ph_effective && { ph_effective }),
    ...(heat_max_c !== undefined && { heat_max_c }),
  }
}

const neighboursOf = (subject: Subject, world: World): Neighbour[] =>
  linksOf(world, subject.id)
    .slice(0, MOST_NEIGHBOURS)
    .map(({ from, to, attributes }) => {
      const node = from === subject.id ? to : from
      return {
        relation: attributes.relation,
        direction: from === subject.id ? ('out' as const) : ('in' as const),
        node,
        label: nodeOf(world, node).label,
        ...statementOf(attributes),
        ...(attributes.level_percent && { level_percent: attributes.level_percent }),
      }
    })
    .sort((a, b) => (order(a) < order(b) ? -1 : 1))

const order = ({ relation, direction, node, says }: Neighbour): string =>
  `${relation} ${direction} ${node} ${says ?? ''}`

/** Sources that a person can look up; practice and memory are said in words where they are used. */
function sourcesOf(description: Omit<IngredientDescription, 'sources'>, subject: Subject, world: World): Source[] {
  const used = [
    ...description.claims,
    ...description.roles,
    ...description.neighbours,
    ...subject.limits.flatMap(({ rows }) => rows),
  ]
  const ids = new Set(used.flatMap(({ source }) => source?.split(/\s*;\s*/) ?? []))
  return [...ids].sort().flatMap((id) => world.knowledge.sources.get(id) ?? [])
}

/** All claims of the record, then what the open inventory says of the name. */
function claimsOf(subject: Subject, { knowledge }: World): DescribedClaim[] {
  const row = knowledge.inventory.get(subject.id)
  const claims = [...[...subject.facts.values()].flat(), ...(row ? inventoryClaims(row) : [])]
  return claims.map((claim) => ({ ...claim, evidence: evidenceOf(claim) }))
}

/** Everything that is known about an ingredient, under its own id or an alias; null when the id is not known. */
export function describeIngredient(world: World, id: string): IngredientDescription | null {
  const subject = world.find(id)
  if (!subject) return null
  const { classes, properties } = world.knowledge
  const contested = contestedProperties(subject, properties)
  const description = {
    id: subject.id,
    inci: subject.inci,
    tier: subject.tier,
    cas: subject.cas,
    names: subject.names,
    roles: rolesOf(subject, world),
    classes: [...subject.classes].sort().flatMap((id) => {
      const one = classes.get(id)
      return one ? [{ ...one, label: world.say.text(id.replaceAll('-', ' ')) }] : []
    }),
    madeOf: subject.madeOf.map((part) => ({ ...part, inci: world.find(part.ingredient)?.inci ?? part.ingredient })),
    windows: windowsOf(subject),
    claims: claimsOf(subject, world),
    contested,
    decisions: decisionsOf(subject, contested, world.say),
    neighbours: neighboursOf(subject, world),
    limits: subject.limits.map((limit) => ({
      id: limit.id,
      market: limit.market,
      title: limitTitle(limit, world.say),
      text: limitTexts(limit, world.say),
    })),
    cautions: subject.cautions,
  }
  const sources = sourcesOf(description, subject, world).map(({ id: source, title, locator }) => ({
    id: source,
    title,
    locator,
  }))
  return { ...description, sources }
}
