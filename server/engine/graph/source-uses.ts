import { evidenceOf } from '#engine/model/evidence.ts'
import type { DescribedClaim } from '#engine/model/evidence.ts'
import type { Claim, Provenance } from '#engine/model/records.ts'
import { inventoryClaims } from '#engine/knowledge/inventory-claims.ts'
import { limitTexts, limitTitle } from './in-words.ts'
import type { Subject } from './subject.ts'
import type { World } from './world.ts'

/** Kind of statement that rests on a source. */
export type UseOn = 'fact' | 'role' | 'relation' | 'limit'

/** One statement that rests on a source. */
export interface SourceUse extends Provenance {
  /** record that states it; null for a statement about whole classes or a legal entry */
  ingredient: string | null
  label: string
  on: UseOn
  /** what is stated, in words; of a fact the property, its value is in `claim` */
  text: string
  claim?: DescribedClaim
}

const origin = ({ kind, source, locator, access, date }: Provenance): Provenance => ({
  kind,
  source,
  locator,
  access,
  date,
})

const described = (claim: Claim): DescribedClaim => ({ ...claim, evidence: evidenceOf(claim) })

function usesOf(subject: Subject, { knowledge }: World): SourceUse[] {
  const of = { ingredient: subject.id, label: subject.inci }
  const row = knowledge.inventory.get(subject.id)
  const facts = [...[...subject.facts.values()].flat(), ...(row ? inventoryClaims(row) : [])]
  const lists = [
    ...[subject.clashes, subject.needs, subject.boostedBy, subject.inactivatedBy].flat(),
    ...[subject.standsFor, subject.notFor].flat(),
  ]
  return [
    ...facts.map((claim) => ({
      ...of,
      ...origin(claim),
      on: 'fact' as const,
      text: claim.property,
      claim: described(claim),
    })),
    ...subject.roles.map((role) => ({
      ...of,
      ...origin(role),
      on: 'role' as const,
      text: knowledge.roles.get(role.role)?.label ?? role.role,
    })),
    ...lists.map((one) => ({ ...of, ...origin(one), on: 'relation' as const, text: one.says })),
  ]
}

const lawUses = ({ knowledge, say }: World): SourceUse[] =>
  knowledge.limits.flatMap((limit) => {
    return limit.rows.map((row) => ({
      ingredient: null,
      label: limitTitle(limit, say),
      on: 'limit' as const,
      text: limitTexts({ ...limit, rows: [row] }, say).join('; '),
      kind: 'law' as const,
      source: row.source,
      locator: row.locator,
      access: row.access,
      date: limit.date,
    }))
  })

const classUses = ({ knowledge }: World): SourceUse[] =>
  knowledge.clashes.map((clash) => ({
    ingredient: null,
    label: clash.between.map((one) => one.replace(/^(?:class|role):/, '').replaceAll('-', ' ')).join(', '),
    on: 'relation' as const,
    text: clash.says,
    ...origin(clash),
  }))

const keyOf = ({ label, on, text, claim, locator }: SourceUse): string =>
  `${label} ${on} ${claim?.id ?? ''} ${text} ${locator}`

const INDEX = new WeakMap<World, ReadonlyMap<string, readonly SourceUse[]>>()

/** Several sources of one statement stand parted by semicolons. */
export const sourceIds = (source: string): string[] => source.split(/\s*;\s*/).filter((id) => id !== '')

/** Every statement by the source it rests on, in the order of what it is about; made when first asked for. */
export function usesBySource(world: World): ReadonlyMap<string, readonly SourceUse[]> {
  const known = INDEX.get(world)
  if (known) return known
  const all = [...world.subjects.flatMap((subject) => usesOf(subject, world)), ...lawUses(world), ...classUses(world)]
  const index = new Map<string, SourceUse[]>()
  for (const use of all) {
    for (const id of new Set(sourceIds(use.source))) {
      const list = index.get(id)
      if (list) list.push(use)
      else index.set(id, [use])
    }
  }
  for (const list of index.values()) list.sort((a, b) => (keyOf(a) < keyOf(b) ? -1 : 1))
  INDEX.set(world, index)
  return index
}
