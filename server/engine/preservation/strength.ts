import { acidEffect } from '#engine/chemistry/preservation/ion-effect.ts'
import { distanceOutside } from '#engine/units/range.ts'
import type { Range } from '#engine/units/range.ts'
import type { AcidForm } from './acid.ts'
import { sureShare } from './micelles.ts'
import type { SubstanceState } from './substance.ts'
import { EDGE_PH } from './window.ts'

/** A figure that is surely reached and one that may be reached. */
export interface Sure {
  least: number
  most: number
}

const clampPh = (ph: number): number => Math.min(14, Math.max(0, ph))
const middleOf = ({ min, max }: { min: number; max: number }): number => Math.sqrt(min * max)

/** Effect at a pH over that at a reference, at most 1. @param strength how many times the acid is stronger than its ion */
const against = (ph: number, reference: number, pka: number, strength: number): number =>
  Math.min(1, acidEffect(clampPh(ph), pka, strength) / acidEffect(reference, pka, strength))

/**
 * Effect of an acid agent at a pH against that at which its window begins to end, 0 to 1: a level that is usual inside
 * the window is worth so much less here. The ion counts by the middle of what was found for it, or not at all.
 */
function acidStrength({ pka, acidOverIon, ionOfOneOrganism }: AcidForm, ph: number, window: Range): Sure {
  if (window.max === undefined) return FULL
  const reference = clampPh(window.max - EDGE_PH)
  if (ph <= reference) return FULL
  const middle = (pka.min + pka.max) / 2
  const sure = acidOverIon && !ionOfOneOrganism ? acidOverIon.max : Infinity
  return {
    least: against(ph, reference, middle, sure),
    most: against(ph, reference, middle, acidOverIon ? middleOf(acidOverIon) : Infinity),
  }
}

const FULL: Sure = { least: 1, most: 1 }

/** pH units beyond the window over which what does not ionise fades. */
const FADES_OVER_PH = 1
const BEYOND = 0.5

/** What lies outside its window is worth a half at most and nothing one unit on: windows are slopes, no cliffs. */
function slope(ph: number, window: Range): Sure {
  const beyond = distanceOutside(ph, window)
  if (beyond === 0) return FULL
  return { least: 0, most: Math.max(0, BEYOND * (1 - beyond / FADES_OVER_PH)) }
}

function byPh({ form }: SubstanceState, ph: number | null, window: Range | undefined, hangs: boolean): Sure {
  if (!window) return FULL
  if (ph === null) return hangs ? { least: 0, most: 1 } : FULL
  // Below its window an acid is as undissociated as it gets; what else may fail there is no matter of the slope above.
  return form?.needsAcidForm === true && ph >= (window.min ?? 0) ? acidStrength(form, ph, window) : slope(ph, window)
}

/** Usual levels bear that oil and micelles take a half: so much goes in a usual cream. */
const BORNE = 0.5

/** What a share that stays free is worth. */
const worth = (share: number): number => Math.min(1, share / BORNE)

/** How far oil, micelles and solubility leave an agent at work, against a usual cream, 0 to 1. */
function byPhases({ free, in_water_phase_percent, takers, ratio }: SubstanceState): Sure {
  const sure = sureShare(takers)
  if (!free || in_water_phase_percent <= 0) return { least: sure, most: 1 }
  const { oil, micelles, undissolved } = free.taken
  const mid = worth(1 - (oil + micelles + undissolved) / 100)
  // A rough ratio and an open range say too little to be held against the agent.
  const low =
    free.free_percent.min > 0 && ratio?.rough !== true ? worth(free.free_percent.min / in_water_phase_percent) : mid
  return {
    least: sure * Math.min(low, mid),
    most: Math.max(mid, worth(free.free_percent.max / in_water_phase_percent)),
  }
}

/**
 * What a usual level of this substance is worth in this formula, 0 to 1.
 * @param window window against which it is measured: its own, or that of the blend it is part of
 */
export function strengthOf(state: SubstanceState, ph: number | null, window: Range | undefined, hangs: boolean): Sure {
  const [acid, phase] = [byPh(state, ph, window, hangs), byPhases(state)]
  return { least: acid.least * phase.least, most: acid.most * phase.most }
}
