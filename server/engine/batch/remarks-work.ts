import { because, nameOf } from '#engine/checks/say.ts'
import { rangeOfProperty, usedClaim } from '#engine/graph/subject.ts'
import type { BatchRemark } from '#engine/model/batch.ts'
import { named } from './draft.ts'
import type { Place, Placed } from './item.ts'
import { needsOtherLiquid } from './media.ts'
import type { Plan } from './plan.ts'
import { heatReason, practice } from './reasons.ts'
import { one } from './remark.ts'
import type { Remark } from './remark.ts'
import { UNKNOWNS } from './remarks-unknown.ts'
import { bears_c, isPowder, onlyInOil, playsHere } from './roles-here.ts'

const notDissolved: Remark = (plan) => {
  const { say } = plan
  const hard = plan
    .at('water', 'cool')
    .filter(({ line }) => needsOtherLiquid(plan, line) && plan.process !== 'anhydrous')
  return one(
    {
      kind: 'unknown-dissolving',
      severity: 'warn',
      message: say`Hardly dissolves in water, and the recipe has no diol or alcohol enough to take it up: ${named(hard, say)}`,
      remedy: say`Keep a part of a diol or alcohol for it, or test first in a small cup`,
      because: hard.flatMap(({ line }) => {
        const claim = usedClaim(line.subject, 'water_solubility_percent')
        return claim?.value === undefined
          ? [because(say`dissolves first in another liquid`)]
          : [because(say`${nameOf(line.subject)}: water takes up ${claim.value} %`, claim)]
      }),
    },
    hard,
  )
}

/** A powder that only dissolves in hot fat: how hot is not its melting point. */
const powderInFat: Remark = (plan) => {
  const { say } = plan
  return plan.at('oil', 'butter').flatMap((item) => {
    const { subject } = item.line
    const melts_c = rangeOfProperty(subject, 'melting_c')?.max
    if (!isPowder(item.line) || !onlyInOil(item.line) || melts_c === undefined || melts_c <= (plan.heat?.max_c ?? 25))
      return []
    return one(
      {
        kind: 'unknown-dissolving',
        severity: 'unknown',
        message: say`${nameOf(subject)} melts up to ${melts_c} °C; at what heat it dissolves in this melt is not on record`,
        remedy: say`Stir until clear before the next line goes in, and look for grains when it is cold`,
        because: [because(say`melts up to ${melts_c} °C`, usedClaim(subject, 'melting_c'))],
      },
      [item],
    )
  })
}

const MELTED: readonly Place[] = ['oil', 'butter']
const EARLY: readonly Place[] = ['gum', 'polymer', 'clay', 'hot', 'water']

/** What the work does with a line, where the recipe says another phase; null where both agree. */
function otherThan({ line, stated, place }: Placed, { say, heat }: Plan): string | null {
  const name = nameOf(line.subject)
  if (place === 'cool' && bears_c(line) !== undefined) {
    if (stated === 'water') return say`${name} stands in the water phase of the recipe and goes in after the heat here`
    if (stated === 'oil') return say`${name} stands in the oil phase of the recipe and goes in after the heat here`
  }
  if (stated !== 'cool-down' || heat === null) return null
  if (MELTED.includes(place))
    return say`${name} stands in the cool-down phase of the recipe and is melted here: cold it stays as grains`
  return EARLY.includes(place)
    ? say`${name} stands in the cool-down phase of the recipe and goes into the water phase here`
    : null
}

/** The recipe says one phase, the work another: said, with the reason. */
const moved: Remark = (plan) =>
  plan.placed.flatMap((item) => {
    const message = otherThan(item, plan)
    return message === null ? [] : one({ kind: 'moved', severity: 'note', message, because: [...item.reasons] }, [item])
  })

const heatDiffers: Remark = ({ say, heat }) =>
  heat?.statedTooLow === undefined
    ? []
    : [
        {
          kind: 'heat-differs',
          severity: 'warn',
          lines: [],
          message: say`The recipe stops at ${heat.statedTooLow} °C; its lines need at least ${heat.min_c} °C, and that is what stands here`,
          remedy: say`Correct the heat of the recipe, or take lines that melt lower`,
          because: heat.because,
        },
      ]

const WAX_PERCENT = 3
/** Below this a melt with wax in it has set [C]. */
const WAX_SETS_C = 50

/** What bears little heat cannot be stirred into a melt that sets above it. */
const setsFirst: Remark = (plan) => {
  const { say } = plan
  const waxes = plan.placed.filter(({ line }) => playsHere(plan.context, line, 'wax'))
  const wax_percent = waxes.reduce((sum, { line }) => sum + line.share_percent, 0)
  if (plan.process !== 'anhydrous' || wax_percent < WAX_PERCENT) return []
  const shy = plan.at('cool', 'powder').filter(({ line }) => (bears_c(line) ?? Infinity) < WAX_SETS_C)
  return one(
    {
      kind: 'too-hot-to-pour',
      severity: 'warn',
      message: say`With ${Number(wax_percent.toPrecision(3))} % wax the melt is stiff before it is cool enough for ${named(shy, say)}`,
      remedy: say`Work it into the soft, cold mass, or take less wax or a line that bears more`,
      because: [
        ...shy.map(({ line }) => heatReason(line, say)),
        practice(say`a melt with wax sets at about ${WAX_SETS_C} °C and above`, say),
      ],
    },
    shy,
  )
}

const REMARKS: readonly Remark[] = [heatDiffers, setsFirst, notDissolved, moved, powderInFat, ...UNKNOWNS]

/** What has to be said about how this batch is made. */
export const workRemarks = (plan: Plan): BatchRemark[] => REMARKS.flatMap((remark) => remark(plan))
