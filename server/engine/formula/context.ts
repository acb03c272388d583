import type { Area, Form, Formula } from '#engine/model/formula.ts'
import type { PlaysRole } from '#engine/model/records.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { World } from '#engine/graph/world.ts'

/** A line of a formula with its record; shares in per cent of the whole, as supplied. */
export interface FormulaLine {
  subject: Subject
  share_percent: number
  phase: 'water' | 'oil' | 'cool-down' | 'powder'
  /** stated strength of the bottle, else undefined */
  strength_percent?: number
}

/** A role that an ingredient plays in this very formula. */
export interface RoleHere {
  role: string
  claim: PlaysRole
}

/** A substance after blends are taken apart. */
export interface Substance {
  subject: Subject
  share_percent: number
  /** the pure substance in it: a solution counts by its strength, as the law counts it */
  pure_percent: number
}

/** A formula with everything that the rules ask of it worked out once. */
export interface FormulaContext {
  world: World
  formula: Formula
  /** sorted by id and share, so that no answer depends on the order in which a recipe is written */
  lines: readonly FormulaLine[]
  /** the same lines as written */
  written: readonly FormulaLine[]
  /** lines of one ingredient summed, blends taken apart */
  substances: readonly Substance[]
  form: Form
  /** worked out from the lines, not stated */
  formDerived: boolean
  ph: number | null
  hottest_c: number | null
  areas: readonly Area[] | undefined
  /** day on which the goods reach the market, YYYY-MM-DD */
  placedOn: string | undefined
  /** water-miscible liquid that is not active matter */
  water_percent: number
  /** oils, fats and waxes */
  oil_percent: number
  /** active matter of surfactants */
  surfactant_percent: number
  rolesOf(subject: Subject): readonly RoleHere[]
}
