import { activeMatter } from '#engine/formula/totals.ts'
import type { FormulaContext, FormulaLine } from '#engine/formula/context.ts'
import { numberOf } from '#engine/graph/subject.ts'
import type { SeparationRate } from '#engine/chemistry/mixtures/separation-rate.ts'
import { roundTo } from '#engine/units/round.ts'
import { mixtureHere } from './mixture-here.ts'
import { rateHere } from './mixture-rate.ts'

export type Charge = 'anionic' | 'amphoteric' | 'nonionic' | 'cationic'

/** What a wash is made of, in active matter as a share of the whole formula [%]. */
export interface WashComposition {
  active_percent: number
  anionic_percent: number
  amphoteric_percent: number
  nonionic_percent: number
  cationic_percent: number
  /** surfactants of which neither bottle nor record says how strong they are: counted whole */
  strengthUnknown: string[]
  /** measured mixtures of the kind, where the formula is one */
  separation?: { rate: SeparationRate | null; outside: string[] }
}

/** Surfactants of a wash, the quats of a conditioning one with them. */
export const washLines = ({ lines }: Pick<FormulaContext, 'lines'>): FormulaLine[] =>
  lines.filter(
    ({ subject }) =>
      (subject.allRoles.has('surfactant') || subject.allRoles.has('cationic-conditioner')) &&
      !subject.classes.has('electrolyte'),
  )

/** Sign of the charge by class; a betaine that is also called cationic is amphoteric. */
export function chargeOf({ classes }: FormulaLine['subject']): Charge | undefined {
  return (['amphoteric', 'cationic', 'anionic', 'nonionic'] as const).find((charge) => classes.has(charge))
}

function separationOf(context: FormulaContext): WashComposition['separation'] {
  const here = mixtureHere(context)
  return here ? { rate: rateHere(here, context), outside: here.outside } : undefined
}

/** Active matter of a wash and how it is shared out by charge, or null where the formula is none. */
export function washComposition(context: FormulaContext): WashComposition | null {
  const separation = separationOf(context)
  if (context.form !== 'wash' && !separation) return null
  const lines = washLines(context)
  const active = (charge?: Charge): number =>
    roundTo(
      lines.reduce((sum, line) => sum + (!charge || chargeOf(line.subject) === charge ? activeMatter(line) : 0), 0),
      4,
    )
  return {
    active_percent: active(),
    anionic_percent: active('anionic'),
    amphoteric_percent: active('amphoteric'),
    nonionic_percent: active('nonionic'),
    cationic_percent: active('cationic'),
    strengthUnknown: lines
      .filter((line) => line.strength_percent === undefined && numberOf(line.subject, 'active_percent') === undefined)
      .map(({ subject }) => subject.id),
    ...(separation && { separation }),
  }
}
