import type { Claim } from '#engine/model/claim.ts'
import type { FormulaLine } from './context.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { Because } from '#engine/model/finding.ts'
import { readableName } from '#engine/units/readable-name.ts'
import type { Say } from '#engine/words/say.ts'
import type { Static } from 'typebox'

type Reason = Static<typeof Because>

/** Name for people: the INCI name in sentence case. Records do not change, so each is worked out once. */
export function nameOf(subject: Subject): string {
  const known = names.get(subject)
  if (known !== undefined) return known
  const name = readableName(subject.inci)
  names.set(subject, name)
  return name
}

const names = new WeakMap<Subject, string>()

/** The first three names of many, for a sentence that says how many there are. */
export const firstNames = (lines: readonly FormulaLine[]): string =>
  `${lines
    .slice(0, 3)
    .map(({ subject }) => nameOf(subject))
    .join(', ')}${lines.length > 3 ? ' …' : ''}`

/** What a claim states, with its figures: several of one kind can then be told apart. */
export function becauseOf(what: string, claim: Claim, say: Say): Reason {
  const { value, min = value, max = value } = claim
  const figures =
    min === undefined && max === undefined
      ? ''
      : ` ${say.range({ ...(min !== undefined && { min }), ...(max !== undefined && { max }) })}`
  return because(`${what}${figures}`, claim)
}

/** A claim as a reason that can be opened. */
export const because = (fact: string, claim?: Pick<Claim, 'id'>): Reason => ({
  fact,
  ...(claim && { claim: claim.id }),
})

/** A share as a reason. */
export const shareFact = ({ subject, share_percent }: FormulaLine, say: Say): Reason => ({
  fact: say`${nameOf(subject)} is in at ${say.short(share_percent)} %`,
})

/** Sources that a person can look up; practice and memory are said in words, not listed. */
export const sourcesOf = (...provenances: { source: string }[]): string[] =>
  [...new Set(provenances.flatMap((one) => one.source.split(/\s*;\s*/)))].sort()
