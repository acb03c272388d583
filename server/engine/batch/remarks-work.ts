import { heatAsked } from '#engine/checks/heat-too-low.ts'
import { because, nameOf } from '#engine/checks/say.ts'
import { numberOf, rangeOfProperty, usedClaim, wordOf } from '#engine/graph/subject.ts'
import type { BatchRemark } from '#engine/model/batch.ts'
import { named } from './draft.ts'
import { heatNeedUnknown } from './heat.ts'
import type { Place, Placed } from './item.ts'
import { needsOtherLiquid } from './media.ts'
import type { Plan } from './plan.ts'
import { heatReason, phaseReason, practice } from './reasons.ts'
import { hasPhStep } from './steps-late.ts'
import { bears_c, isFirst, isPowder, onlyInOil, playsHere } from './roles-here.ts'

type Remark = (plan: Plan) => BatchRemark[]

const keys = (items: readonly Placed[]): string[] => items.map(({ key }) => key).sort()
const one = (remark: Omit<BatchRemark, 'lines'>, items: readonly Placed[]): BatchRemark[] =>
  items.length === 0 ? [] : [{ ...remark, lines: keys(items) }]

const HEATED: Record<Plan['process'], readonly Place[]> = {
  emulsion: ['base', 'water', 'gum', 'gum-medium', 'polymer', 'clay', 'hot', 'oil', 'pigment', 'pigment-medium'],
  'one-phase': ['hot', 'warm-surfactant'],
  anhydrous: ['oil', 'butter', 'pigment', 'pigment-medium'],
  bar: ['oil', 'surfactant'],
  powder: [],
  soap: [],
}

const heatUnknown: Remark = (plan) => {
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
      message: `What heat they bear is not on record: ${named(open)}`,
      remedy: 'Ask the seller, above all where it is an active, a dye or an extract',
      because: [because('no heat limit on record')],
    },
    open,
  )
}

const needUnknown: Remark = (plan) => {
  const open = plan.at('oil', 'butter').filter(({ line }) => heatNeedUnknown(plan.context, line))
  return one(
    {
      kind: 'unknown-heat',
      severity: 'unknown',
      message: `Whether they have to be melted, and at what heat, is not on record: ${named(open)}`,
      remedy: 'Ask the seller; heat until clear, no more',
      because: [because('no melting point and no process heat on record')],
    },
    open,
  )
}

const strengthUnknown: Remark = (plan) => {
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
      message: `How strong it is as supplied is neither stated nor on record: ${named(open)}`,
      remedy: 'Look on the bottle and state it; another strength is another dose',
      because: [because('weighed as supplied')],
    },
    open,
  )
}

const phaseUnknown: Remark = (plan) => {
  const open = plan.placed.filter(
    ({ line, stated }) =>
      stated === undefined && (usedClaim(line.subject, 'phase') ?? usedClaim(line.subject, 'solubility')) === undefined,
  )
  return one(
    {
      kind: 'unknown-phase',
      severity: 'unknown',
      message: `Into which phase it goes is neither stated nor on record: ${named(open)}`,
      remedy: 'Ask the seller in what it dissolves, and state its phase in the recipe',
      because: [because('phase and solubility are not on record')],
    },
    open,
  )
}

const notDissolved: Remark = (plan) => {
  const hard = plan
    .at('water', 'cool')
    .filter(({ line }) => needsOtherLiquid(plan, line) && plan.process !== 'anhydrous')
  return one(
    {
      kind: 'unknown-dissolving',
      severity: 'warn',
      message: `Hardly dissolves in water, and the recipe has no diol or alcohol enough to take it up: ${named(hard)}`,
      remedy: 'Keep a part of a diol or alcohol for it, or test first in a small cup',
      because: hard.flatMap(({ line }) => {
        const claim = usedClaim(line.subject, 'water_solubility_percent')
        return claim?.value === undefined
          ? [because('dissolves first in another liquid')]
          : [because(`${nameOf(line.subject)}: water takes up ${claim.value} %`, claim)]
      }),
    },
    hard,
  )
}

