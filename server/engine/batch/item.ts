import type { Because } from '#engine/model/finding.ts'
import type { FormulaLine } from '#engine/formula/context.ts'
import type { Static } from 'typebox'

export type Reason = Static<typeof Because>

/** Where in the work a line goes; each place is filled by one step. */
export type Place =
  | 'base' // water and plant waters: what the water phase is made of
  | 'water' // dissolves in the water phase
  | 'gum' // powder that lumps unless it is wetted first
  | 'gum-medium' // liquid in which it is wetted
  | 'polymer' // acrylic powder, strewn on water
  | 'clay' // swelling clay
  | 'hot' // dissolves in the water phase only with heat
  | 'first' // hardly dissolves in water: dissolved in a small liquid first
  | 'first-medium'
  | 'premix' // oil-soluble traces and their solubiliser
  | 'alcohol'
  | 'oil'
  | 'butter' // soft fat, melted in the heat that is left
  | 'pigment' // fine powder, wetted in a liquid before it goes on
  | 'pigment-medium'
  | 'surfactant'
  | 'warm-surfactant' // solid that melts into a surfactant, and that surfactant
  | 'neutraliser'
  | 'cool'
  | 'powder'
  | 'ions' // sets a gum
  | 'ph'
  | 'thicken' // salt or its like, by which a wash is thickened at the end
  | 'lye'
  | 'binder' // liquid that binds a dry mix

/** One line of the sheet with what is worked out about it on the way. */
export interface Item {
  key: string
  line: FormulaLine
  /** whole steps of the scale */
  units: number
  /** before rounding to the scale [g] */
  exact_g: number
  /** phase that the recipe itself states */
  stated: FormulaLine['phase'] | undefined
}

export interface Placed extends Item {
  place: Place
  reasons: Reason[]
}
