import type { FormulaContext, Substance } from '#engine/formula/context.ts'
import { numberOf, wordOf } from '#engine/graph/subject.ts'
import type { Subject } from '#engine/graph/subject.ts'
import { onceFor } from './once.ts'

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
  /** diols and alcohols, which lift the solubility of preservatives [% of the formula] */
  cosolvent_percent: number
  /** oils, fats, waxes and silicones [% of the formula] */
  oil_percent: number
  /** mass of oil over mass of the water phase, taken for the ratio of volumes: fats are some 8 % lighter */
  oil_to_water: number
  /** oils with their part of the oil phase */
  oils: readonly InPhase[]
  /** surfactants and emulsifiers that make micelles, as part of the water phase */
  surfactants: readonly InPhase[]
}

/** Emulsifiers above this balance are at home in water; those below sit in the oil and at its surface. */
const WATER_LOVING_HLB = 10

interface Nature {
  oil: boolean
  water: boolean
  micelles: boolean
  cosolvent: boolean
}

/** Where a substance goes does not depend on the formula; each record is asked once. */
const natures = new WeakMap<Subject, Nature>()

function natureOf(subject: Subject): Nature {
  const known = natures.get(subject)
  if (known) return known
  const solubility = wordOf(subject, 'solubility')
  const { allRoles, classes } = subject
  const nature = {
    oil: solubility === 'oil' || solubility === 'silicone',
    water: solubility === 'water' || solubility === 'both' || allRoles.has('water-phase'),
    micelles:
      allRoles.has('surfactant') ||
      allRoles.has('solubiliser') ||
      (allRoles.has('emulsifier') && (classes.has('ethoxylate') || (numberOf(subject, 'hlb') ?? 0) > WATER_LOVING_HLB)),
    cosolvent: allRoles.has('glycol-solvent') || allRoles.has('alcohol-solvent'),
  }
  natures.set(subject, nature)
  return nature
}

interface Sums {
  water_percent: number
  oil_percent: number
  cosolvent_percent: number
  oils: Substance[]
  micelles: Substance[]
}

function sumsOf(substances: readonly Substance[]): Sums {
  const sums: Sums = { water_percent: 0, oil_percent: 0, cosolvent_percent: 0, oils: [], micelles: [] }
  for (const one of substances) {
    const nature = natureOf(one.subject)
    if (nature.water) sums.water_percent += one.share_percent
    if (nature.cosolvent) sums.cosolvent_percent += one.share_percent
    if (nature.micelles) sums.micelles.push(one)
    if (!nature.oil) continue
    sums.oil_percent += one.share_percent
    sums.oils.push(one)
  }
  return sums
}

function lookAt(context: FormulaContext): Phases {
  const { water_percent, oil_percent, cosolvent_percent, oils, micelles } = sumsOf(context.substances)
  return {
    water_percent,
    oil_percent,
    cosolvent_percent,
    oil_to_water: water_percent > 0 ? oil_percent / water_percent : 0,
    oils: oils.map(({ subject, share_percent }) => ({ subject, percent: (share_percent * 100) / oil_percent })),
    surfactants:
      water_percent > 0
        ? micelles.map(({ subject, pure_percent }) => ({ subject, percent: (pure_percent * 100) / water_percent }))
        : [],
  }
}

/** Worked out once for each context. */
export const phasesOf = onceFor(lookAt)
