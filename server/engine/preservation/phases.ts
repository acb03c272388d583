import type { FormulaContext, Substance } from '#engine/formula/context.ts'
import { wordOf } from '#engine/graph/subject.ts'
import type { Subject } from '#engine/graph/subject.ts'

/** A substance with its share of the phase that it stands in. */
export interface InPhase {
  subject: Subject
  /** active matter [% of that phase] */
  percent: number
}

/** The formula as water, oil and micelles, which is what a preservative sees of it. */
export interface Phases {
  /** water and all that dissolves in it [% of the formula] */
  water_percent: number
  /** oils, fats, waxes and silicones [% of the formula] */
  oil_percent: number
  /** mass of oil over mass of the water phase, taken for the ratio of volumes: fats are some 8 % lighter */
  oil_to_water: number
  /** oils with their part of the oil phase */
  oils: readonly InPhase[]
  /** surfactants and emulsifiers that make micelles, as part of the water phase */
  surfactants: readonly InPhase[]
}

const isOil = ({ subject }: Substance): boolean => {
  const solubility = wordOf(subject, 'solubility')
  return solubility === 'oil' || solubility === 'silicone'
}

const isInWater = ({ subject }: Substance): boolean => {
  const solubility = wordOf(subject, 'solubility')
  return solubility === 'water' || solubility === 'both' || subject.allRoles.has('water-phase')
}

const makesMicelles = ({ subject }: Substance): boolean =>
  subject.allRoles.has('surfactant') ||
  subject.allRoles.has('solubiliser') ||
  (subject.allRoles.has('emulsifier') && (subject.classes.has('ethoxylate') || wordOf(subject, 'solubility') !== 'oil'))

const sum = (substances: readonly Substance[]): number =>
  substances.reduce((total, { share_percent }) => total + share_percent, 0)

const memo = new WeakMap<FormulaContext, Phases>()

/** Worked out once for each context. */
export function phasesOf(context: FormulaContext): Phases {
  const known = memo.get(context)
  if (known) return known
  const oils = context.substances.filter(isOil)
  const oil_percent = sum(oils)
  const water_percent = sum(context.substances.filter(isInWater))
  const phases: Phases = {
    water_percent,
    oil_percent,
    oil_to_water: water_percent > 0 ? oil_percent / water_percent : 0,
    oils: oils.map(({ subject, share_percent }) => ({ subject, percent: (share_percent * 100) / oil_percent })),
    surfactants:
      water_percent > 0
        ? context.substances
            .filter(makesMicelles)
            .map(({ subject, pure_percent }) => ({ subject, percent: (pure_percent * 100) / water_percent }))
        : [],
  }
  memo.set(context, phases)
  return phases
}
