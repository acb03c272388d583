import { because } from '#engine/checks/say.ts'
import type { FormulaContext, FormulaLine } from '#engine/formula/context.ts'
import { usedClaim } from '#engine/graph/subject.ts'
import type { Reason } from './item.ts'
import { bears_c, dissolvesIn, firstRole } from './roles-here.ts'

const IN: Record<string, string> = {
  water: 'dissolves in water',
  oil: 'dissolves in oil',
  both: 'dissolves in water and in oil',
  silicone: 'mixes with silicones',
  insoluble: 'dissolves neither in water nor in oil',
}

/** In what it dissolves, with the claim; says so where that is not on record. */
export function solubilityReason(line: FormulaLine): Reason {
  const fact = IN[dissolvesIn(line) ?? '']
  return fact === undefined
    ? because('in what it dissolves is not on record')
    : because(fact, usedClaim(line.subject, 'solubility'))
}

/** What it does in this formula. */
export function roleReason(context: FormulaContext, line: FormulaLine): Reason {
  const label = context.world.knowledge.roles.get(firstRole(context, line))?.label
  return because(label === undefined ? 'no role on record' : `here: ${label.toLowerCase()}`)
}

/** How much heat it bears, with the claim; says so where that is not on record. */
export function heatReason(line: FormulaLine): Reason {
  const limit_c = bears_c(line)
  return limit_c === undefined
    ? because('what heat it bears is not on record')
    : because(`bears up to ${limit_c} °C`, usedClaim(line.subject, 'heat_max_c'))
}

/** Where the recipe or the record weighs it in. */
export const phaseReason = (line: FormulaLine, stated: FormulaLine['phase'] | undefined): Reason =>
  stated !== undefined
    ? because(`the recipe puts it into the ${stated} phase`)
    : because(`usually weighed into the ${line.phase} phase`, usedClaim(line.subject, 'phase'))

export const practice = (fact: string): Reason => because(`usual practice: ${fact}`)
