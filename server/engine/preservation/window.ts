import { rangeOfProperty, usedClaim } from '#engine/graph/subject.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { Claim } from '#engine/model/claim.ts'
import { distanceOutside } from '#engine/units/range.ts'
import type { Range } from '#engine/units/range.ts'

export type WindowPosition = 'inside' | 'edge' | 'outside' | 'not-known'

/** So near to an end a window is used up: windows are slopes, and a pH drifts. */
export const EDGE_PH = 0.3

const NEARLY = 1e-9

export interface WorkingWindow {
  range: Range
  claim: Claim
}

const windows = new WeakMap<Subject, { found: WorkingWindow | undefined }>()

/** The window in which an agent works, with the claim behind it. Records do not change; each is asked once. */
export function workingWindow(subject: Subject): WorkingWindow | undefined {
  const known = windows.get(subject)
  if (known) return known.found
  const range = rangeOfProperty(subject, 'ph_effective')
  const claim = usedClaim(subject, 'ph_effective')
  const found = range && claim ? { range, claim } : undefined
  windows.set(subject, { found })
  return found
}

/** Where a pH stands in the working window of an agent. */
export function windowPosition(subject: Subject, ph: number | null): WindowPosition {
  const window = workingWindow(subject)
  if (!window || ph === null) return 'not-known'
  if (distanceOutside(ph, window.range) > 0) return 'outside'
  const { min = -Infinity, max = Infinity } = window.range
  return Math.min(ph - min, max - ph) <= EDGE_PH + NEARLY ? 'edge' : 'inside'
}

/** pH of usual products for skin and hair; a window that spans it makes the pH no matter. */
const USUAL_PH = { min: 4, max: 8 }

/** Whether the pH decides if an agent works: its window does not span the pH of usual products. */
export function hangsOnPh(subject: Subject): boolean {
  const range = workingWindow(subject)?.range
  if (!range) return false
  return (range.min ?? -Infinity) > USUAL_PH.min || (range.max ?? Infinity) < USUAL_PH.max
}
