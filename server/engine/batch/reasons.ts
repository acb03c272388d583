import { because } from '#engine/checks/say.ts'
import type { FormulaContext, FormulaLine } from '#engine/formula/context.ts'
import { usedClaim } from '#engine/graph/subject.ts'
import type { Say } from '#engine/words/say.ts'
import type { Reason } from './item.ts'
import { bears_c, dissolvesIn, firstRole } from './roles-here.ts'

const IN: Record<string, (say: Say) => string> = {
  water: (say) => say`dissolves in water`,
  oil: (say) => say`dissolves in oil`,
  both: (say) => say`dissolves in water and in oil`,
  silicone: (say) => say`mixes with silicones`,
  insoluble: (say) => say`dissolves neither in water nor in oil`,
}

type Phase = FormulaLine['phase']

const STATED: Record<Phase, (say: Say) => string> = {
  water: (say) => say`the recipe puts it into the water phase`,
  oil: (say) => say`the recipe puts it into the oil phase`,
  powder: (say) => say`the recipe puts it into the powder phase`,
  'cool-down': (say) => say`the recipe puts it into the cool-down phase`,
}

const USUAL: Record<Phase, (say: Say) => string> = {
  water: (say) => say`usually weighed into the water phase`,
  oil: (say) => say`usually weighed into the oil phase`,
  powder: (say) => say`usually weighed into the powder phase`,
  'cool-down': (say) => say`usually weighed into the cool-down phase`,
}

/** In what it dissolves, with the claim; says so where that is not on record. */
export function solubilityReason(line: FormulaLine, say: Say): Reason {
  const fact = IN[dissolvesIn(line) ?? '']?.(say)
  return fact === undefined
    ? because(say`in what it dissolves is not on record`)
    : because(fact, usedClaim(line.subject, 'solubility'))
}

/** What it does in this formula. */
export function roleReason(context: FormulaContext, line: FormulaLine): Reason {
  const { knowledge, say } = context.world
  const label = knowledge.roles.get(firstRole(context, line))?.label
  return because(label === undefined ? say`no role on record` : say`here: ${say.inside(label)}`)
}

/** How much heat it bears, with the claim; says so where that is not on record. */
export function heatReason(line: FormulaLine, say: Say): Reason {
  const limit_c = bears_c(line)
  return limit_c === undefined
    ? because(say`what heat it bears is not on record`)
    : because(say`bears up to ${limit_c} °C`, usedClaim(line.subject, 'heat_max_c'))
}

/** Where the recipe or the record weighs it in. */
export const phaseReason = (line: FormulaLine, stated: Phase | undefined, say: Say): Reason =>
  stated !== undefined
    ? because(STATED[stated](say))
    : because(USUAL[line.phase](say), usedClaim(line.subject, 'phase'))

export const practice = (fact: string, say: Say): Reason => ({
  ...because(say`usual practice: ${fact}`),
  from: 'practice',
})
