import { scaledProfile } from '#engine/chemistry/profile-distance.ts'
import { nearestIds } from '#engine/graph/nearest-ids.ts'
import { usedClaim } from '#engine/graph/subject.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { World } from '#engine/graph/world.ts'
import type { Claim } from '#engine/model/claim.ts'
import { readableName } from '#engine/units/readable-name.ts'
import { figure } from './step.ts'

/** An oil of the records, or fatty acids as typed. */
export interface OilInput {
  ingredient?: string
  fatty_acids?: { acid: string; share_percent: number }[]
}

/** Fatty acids scaled to 100 %, where they come from, and the record where there is one. */
export interface Oil {
  profile: Record<string, number>
  origin: string
  sources: string[]
  subject?: Subject
}

/** The record of an id. @throws RangeError naming the argument and the nearest ids */
export function subjectCalled(argument: string, id: string, world: World): Subject {
  const subject = world.find(id)
  if (subject) return subject
  const nearest = nearestIds(world, id)
  const hint = nearest.length > 0 ? `; nearest: ${nearest.join(', ')}` : ''
  throw new RangeError(`${argument}: no ingredient has the id ${id.slice(0, 80)}${hint}`)
}

/** "85 to 95 g/100 g (jojoba-index, secondary)" */
export function statedInWords(claim: Claim): string {
  const { value, min, max, unit, source, access } = claim
  const range = min !== undefined && max !== undefined && min !== max ? `${min} to ${max}` : undefined
  const end = min === undefined && max !== undefined ? `at most ${max}` : `from ${min ?? '?'}`
  const said = value !== undefined ? `${value}` : (range ?? (min === max ? `${min}` : end))
  return `${said} ${unit} (${source}, ${access})`
}

/** The value of a record that was not worked out from its own acids. */
export const printedClaim = (subject: Subject, property: string): Claim | undefined =>
  subject.facts.get(property)?.find(({ kind, id }) => kind !== 'derived' && !id.endsWith('/derived'))

const SUM_OF_A_PROFILE = { min: 80, max: 120 }

function fromAcids(acids: readonly { acid: string; share_percent: number }[]): Oil {
  const profile: Record<string, number> = {}
  for (const { acid, share_percent } of acids) profile[acid] = (profile[acid] ?? 0) + share_percent
  const total = acids.reduce((sum, { share_percent }) => sum + share_percent, 0)
  const { min, max } = SUM_OF_A_PROFILE
  if (total < min || total > max) {
    throw new RangeError(`fatty_acids: expected shares that add up to ${min} to ${max} %, got ${figure(total)} %`)
  }
  const scaled = Math.abs(total - 100) < 0.05 ? '' : `, ${figure(total)} % scaled to 100 %`
  return { profile: scaledProfile(profile), origin: `Fatty acids as stated${scaled}`, sources: [] }
}

/**
 * Profile of a triglyceride of the records. Wax esters, hydrocarbons and single esters have none that the relations for
 * triglycerides may be put to.
 * @throws RangeError naming the argument and what the record states instead
 */
export function oilOfRecord(argument: string, id: string, world: World, property?: string): Oil {
  const subject = subjectCalled(argument, id, world)
  const claim = usedClaim(subject, 'fatty_acids')
  const name = readableName(subject.inci)
  const stated = property === undefined ? undefined : printedClaim(subject, property)
  const instead = stated ? `; its record states ${statedInWords(stated)}` : ''
  if (!subject.classes.has('triglyceride')) {
    throw new RangeError(`${argument}: expected a triglyceride, got ${name}, which is none${instead}`)
  }
  if (!claim?.shares) {
    throw new RangeError(`${argument}: expected an oil whose fatty acids are recorded, got ${name}${instead}`)
  }
  return {
    profile: scaledProfile(claim.shares),
    origin: `${name}, ${claim.locator} (${claim.source}, ${claim.access})`,
    sources: [claim.source],
    subject,
  }
}

/** @throws RangeError when both or neither are given, or when either cannot be used */
export function readOil({ ingredient, fatty_acids }: OilInput, world: World, property?: string): Oil {
  if (ingredient !== undefined && fatty_acids !== undefined) {
    throw new RangeError('ingredient: expected either an ingredient or fatty_acids, got both')
  }
  if (fatty_acids !== undefined) return fromAcids(fatty_acids)
  if (ingredient !== undefined) return oilOfRecord('ingredient', ingredient, world, property)
  throw new RangeError('ingredient: expected an ingredient or fatty_acids, got neither')
}

/** "C18:1 71.2 %, C16:0 12 %", the largest first. */
export const profileInWords = (profile: Readonly<Record<string, number>>): string =>
  Object.entries(profile)
    .filter(([, share]) => share > 0)
    .sort(([a, x], [b, y]) => y - x || (a < b ? -1 : 1))
    .map(([acid, share]) => `${acid} ${Number(share.toPrecision(3))} %`)
    .join(', ')
