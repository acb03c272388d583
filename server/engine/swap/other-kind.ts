import type { Candidate } from './candidates.ts'

/** Below this likeness another product comes out of it, unless somebody states that it stands in. */
const LEAST_LIKENESS = 0.15

/** From this share of the weights on nothing else counts beside it: another scent is still a scent. */
const DECIDING_SHARE = 0.6

/** Less than this in all else, where nobody says whether it does what the thing is there for, and it is no guess to offer. */
const LEAST_ELSEWHERE = 0.4

/** Nothing of what the thing is there for: an active of another effect, a pigment of another hue; or not known, and unlike. */
const missesThePurpose = ({ likeness: { purpose, total } }: Candidate): boolean =>
  purpose !== undefined &&
  purpose.share >= DECIDING_SHARE &&
  (purpose.near === 0 || (purpose.near === null && total < LEAST_ELSEWHERE))

/** Where all that the role compares by is known, and next to nothing fits: what is not known excludes nobody. */
const hardlyAlike = ({ likeness }: Candidate): boolean =>
  likeness.unknown.length === 0 && likeness.total < LEAST_LIKENESS

/** Whether another thing comes out of it; who is stated to stand in is judged by that statement. */
export const isOtherKind = (candidate: Candidate): boolean =>
  !candidate.stated && (hardlyAlike(candidate) || missesThePurpose(candidate))

/** A good stand-in has something of what the thing is there for, unless somebody states that it stands in. */
export const servesThePurpose = ({ stated, likeness }: Candidate): boolean =>
  stated !== undefined || likeness.purpose?.near !== 0
