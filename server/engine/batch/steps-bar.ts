import { hotOil, hazardsOf } from './cautions.ts'
import { draft, held, named, sentence, tempOf, usualTime } from './draft.ts'
import { heatFor } from './heat.ts'
import type { Maker } from './plan.ts'
import { isLiquid, isPowder } from './roles-here.ts'
import { coolTemp } from './cool-temp.ts'
import { told, waysOf } from './ways.ts'

export const meltBar: Maker = (plan) => {
  const { say } = plan
  const fats = plan.at('oil')
  if (fats.length === 0) return null
  return draft({
    id: 'melt',
    title: say`Melt the fats`,
    text: say`Melt ${named(fats, say)} in a water bath until clear.`,
    why: say`They are the glue in which the washing powder is wetted`,
    adds: fats,
    after: ['weigh'],
    temp: plan.heat ? tempOf(plan.heat) : undefined,
    cautions: [hotOil(say), ...hazardsOf(plan.context, fats)],
  })
}

export const workIn: Maker = (plan, before) => {
  const { say } = plan
  const items = plan.at('surfactant')
  if (items.length === 0) return null
  const liquids = items.filter(({ line }) => isLiquid(line))
  const solids = items.filter((item) => !liquids.includes(item))
  const heat = heatFor(
    plan.context,
    solids.map(({ line }) => line),
  )
  return draft({
    id: 'work-in',
    title: say`Work the surfactants to a paste`,
    text: sentence(
      liquids.length > 0 ? say`Stir ${named(liquids, say)} in.` : '',
      solids.length > 0
        ? say`Strew ${named(solids, say)} in slowly and knead over the water bath until the paste is even.`
        : '',
    ),
    why: say`The powder has to be wetted grain by grain; dry pockets crumble in use`,
    adds: items,
    uses: held(before),
    temp: heat ? tempOf(heat) : undefined,
    time: usualTime([15, 45, 'minutes'], say`until no dry grain is felt`, say),
    because: told(waysOf(items)),
    sources: waysOf(items),
    cautions: [
      ...(solids.some(({ line }) => isPowder(line))
        ? [say`Surfactant dust makes you cough: dust mask, no draught, lid on the jar.`]
        : []),
      ...hazardsOf(plan.context, items),
    ],
  })
}

export const barPowder: Maker = (plan, before) => {
  const { say } = plan
  const powders = plan.at('powder')
  if (powders.length === 0) return null
  return draft({
    id: 'add-powder',
    title: say`Knead the powders in`,
    text: say`Sieve ${named(powders, say)} in and knead until the colour is even.`,
    why: say`They do not melt and are spread only by kneading`,
    adds: powders,
    uses: held(before),
    cautions: hazardsOf(plan.context, powders),
  })
}

/** Scents and what bears no heat, into a paste that can just be kneaded. */
export const barLate: Maker = (plan, before) => {
  const { say } = plan
  const items = plan.at('cool')
  if (items.length === 0) return null
  return draft({
    id: 'cool-down',
    title: say`Let it cool and knead the last lines in`,
    text: say`Let the paste cool until it can just be kneaded and work ${named(items, say)} in.`,
    why: say`Heat drives scents off, and breaks actives and preservatives`,
    adds: items,
    uses: held(before),
    temp: coolTemp(items, say),
    cautions: hazardsOf(plan.context, items),
  })
}

export const pressBar: Maker = (plan, before) => {
  const { say } = plan
  return draft({
    id: 'press',
    title: say`Press into moulds`,
    text: say`Press the warm paste firmly into moulds without air, let it get cold, turn it out and let it dry in the air.`,
    why: say`Air pockets are where bars break`,
    uses: held(before),
    time: usualTime([1, 3, 'days'], say`until firm and dry to the touch`, say),
    cautions: plan.heat ? [say`The paste is hot: gloves.`] : [],
  })
}
