import type { Claim, Ingredient } from '#engine/model/records.ts'
import type { Judged, Statement } from '#engine/model/lesson.ts'
import { inside, rangeText } from '#engine/units/range.ts'
import type { Range } from '#engine/units/range.ts'
import type { Vocabulary } from './lint.ts'
import { upFrom } from './members.ts'
import { usedClaim } from '#engine/knowledge/used-claim.ts'

export type Words = Pick<Vocabulary, 'ingredients' | 'aliases' | 'roles' | 'classes' | 'properties'>
type Fact<K extends 'plays' | 'in_class' | 'claim' | 'holds_at'> = NonNullable<Statement[K]>

const spanOf = ({ value, min, max }: Claim): Range => {
  const [low, high] = [value ?? min, value ?? max]
  return { ...(low !== undefined && { min: low }), ...(high !== undefined && { max: high }) }
}

const textOf = (claim: Claim): string => {
  if (claim.is !== undefined) return claim.is
  if (claim.spectrum) return JSON.stringify(claim.spectrum)
  if (claim.shares) return JSON.stringify(claim.shares)
  return `${rangeText(spanOf(claim))} ${claim.unit}`
}

/** Figures agree when the recorded one, rounded to the decimals stated, is the one stated. */
export function agrees(stated: number, recorded: number | undefined): boolean {
  const decimals = (String(stated).split('.')[1] ?? '').length
  return recorded !== undefined && Math.abs(stated - recorded) <= 0.5 * 10 ** -decimals + 1e-9
}

const no = (found: string): Judged => ({ holds: false, found, sources: [] })

function judgePlays(one: Ingredient, role: string, { roles }: Words): Judged {
  if (!roles.has(role)) return no(`there is no role ${role}`)
  const played = one.roles.filter((entry) => upFrom(entry.role, roles).includes(role))
  const found = `${one.id} plays ${one.roles.map((entry) => entry.role).join(', ')}`
  return { holds: played.length > 0, found, sources: played.map(({ source }) => source) }
}

function judgeValue(claim: Claim, fact: Fact<'claim'>): boolean {
  const part = fact.of === undefined ? undefined : (claim.shares?.[fact.of] ?? claim.spectrum?.[fact.of])
  if (fact.of !== undefined && part === undefined) return false
  if (typeof part === 'string') return fact.equals === part
  const { min, max } = typeof part === 'number' ? { min: part, max: part } : spanOf(claim)
  const { equals } = fact
  return [
    fact.min === undefined || agrees(fact.min, min),
    fact.max === undefined || agrees(fact.max, max),
    fact.at_least === undefined || (min !== undefined && min >= fact.at_least),
    fact.at_most === undefined || (max !== undefined && max <= fact.at_most),
    equals === undefined ||
      (typeof equals === 'string' ? claim.is === equals : agrees(equals, min) && agrees(equals, max)),
  ].every(Boolean)
}

const SIDES = ['min', 'max', 'equals', 'at_least', 'at_most'] as const

function judgeClaim(one: Ingredient, fact: Fact<'claim'>, { properties }: Words): Judged {
  if (!properties.has(fact.property)) return no(`there is no property ${fact.property}`)
  if (SIDES.every((side) => fact[side] === undefined)) return no(`states none of ${SIDES.join(', ')}`)
  const claim = usedClaim(one, fact.property)
  if (!claim) return no(`${one.id} has no decided ${fact.property} on record`)
  return {
    holds: judgeValue(claim, fact),
    found: `${one.id} has ${fact.property} ${textOf(claim)}`,
    sources: [claim.source],
  }
}

const WINDOWS = { works: 'ph_effective', keeps: 'ph_stability' } as const

function judgeWindow(one: Ingredient, { ph, holds, window }: Fact<'holds_at'>): Judged {
  const asked = window === undefined ? (['works', 'keeps'] as const) : [window]
  const known = asked.flatMap((word) => {
    const claim = usedClaim(one, WINDOWS[word])
    return claim ? [{ word, claim, isIn: inside(ph, spanOf(claim)) }] : []
  })
  if (known.length === 0) return no(`${one.id} has no pH window on record`)
  const found = `${one.id} ${known.map(({ word, claim }) => `${word} at pH ${rangeText(spanOf(claim))}`).join(', ')}`
  const isIn = known.every((entry) => entry.isIn)
  return { holds: isIn === (holds === 'yes'), found, sources: known.map(({ claim }) => claim.source) }
}

/** Looks a fact up in the records; null for a statement that only a question to the engine decides. */
export function judgeFact(words: Words, statement: Statement): Judged | null {
  const { plays, not_plays, in_class, claim, holds_at } = statement
  const fact = plays ?? not_plays ?? in_class ?? claim ?? holds_at
  if (!fact) return null
  const id = fact.ingredient
  const one = words.ingredients.get(words.aliases.get(id) ?? id)
  if (!one) return no(`no record has the id ${id}`)
  if (plays) return judgePlays(one, plays.role, words)
  if (not_plays) {
    const judged = judgePlays(one, not_plays.role, words)
    return { ...judged, holds: !judged.holds && words.roles.has(not_plays.role) }
  }
  if (in_class) {
    const found = `${one.id} is of ${[...one.classes].join(', ')}`
    if (!words.classes.has(in_class.class)) return no(`there is no class ${in_class.class}`)
    return { holds: one.classes.has(in_class.class), found, sources: [one.classProvenance.source] }
  }
  if (claim) return judgeClaim(one, claim, words)
  return holds_at ? judgeWindow(one, holds_at) : null
}
