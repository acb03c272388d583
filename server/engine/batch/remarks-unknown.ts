import { heatAsked } from '#engine/checks/heat-too-low.ts'
import { because } from '#engine/checks/say.ts'
import { numberOf, usedClaim, wordOf } from '#engine/graph/subject.ts'
import { named } from './draft.ts'
import { heatNeedUnknown } from './heat.ts'
import type { Place } from './item.ts'
import type { Plan } from './plan.ts'
import { one } from './remark.ts'
import type { Remark } from './remark.ts'
import { bears_c, isFirst } from './roles-here.ts'
import { hasPhStep } from './steps-ph.ts'

const HEATED: Record<Plan['process'], readonly Place[]> = {
  emulsion: ['base', 'water', 'gum', 'gum-medium', 'polymer', 'clay', 'hot', 'oil', 'pigment', 'pigment-medium'],
  'one-phase': ['hot', 'warm-surfactant'],
  anhydrous: ['oil', 'butter', 'pigment', 'pigment-medium'],
  bar: ['oil', 'surfactant'],
  powder: [],
  soap: [],
}

const heatUnknown: Remark = (plan) => {
  const { say } = plan
  const isHot = plan.process === 'one-phase' ? plan.hotGum !== null : plan.heat !== null
  const open = !isHot
    ? []
    : plan
        .at(...HEATED[plan.process])
        .filter(
          ({ line }) =>
            bears_c(line) === undefined && heatAsked(line) === null && !isFirst(plan.context, line, 'water'),
        )
  return one(
    {
      kind: 'unknown-heat',
      severity: 'unknown',
      message: say`What heat they bear is not on record: ${named(open, say)}`,
      remedy: say`Ask the seller, above all where it is an active, a dye or an extract`,
      because: [because(say`no heat limit on record`)],
    },
    open,
  )
}

const needUnknown: Remark = (plan) => {
  const { say } = plan
  const open = plan.at('oil', 'butter').filter(({ line }) => heatNeedUnknown(plan.context, line))
  return one(
    {
      kind: 'unknown-heat',
      severity: 'unknown',
      message: say`Whether they have to be melted, and at what heat, is not on record: ${named(open, say)}`,
      remedy: say`Ask the seller; heat until clear, no more`,
      because: [because(say`no melting point and no process heat on record`)],
    },
    open,
  )
}

const strengthUnknown: Remark = (plan) => {
  const { say } = plan
  const open = plan.placed.filter(
    ({ line }) =>
      line.strength_percent === undefined &&
      numberOf(line.subject, 'active_percent') === undefined &&
      !['powder', 'solid'].includes(wordOf(line.subject, 'form') ?? '') &&
      isFirst(plan.context, line, 'surfactant', 'acid', 'base', 'chemical-exfoliant', 'plant-extract'),
  )
  return one(
    {
      kind: 'unknown-strength',
      severity: 'unknown',
      message: say`How strong it is as supplied is neither stated nor on record: ${named(open, say)}`,
      remedy: say`Look on the bottle and state it; another strength is another dose`,
      because: [because(say`weighed as supplied`)],
    },
    open,
  )
}

const phaseUnknown: Remark = (plan) => {
  const { say } = plan
  const open = plan.placed.filter(
    ({ line, stated }) =>
      stated === undefined && (usedClaim(line.subject, 'phase') ?? usedClaim(line.subject, 'solubility')) === undefined,
  )
  return one(
    {
      kind: 'unknown-phase',
      severity: 'unknown',
      message: say`Into which phase it goes is neither stated nor on record: ${named(open, say)}`,
      remedy: say`Ask the seller in what it dissolves, and state its phase in the recipe`,
      because: [because(say`phase and solubility are not on record`)],
    },
    open,
  )
}

const phOpen: Remark = (plan) => {
  const { say } = plan
  return plan.context.ph === null && hasPhStep(plan)
    ? [
        {
          kind: 'ph-target-unknown',
          severity: 'unknown',
          lines: [],
          message: say`The recipe names no pH: to which value it has to be brought is not known`,
          remedy: say`Look at the pH windows of its lines and state one`,
          because: [because(say`no pH was given`)],
        },
      ]
    : []
}

/** What is neither stated nor on record, and bears on the work. */
export const UNKNOWNS: readonly Remark[] = [heatUnknown, needUnknown, strengthUnknown, phaseUnknown, phOpen]
