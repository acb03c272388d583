import { contestedProperties } from '#engine/graph/contested.ts'
import { mainRole, usedClaim } from '#engine/graph/subject.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { World } from '#engine/graph/world.ts'
import type { Claim, Role } from '#engine/model/records.ts'
import type { Range } from '#engine/units/range.ts'
import { drawOne, shuffled } from './chance.ts'
import { choiceOf, isCommon, nameOf, SEEN, WRONG_CHOICES } from './draft.ts'
import type { Draft, Maker } from './draft.ts'

const PH_ASKED = [3, 3.5, 4, 4.5, 5, 5.5, 6, 6.5, 7, 7.5, 8, 9]
const WINDOWS = [
  { property: 'ph_effective', verb: 'works' },
  { property: 'ph_stability', verb: 'keeps' },
] as const
type Window = (typeof WINDOWS)[number]

/** Nearer to the end of a window than this nobody should be asked. */
const MARGIN = 0.5

const spanOf = ({ value, min, max }: Claim): Range => ({
  ...((value ?? min) !== undefined && { min: value ?? min }),
  ...((value ?? max) !== undefined && { max: value ?? max }),
})

const holds = (claim: Claim, ph: number): boolean => {
  const { min = -Infinity, max = Infinity } = spanOf(claim)
  return ph >= min && ph <= max
}

const fails = (claim: Claim, ph: number): boolean => {
  const { min = -Infinity, max = Infinity } = spanOf(claim)
  return ph < min - MARGIN || ph > max + MARGIN
}

const claimsOf = (subject: Subject, property: string): readonly Claim[] => subject.facts.get(property) ?? []

/** Every window on record agrees, not only the one that the checks use. */
const holdsByAll = (subject: Subject, ph: number, { property }: Window): boolean =>
  usedClaim(subject, property) !== undefined &&
  WINDOWS.every((one) => claimsOf(subject, one.property).every((claim) => holds(claim, ph)))

const failsByAll = (subject: Subject, ph: number, { property }: Window): boolean =>
  usedClaim(subject, property) !== undefined && claimsOf(subject, property).every((claim) => fails(claim, ph))

const rangeText = (claim: Claim): string => {
  const { min, max } = spanOf(claim)
  if (min === undefined) return `up to pH ${max}`
  return max === undefined ? `from pH ${min}` : `pH ${min} to ${max}`
}

const line = (subject: Subject, { property, verb }: Window): string => {
  const claim = usedClaim(subject, property)
  return claim ? `${nameOf(subject)} ${verb} at ${rangeText(claim)} (${SEEN[claim.access]})` : ''
}

interface Found {
  role: Role
  ph: number
  window: Window
  missing: Subject
  key: Subject
  wrong: readonly Subject[]
}

function draftOf({ role, ph, window, missing, key, wrong }: Found): Draft {
  const all = [key, ...wrong]
  return {
    difficulty: wrong.some((one) => claimsOf(one, window.property).some((claim) => isClose(claim, ph))) ? 3 : 2,
    question: `${nameOf(missing)} is missing as ${role.label.toLowerCase()}, and the product has pH ${ph}. Which of these is recorded as one that ${window.verb} at this pH?`,
    choices: all.map(choiceOf),
    key: key.id,
    because: `${all.map((one) => line(one, window)).join('; ')}.`,
    sources: [...new Set(all.flatMap((one) => usedClaim(one, window.property)?.source ?? []))].sort(),
    about: { role: role.id, ingredients: [missing, ...all].map(({ id }) => id) },
  }
}

const CLOSE = 1.5
const isClose = (claim: Claim, ph: number): boolean => {
  const { min = -Infinity, max = Infinity } = spanOf(claim)
  return Math.min(Math.abs(ph - min), Math.abs(ph - max)) < CLOSE
}

function rolesAsked(world: World, asked: string | undefined): Role[] {
  return [...world.knowledge.roles.values()].filter(
    ({ id }) =>
      (asked === undefined || world.roles.above(id).includes(asked)) && world.players(id).length > WRONG_CHOICES + 1,
  )
}

/** Which stand-in holds at this pH? Of a wrong choice every window on record excludes the pH by a margin. */
export const holdsAtPh: Maker = (world, chance, asked) => {
  const role = drawOne(rolesAsked(world, asked), chance)
  const ph = drawOne(PH_ASKED, chance)
  const window = drawOne(WINDOWS, chance)
  if (!role || ph === undefined || !window) return null
  const players = shuffled(world.players(role.id), chance).filter(
    (one) =>
      isCommon(one) &&
      world.roles.above(mainRole(one)).includes(role.id) &&
      !contestedProperties(one, world.knowledge.properties).includes(window.property),
  )
  const key = players.find((one) => holdsByAll(one, ph, window))
  const wrong = players.filter((one) => failsByAll(one, ph, window)).slice(0, WRONG_CHOICES)
  const taken = new Set([key, ...wrong])
  const missing = players.find((one) => !taken.has(one) && mainRole(one) === role.id)
  if (!key || !missing || wrong.length < WRONG_CHOICES) return null
  return draftOf({ role, ph, window, missing, key, wrong })
}
