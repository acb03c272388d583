import { hazardsOf } from './cautions.ts'
import { coolTemp, COOL_C, POURS_C } from './cool-temp.ts'
import { draft, held, named, sentence, standing, usualTemp } from './draft.ts'
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
  coolTemp(plan.at('cool', ...joining(plan)), jellies(plan).length > 0 ? POURS_C : COOL_C)

const joining = (plan: Plan) => (plan.firstJoins === 'cool-down' ? (['first', 'first-medium'] as const) : [])

/** From hot to the heat that the late lines bear. */
export const coolDown: Maker = (plan, before) => {
  const ids = before.map(({ id }) => id)
  if (!isWarm(plan, ids)) return null
  const sets = jellies(plan)
  const isOilOutside = plan.context.form === 'water-in-oil'
  return draft({
    id: 'cool',
    title: 'Cool under stirring',
    text: sentence(
      'Stir slowly with a spatula while it cools, along wall and bottom; no air in.',
      isOilOutside ? 'Go on until it is at room temperature or nearly so.' : '',
      sets.length > 0 ? `${named(sets)} sets as it cools: what follows goes in while it is still liquid.` : '',
    ),
    why: 'Crystals and gel networks form now; left alone it sets in lumps and skins over',
    uses: held(before),
    temp: lateTemp(plan),
  })
}

/** Water that went up as steam. */
export const topUp: Maker = (plan, before) => {
  if (!before.some(({ id }) => id === 'cool') || plan.context.form === 'water-in-oil') return null
  return draft({
    id: 'top-up',
    title: 'Replace lost water',
    text: 'Weigh the beaker, take its empty weight off, and stir in boiled and cooled or distilled water up to the weight given here.',
    why: 'Heated batches lose water; what is left would be stronger than the recipe',
    uses: held(before),
    weighBack: true,
    because: [practice('weighing before and after shows the loss')],
  })
}

const dissolvedApart = (plan: Plan, items: readonly Placed[]): string => {
  const powders = items.filter(({ line }) => isPowder(line) && dissolvesIn(line) === 'water')
  const hasWater = plan.keptBack?.units.has('cool-down') === true
  return hasWater && powders.length > 0 ? `First dissolve ${named(powders)} in the water kept back for it.` : ''
}

const stirredIn = (items: readonly Placed[]): string =>
  items.length === 0 ? '' : `Stir in ${named(items)}${items.length > 1 ? ', one after the other,' : ''} until even.`

/** Preservative, scent and what does not bear heat. */
export const addCool: Maker = (plan, before) => {
  const items = plan.at('cool')
  const cup = standing(before, ...(plan.firstJoins === 'cool-down' ? ['dissolve-first'] : []), 'premix')
  if (items.length + cup.length === 0) return null
  const cooled = before.some(({ id }) => id === 'cool')
  const late = [...items, ...(cup.includes('dissolve-first') ? plan.at('first', 'first-medium') : [])]
  const preserves = late.some(({ line }) => playsHere(plan.context, line, 'preservative'))
  const isOilOutside = plan.context.form === 'water-in-oil'
  return draft({
    id: 'cool-down',
    title: preserves
      ? `Add the preservative and ${cooled ? 'what bears no heat' : 'the last lines'}`
      : 'Add the last lines',
    text: sentence(
      dissolvedApart(plan, items),
      stirredIn(items),
      cup.length > 0 ? 'Stir in the cup that was mixed beside it, in a thin stream.' : '',
      isOilOutside && items.some(({ line }) => !inOil(line))
        ? 'What dissolves only in water has to be stirred in hard, in drops.'
        : '',
    ),
    why: cooled
      ? 'Heat drives scents off, and breaks actives and preservatives'
      : 'Small lines are spread best in the whole batch',
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
  const powders = plan.at('powder')
  if (powders.length === 0) return null
  const warm = before.some(({ id }) => id === 'cool')
  return draft({
    id: 'add-powder',
    title: 'Stir the powder in',
    text: `Sieve ${named(powders)} in by spoonfuls and stir until no dry pocket is left.`,
    why: 'They neither dissolve nor melt; a thick batch holds them up',
    adds: powders,
    uses: held(before),
    temp: warm ? usualTemp({ max: COOL_C }, 'starches swell and scents leave above') : undefined,
    cautions: hazardsOf(plan.context, powders),
  })
}
