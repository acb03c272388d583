import { acidSolubility } from '#engine/chemistry/preservation/acid-solubility.ts'
import { ionsForEachAcid } from '#engine/chemistry/preservation/acid-in-emulsion.ts'
import type { AcidForm } from './acid.ts'

interface Span {
  min: number
  max: number
}

/** What decides how much of an agent is free in the water of a formula. */
export interface Surroundings {
  ph: number | null
  /** acid form of the agent, or null where it does not ionise */
  form: AcidForm | null
  /** oil over water of the undissociated agent, or null where it is not known */
  ratio: Span | null
  oil_to_water: number
  /** total over free in the water by micelles; `open` where it may be more */
  micelles: { least: number; open: boolean }
  /** solubility of the undissociated agent in water [%], undefined where it is not known or a solvent lifts it */
  solubility_percent?: number
}

/** Where a unit of an agent goes, for one choice of the constants. */
interface Split {
  undissociated: number
  ion: number
  oil: number
  micelles: number
}

function splitOf(k: number, r: number, ions: number, phi: number): Split {
  const all = k * phi + r + ions
  return { undissociated: 1 / all, ion: ions / all, oil: (k * phi) / all, micelles: (r - 1) / all }
}

export interface Free {
  /** free in the water, ion and undissociated together [% of the water phase], as the acid where it has one */
  free_percent: Span
  /** null where the agent does not ionise or the pH is not known */
  undissociated_percent: Span | null
  /** shares of the total, for the middle of the constants [%] */
  taken: { oil: number; micelles: number; dissociation: number; undissolved: number }
}

/** pH at which the undissociated share reaches its ends where nothing is known of the pH. */
const ACID_END = 0
const BASE_END = 14

function ionsOf({ form, ph }: Surroundings, pka: number, unknownPh: number): number {
  if (!form) return 0
  return ionsForEachAcid(Math.min(14, Math.max(0, ph ?? unknownPh)), pka)
}

const middleOf = ({ min, max }: Span): number => (min > 0 ? Math.sqrt(min * max) : (min + max) / 2)

function cap_percent({ form, ph, solubility_percent }: Surroundings): number {
  if (solubility_percent === undefined) return Infinity
  if (!form) return solubility_percent
  return ph === null ? Infinity : acidSolubility(solubility_percent, Math.min(14, Math.max(0, ph)), form.pka.min)
}

const freeOf = (total_percent: number, cap: number, { undissociated, ion }: Split): number =>
  Math.min(cap, total_percent * (undissociated + ion))

/** Least and most undissociated acid over the constants; null without an acid or a pH. */
function undissociatedSpan(total_percent: number, k: Span, here: Surroundings): Span | null {
  const { form, oil_to_water: phi, micelles, ph, solubility_percent: cap = Infinity } = here
  if (!form || ph === null) return null
  const least = splitOf(k.max, micelles.least, ionsOf(here, form.pka.min, ACID_END), phi)
  const most = splitOf(k.min, micelles.least, ionsOf(here, form.pka.max, ACID_END), phi)
  return {
    min: micelles.open ? 0 : Math.min(cap, total_percent * least.undissociated),
    max: Math.min(cap, total_percent * most.undissociated),
  }
}

const NO_RATIO: Span = { min: 0, max: 0 }

/**
 * Free level of an agent in the water phase as a range over all constants that were found.
 *
 * @param total_percent  total, pure [% of the water phase], counted as the acid where the agent has one
 * @returns              null where there is oil and no ratio is known: then nothing can be said. Where a surfactant
 *                       takes an unknown part the range is open below and starts at 0.
 */
export function freeIn(total_percent: number, here: Surroundings): Free | null {
  const { form, ratio, oil_to_water: phi, micelles, ph } = here
  if (!ratio && phi > 0) return null
  const k = ratio ?? NO_RATIO
  const pka = form?.pka ?? NO_RATIO
  const cap = cap_percent(here)
  const most = splitOf(k.min, micelles.least, ionsOf(here, pka.min, BASE_END), phi)
  const least = splitOf(k.max, micelles.least, ionsOf(here, pka.max, ACID_END), phi)
  const mid = splitOf(middleOf(k), micelles.least, ionsOf(here, (pka.min + pka.max) / 2, ACID_END), phi)
  const dissolved = total_percent * (mid.undissociated + mid.ion)
  const left = dissolved > cap ? cap / dissolved : 1
  return {
    free_percent: {
      min: micelles.open ? 0 : freeOf(total_percent, cap, least),
      max: freeOf(total_percent, cap, most),
    },
    undissociated_percent: undissociatedSpan(total_percent, k, here),
    taken: {
      oil: 100 * mid.oil * left,
      micelles: 100 * mid.micelles * left,
      dissociation: form && ph !== null ? 100 * mid.ion * left : 0,
      undissolved: 100 * (1 - left),
    },
  }
}