/** A powder that only dissolves in hot fat: how hot is not its melting point. */
const powderInFat: Remark = (plan) =>
  plan.at('oil', 'butter').flatMap((item) => {
    const { subject } = item.line
    const melts_c = rangeOfProperty(subject, 'melting_c')?.max
    if (!isPowder(item.line) || !onlyInOil(item.line) || melts_c === undefined || melts_c <= (plan.heat?.max_c ?? 25))
      return []
    return one(
      {
        kind: 'unknown-dissolving',
        severity: 'unknown',
        message: `${nameOf(subject)} melts up to ${melts_c} °C; at what heat it dissolves in this melt is not on record`,
        remedy: 'Stir until clear before the next line goes in, and look for grains when it is cold',
        because: [because(`melts up to ${melts_c} °C`, usedClaim(subject, 'melting_c'))],
      },
      [item],
    )
  })

const LATE: readonly Place[] = [
  'cool',
  'first',
  'first-medium',
  'powder',
  'ph',
  'neutraliser',
  'thicken',
  'premix',
  'alcohol',
]

/** The recipe says one phase, the work another: said, with the reason. */
const moved: Remark = (plan) =>
  plan.placed.flatMap((item) => {
    const { line, stated, place } = item
    const late = LATE.includes(place)
    const limit_c = bears_c(line)
    const tooHot = (stated === 'water' || stated === 'oil') && place === 'cool' && limit_c !== undefined
    const tooCold = stated === 'cool-down' && !late && (place === 'oil' || place === 'butter') && plan.heat !== null
    if (!tooHot && !tooCold) return []
    return one(
      {
        kind: 'moved',
        severity: 'note',
        message: tooHot
          ? `${nameOf(line.subject)} stands in the ${stated} phase of the recipe and goes in after the heat here`
          : `${nameOf(line.subject)} stands in the cool-down phase of the recipe and is melted here: cold it stays as grains`,
        because: tooHot ? [heatReason(line), phaseReason(line, stated)] : [...item.reasons],
      },
      [item],
    )
  })

const heatDiffers: Remark = ({ heat }) =>
  heat?.statedTooLow === undefined
    ? []
    : [
        {
          kind: 'heat-differs',
          severity: 'warn',
          lines: [],
          message: `The recipe stops at ${heat.statedTooLow} °C; its lines need at least ${heat.min_c} °C, and that is what stands here`,
          remedy: 'Correct the heat of the recipe, or take lines that melt lower',
          because: heat.because,
        },
      ]

const WAX_PERCENT = 3
/** Below this a melt with wax in it has set [C]. */
const WAX_SETS_C = 50

/** What bears little heat cannot be stirred into a melt that sets above it. */
const setsFirst: Remark = (plan) => {
  const waxes = plan.placed.filter(({ line }) => playsHere(plan.context, line, 'wax'))
  const wax_percent = waxes.reduce((sum, { line }) => sum + line.share_percent, 0)
  if (plan.process !== 'anhydrous' || wax_percent < WAX_PERCENT) return []
  const shy = plan.at('cool', 'powder').filter(({ line }) => (bears_c(line) ?? Infinity) < WAX_SETS_C)
  return one(
    {
      kind: 'too-hot-to-pour',
      severity: 'warn',
      message: `With ${Number(wax_percent.toPrecision(3))} % wax the melt is stiff before it is cool enough for ${named(shy)}`,
      remedy: 'Work it into the soft, cold mass, or take less wax or a line that bears more',
      because: [
        ...shy.map(({ line }) => heatReason(line)),
        practice(`a melt with wax sets at about ${WAX_SETS_C} °C and above`),
      ],
    },
    shy,
  )
}

const phOpen: Remark = (plan) =>
  plan.context.ph === null && hasPhStep(plan)
    ? [
        {
          kind: 'ph-target-unknown',
          severity: 'unknown',
          lines: [],
          message: 'The recipe names no pH: to which value it has to be brought is not known',
          remedy: 'Look at the pH windows of its lines and state one',
          because: [because('no pH was given')],
        },
      ]
    : []

const REMARKS: readonly Remark[] = [
  heatDiffers,
  setsFirst,
  notDissolved,
  moved,
  heatUnknown,
  needUnknown,
  powderInFat,
  strengthUnknown,
  phaseUnknown,
  phOpen,
]

/** What has to be said about how this batch is made. */
export const workRemarks = (plan: Plan): BatchRemark[] => REMARKS.flatMap((remark) => remark(plan))
