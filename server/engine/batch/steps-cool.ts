import { hazardsOf } from './cautions.ts'
import { coolTemp, COOL_C, POURS_C } from './cool-temp.ts'
import { draft, held, named, sentence, standing, usualTemp } from './draft.ts'
import type { Say } from '#engine/words/say.ts'
import type { Placed } from './item.ts'
import type { Maker, Plan } from './plan.ts'
import { practice } from './reasons.ts'
import { dissolvesIn, inOil, isPowder, playsHere } from './roles-here.ts'
import { told, waysOf } from './ways.ts'

const isWarm = (plan: Plan, ids: readonly string[]): boolean =>
  (plan.process === 'emulsion' && plan.heat !== null) ||
  ['dissolve-hot', 'surfactants-hot', 'wet-hot'].some((id) => ids.includes(id))

const jellies = (plan: Plan): Placed[] =>
  plan.at('hot').filter(({ line }) => playsHere(plan.context, line, 'jelly-former'))

const lateTemp = (plan: Plan) =>
  coolTemp(plan.at('cool', ...joining(plan)), plan.say, jellies(plan).length > 0 ? POURS_C : COOL_C)

const joining = (plan: Plan) => (plan.firstJoins === 'cool-down' ? (['first', 'first-medium'] as const) : [])

/** From hot to the heat that the late lines bear. */
export const coolDown: Maker = (plan, before) => {
  const { say } = plan
  const ids = before.map(({ id }) => id)
  if (!isWarm(plan, ids)) return null
  const sets = jellies(plan)
  const isOilOutside = plan.context.form === 'water-in-oil'
  return draft({
    id: 'cool',
    title: say`Cool under stirring`,
    text: sentence(
      say`Stir slowly with a spatula while it cools, along wall and bottom; no air in.`,
      isOilOutside ? say`Go on until it is at room temperature or nearly so.` : '',
      sets.length > 0 ? say`${named(sets, say)} sets as it cools: what follows goes in while it is still liquid.` : '',
    ),
    why: say`Crystals and gel networks form now; left alone it sets in lumps and skins over`,
    uses: held(before),
    temp: lateTemp(plan),
  })
}

/** Water that went up as steam. */
export const topUp: Maker = (plan, before) => {
  const { say } = plan
  if (!before.some(({ id }) => id === 'cool') || plan.context.form === 'water-in-oil') return null
  return draft({
    id: 'top-up',
    title: say`Replace lost water`,
    text: say`Weigh the beaker, take its empty weight off, and stir in boiled and cooled or distilled water up to the weight given here.`,
    why: say`Heated batches lose water; what is left would be stronger than the recipe`,
    uses: held(before),
    weighBack: true,
    because: [practice(say`weighing before and after shows the loss`, say)],
  })
}

const dissolvedApart = (plan: Plan, items: readonly Placed[]): string => {
  const { say } = plan
  const powders = items.filter(({ line }) => isPowder(line) && dissolvesIn(line) === 'water')
  const hasWater = plan.keptBack?.units.has('cool-down') === true
  return hasWater && powders.length > 0 ? say`First dissolve ${named(powders, say)} in the water kept back for it.` : ''
}

const stirredIn = (items: readonly Placed[], say: Say): string => {
  if (items.length === 0) return ''
  return items.length > 1
    ? say`Stir in ${named(items, say)}, one after the other, until even.`
    : say`Stir in ${named(items, say)} until even.`
}

const lateTitle = (preserves: boolean, cooled: boolean, say: Say): string => {
  if (!preserves) return say`Add the last lines`
  return cooled ? say`Add the preservative and what bears no heat` : say`Add the preservative and the last lines`
}

/** Preservative, scent and what does not bear heat. */
export const addCool: Maker = (plan, before) => {
  const { say } = plan
  const items = plan.at('cool')
  const cup = standing(before, ...(plan.firstJoins === 'cool-down' ? ['dissolve-first'] : []), 'premix')
  if (items.length + cup.length === 0) return null
  const cooled = before.some(({ id }) => id === 'cool')
  const late = [...items, ...(cup.includes('dissolve-first') ? plan.at('first', 'first-medium') : [])]
  const preserves = late.some(({ line }) => playsHere(plan.context, line, 'preservative'))
  const isOilOutside = plan.context.form === 'water-in-oil'
  return draft({
    id: 'cool-down',
    title: lateTitle(preserves, cooled, say),
    text: sentence(
      dissolvedApart(plan, items),
      stirredIn(items, say),
      cup.length > 0 ? say`Stir in the cup that was mixed beside it, in a thin stream.` : '',
      isOilOutside && items.some(({ line }) => !inOil(line))
        ? say`What dissolves only in water has to be stirred in hard, in drops.`
        : '',
    ),
    why: cooled
      ? say`Heat drives scents off, and breaks actives and preservatives`
      : say`Small lines are spread best in the whole batch`,
    adds: items,
    alsoAdds: plan.keptBack?.units.has('cool-down') ? [plan.keptBack.key] : [],
    uses: [...held(before), ...cup],
    temp: cooled ? lateTemp(plan) : undefined,
    because: told(waysOf(items)),
    sources: waysOf(items),
    cautions: hazardsOf(plan.context, items),
  })
}

/** Grains and powders that neither dissolve nor melt. */
export const addPowder: Maker = (plan, before) => {
  const { say } = plan
  const powders = plan.at('powder')
  if (powders.length === 0) return null
  const warm = before.some(({ id }) => id === 'cool')
  return draft({
    id: 'add-powder',
    title: say`Stir the powder in`,
    text: say`Sieve ${named(powders, say)} in by spoonfuls and stir until no dry pocket is left.`,
    why: say`They neither dissolve nor melt; a thick batch holds them up`,
    adds: powders,
    uses: held(before),
    temp: warm ? usualTemp({ max: COOL_C }, say`starches swell and scents leave above`, say) : undefined,
    cautions: hazardsOf(plan.context, powders),
  })
}
