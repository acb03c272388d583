import type { FormulaContext } from '#engine/formula/context.ts'
import { numberOf, plays } from '#engine/graph/subject.ts'
import type { Subject } from '#engine/graph/subject.ts'
import { acidFormOf } from './acid.ts'
import type { AcidForm } from './acid.ts'
import { freeIn } from './free.ts'
import type { Free } from './free.ts'
import { takersOf, totalToFreeOf } from './micelles.ts'
import type { Taker } from './micelles.ts'
import { oilRatioOf } from './oil-share.ts'
import type { OilRatio } from './oil-share.ts'
import { phasesOf } from './phases.ts'

/** A preserving substance in a formula: how much of it is at work, and where the rest is. */
export interface SubstanceState {
  subject: Subject
  form: AcidForm | null
  /** total, pure and counted as the acid where there is one [% of the water phase] */
  in_water_phase_percent: number
  takers: readonly Taker[]
  ratio: OilRatio | null
  /** null where nothing can be said */
  free: Free | null
}

/** Diols and alcohol lift the solubility of preservatives; with this much the cap of plain water says nothing. */
const COSOLVENT_PERCENT = 3

const hasCosolvent = ({ lines }: FormulaContext): boolean =>
  lines.reduce(
    (sum, { subject, share_percent }) =>
      sum + (plays(subject, 'glycol-solvent') || plays(subject, 'alcohol-solvent') ? share_percent : 0),
    0,
  ) >= COSOLVENT_PERCENT

function solubilityOf({ acid }: Pick<AcidForm, 'acid'>, context: FormulaContext): { solubility_percent?: number } {
  const solubility_percent = numberOf(acid, 'water_solubility_percent')
  return solubility_percent === undefined || hasCosolvent(context) ? {} : { solubility_percent }
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
          ...solubilityOf({ acid: moving }, context),
        })
      : null
  return { subject, form, in_water_phase_percent, takers, ratio, free }
}
