import type { BatchStep } from '#engine/model/batch.ts'
import type { Heat } from './heat.ts'
import type { Place, Placed } from './item.ts'
import type { Setting } from './setting.ts'

/** Water that is taken from the water phase for a later step. */
export interface KeptBack {
  /** line of the water */
  key: string
  /** whole scale steps, by step of the work */
  units: ReadonlyMap<string, number>
}

/** All that the steps are written from. */
export interface Plan extends Setting {
  placed: readonly Placed[]
  keptBack: KeptBack | null
  step_g: number
  /** lines at these places, largest first, ties by key */
  at(...places: Place[]): Placed[]
  /** where what was dissolved first joins the batch */
  firstJoins: 'water-phase' | 'cool-down'
  /** heat of what dissolves only hot in a product without oil phase */
  hotGum: Heat | null
  date: string | null
  batchCode: string | null
}

/** A step as it is written, before the graph is drawn. */
export interface Draft extends Omit<BatchStep, 'holds_g'> {
  /** steps that have to be done before, beside those whose mixture it uses */
  after: string[]
  /** the vessel of the batch itself, not a cup beside it */
  isMain: boolean
  /** weigh the vessel after this step */
  weighBack?: boolean
  /** letter of its phase is given only to steps that add lines */
}

/** Writes one step when the batch asks for it. */
export type Maker = (plan: Plan, before: readonly Draft[]) => Draft | null

export const massOf = (items: readonly Placed[]): number => items.reduce((sum, { exact_g }) => sum + exact_g, 0)

const byMass = (a: Placed, b: Placed): number => b.exact_g - a.exact_g || (a.key < b.key ? -1 : 1)

export const atPlaces =
  (placed: readonly Placed[]) =>
  (...places: Place[]): Placed[] =>
    placed.filter(({ place }) => places.includes(place)).sort(byMass)
