import { activeMatterDose } from '#engine/chemistry/active-matter-dose.ts'
import { numberOf, usedClaim } from '#engine/graph/subject.ts'
import type { Subject } from '#engine/graph/subject.ts'
import { short } from '#engine/units/round.ts'
import { drawOne } from './chance.ts'
import { isCommon, nameOf, SEEN, WRONG_CHOICES } from './draft.ts'
import type { Draft, Maker } from './draft.ts'

const SHARES_PERCENT = [4, 6, 8, 10, 12, 15, 18, 20, 24, 30]
const MOST_PERCENT = 60
/** Closer figures would test rounding, not the relation. */
const APART = 0.08

const isApart = (a: number, b: number): boolean => Math.abs(a - b) > APART * Math.max(a, b)

/** Slips that people make: same mass, the ratio upside down, active matter taken for mass, the difference taken. */
const slips = (share_percent: number, old_percent: number, new_percent: number): number[] => [
  share_percent,
  (share_percent * new_percent) / old_percent,
  (share_percent * old_percent) / 100,
  share_percent * (1 + (old_percent - new_percent) / 100),
  (share_percent * new_percent) / 100,
]

function wrongFigures(key: number, figures: readonly number[]): number[] {
  const kept: number[] = []
  for (const one of figures) {
    if ([key, ...kept].every((other) => isApart(one, other)) && one < 100) kept.push(one)
  }
  return kept.slice(0, WRONG_CHOICES)
}

const choice = (percent: number) => ({ id: short(percent), text: `${short(percent)} %` })

function draftOf(missing: Subject, stand: Subject, share_percent: number): Draft | null {
  const old_percent = numberOf(missing, 'active_percent')
  const new_percent = numberOf(stand, 'active_percent')
  if (!old_percent || !new_percent || !isApart(old_percent, new_percent)) return null
  const key = activeMatterDose(share_percent, old_percent, new_percent)
  const wrong = wrongFigures(key, slips(share_percent, old_percent, new_percent))
  if (wrong.length < WRONG_CHOICES || key > MOST_PERCENT) return null
  const claims = [missing, stand].flatMap((one) => usedClaim(one, 'active_percent') ?? [])
  return {
    difficulty: old_percent === 100 || new_percent === 100 ? 1 : 2,
    question: `A recipe holds ${short(share_percent)} % ${nameOf(missing)} with ${short(old_percent)} % active matter. How much ${nameOf(stand)} with ${short(new_percent)} % active matter brings the same active matter?`,
    choices: [key, ...wrong].map(choice),
    key: short(key),
    because: `Share times active matter stays the same: ${short(share_percent)} × ${short(old_percent)} / ${short(new_percent)} = ${short(key)} %. The active matter of both is recorded (${[...new Set(claims.map(({ access }) => SEEN[access]))].join('; ')}); the bottle in hand decides.`,
    sources: [...new Set(claims.map(({ source }) => source))].sort(),
    about: { ingredients: [missing.id, stand.id] },
  }
}

/** How much of another bottle brings the same active matter? Among roles that are dosed so. */
export const activeMatter: Maker = (world, chance, asked) => {
  const roles = [...world.knowledge.roles.values()].filter(
    ({ id, swap }) => swap.dose === 'active-matter' && (asked === undefined || world.roles.above(id).includes(asked)),
  )
  const role = drawOne(roles, chance)
  const players = (role ? world.players(role.id) : []).filter(
    (one) => isCommon(one) && usedClaim(one, 'active_percent') !== undefined,
  )
  const missing = drawOne(players, chance)
  const stand = drawOne(
    players.filter((one) => one !== missing),
    chance,
  )
  const share_percent = drawOne(SHARES_PERCENT, chance)
  if (!role || !missing || !stand || share_percent === undefined) return null
  const draft = draftOf(missing, stand, share_percent)
  return draft && { ...draft, about: { ...draft.about, role: role.id } }
}
