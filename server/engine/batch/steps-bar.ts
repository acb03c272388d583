import { HOT_OIL, hazardsOf } from './cautions.ts'
import { draft, held, named, sentence, tempOf, usualTime } from './draft.ts'
import { heatFor } from './heat.ts'
import type { Maker } from './plan.ts'
import { isLiquid, isPowder } from './roles-here.ts'
import { coolTemp } from './cool-temp.ts'
import { told, waysOf } from './ways.ts'

export const meltBar: Maker = (plan) => {
  const fats = plan.at('oil')
  if (fats.length === 0) return null
  return draft({
    id: 'melt',
    title: 'Melt the fats',
    text: `Melt ${named(fats)} in a water bath until clear.`,
    why: 'They are the glue in which the washing powder is wetted',
    adds: fats,
    after: ['weigh'],
    temp: plan.heat ? tempOf(plan.heat) : undefined,
    cautions: [HOT_OIL, ...hazardsOf(plan.context, fats)],
  })
}

export const workIn: Maker = (plan, before) => {
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
    title: 'Work the surfactants to a paste',
    text: sentence(
      liquids.length > 0 ? `Stir ${named(liquids)} in.` : '',
      solids.length > 0
        ? `Strew ${named(solids)} in slowly and knead over the water bath until the paste is even.`
        : '',
    ),
    why: 'The powder has to be wetted grain by grain; dry pockets crumble in use',
    adds: items,
    uses: held(before),
    temp: heat ? tempOf(heat) : undefined,
    time: usualTime(15, 45, 'minutes', 'until no dry grain is felt'),
    because: told(waysOf(items)),
    sources: waysOf(items),
    cautions: [
      ...(solids.some(({ line }) => isPowder(line))
        ? ['Surfactant dust makes you cough: dust mask, no draught, lid on the jar.']
        : []),
      ...hazardsOf(plan.context, items),
    ],
  })
}

export const barPowder: Maker = (plan, before) => {
  const powders = plan.at('powder')
  if (powders.length === 0) return null
  return draft({
    id: 'add-powder',
    title: 'Knead the powders in',
    text: `Sieve ${named(powders)} in and knead until the colour is even.`,
    why: 'They do not melt and are spread only by kneading',
    adds: powders,
    uses: held(before),
    cautions: hazardsOf(plan.context, powders),
  })
}

/** Scents and what bears no heat, into a paste that can just be kneaded. */
export const barLate: Maker = (plan, before) => {
  const items = plan.at('cool')
  if (items.length === 0) return null
  return draft({
    id: 'cool-down',
    title: 'Let it cool and knead the last lines in',
    text: `Let the paste cool until it can just be kneaded and work ${named(items)} in.`,
    why: 'Heat drives scents off, and breaks actives and preservatives',
    adds: items,
    uses: held(before),
    temp: coolTemp(items),
    cautions: hazardsOf(plan.context, items),
  })
}

export const pressBar: Maker = (plan, before) =>
  draft({
    id: 'press',
    title: 'Press into moulds',
    text: 'Press the warm paste firmly into moulds without air, let it get cold, turn it out and let it dry in the air.',
    why: 'Air pockets are where bars break',
    uses: held(before),
    time: usualTime(1, 3, 'days', 'until firm and dry to the touch'),
    cautions: plan.heat ? ['The paste is hot: gloves.'] : [],
  })
