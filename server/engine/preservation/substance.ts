import type { FormulaContext } from '#engine/formula/context.ts'
import { numberOf } from '#engine/graph/subject.ts'
import type { Subject } from '#engine/graph/subject.ts'
import { acidFormOf } from './acid.ts'
import type { AcidForm } from './acid.ts'
import { freeIn } from './free.ts'
import type { Free } from './free.ts'
import { takersOf, totalToFreeOf } from './micelles.ts'
import type { Taker } from './micelles.ts'
import { oilRatioOf } from './oil-share.ts'
import type { MixedOilRatio } from './oil-share.ts'
import { phasesOf } from './phases.ts'
import type { Phases } from './phases.ts'

/** A preserving substance in a formula: how much of it is at work, and where the rest is. */
export interface SubstanceState {
  subject: Subject
  form: AcidForm | null
  /** total, pure and counted as the acid where there is one [% of the water phase] */
  in_water_phase_percent: number
  takers: readonly Taker[]
  ratio: MixedOilRatio | null
  /** null where nothing can be said */
  free: Free | null
}

/** With this much diol or alcohol the solubility in plain water says nothing. */
const COSOLVENT_PERCENT = 3

function solubilityOf(acid: Subject, { cosolvent_percent }: Phases): { solubility_percent?: number } {
  if (cosolvent_percent >= COSOLVENT_PERCENT) return {}
  const solubility_percent = numberOf(acid, 'water_solubility_percent')
  return solubility_percent === undefined ? {} : { solubility_percent }
}

/** @param share_percent pure substance [% of the formula] */
export function stateOf(subject: Subject, share_percent: number, context: FormulaContext): SubstanceState {
  const phases = phasesOf(context)
  const form = acidFormOf(subject, context.world)
  const moving = form?.acid ?? subject
  const takers = takersOf(moving, phases.surfactants, context.world)
  const ratio = oilRatioOf(moving, phases.oils, context.world)
  const per = phases.water_percent > 0 ? 100 / phases.water_percent : 0
  const in_water_phase_percent = share_percent * (form?.acid_g_per_g ?? 1) * per
  const free =
    phases.water_percent > 0
      ? freeIn(in_water_phase_percent, {
          ph: context.ph,
          form,
          ratio,
          oil_to_water: phases.oil_to_water,
          micelles: totalToFreeOf(takers),
          ...solubilityOf(moving, phases),
        })
      : null
  return { subject, form, in_water_phase_percent, takers, ratio, free }
}
