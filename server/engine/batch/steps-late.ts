import { because } from '#engine/checks/say.ts'
import type { Say } from '#engine/words/say.ts'
import { hazardsOf } from './cautions.ts'
import { draft, held, named, sentence, standing, tempOf } from './draft.ts'
import type { Placed } from './item.ts'
import type { Maker } from './plan.ts'
import { isSolid, playsHere } from './roles-here.ts'
import { told, waysOf } from './ways.ts'

/** Solids of a wash, melted into a surfactant. */
export const warmSurfactants: Maker = (plan) => {
  const { say } = plan
  const items = plan.at('warm-surfactant')
  if (items.length === 0) return null
  const solids = items.filter(({ line }) => isSolid(line))
  const carriers = items.filter((item) => !solids.includes(item))
  return draft({
    id: 'surfactants-hot',
    title: say`Melt the solids into a surfactant`,
    text:
      carriers.length > 0
        ? say`Warm ${named(solids, say)} in ${named(carriers, say)}, covered and stirred slowly, until nothing solid is left.`
        : say`Warm ${named(solids, say)} covered and stirred slowly, until nothing solid is left.`,
    why: say`They dissolve in warm surfactant, not in cold wash`,
    adds: items,
    after: ['weigh'],
    temp: plan.hotGum ? tempOf(plan.hotGum) : undefined,
    because: told(waysOf(solids)),
    sources: waysOf(solids),
    cautions: [say`Hot surfactant sticks and burns.`, ...hazardsOf(plan.context, items)],
    aside: true,
  })
}

const runDown = (items: readonly Placed[], say: Say): string => {
  if (items.length === 0) return ''
  return items.length > 1
    ? say`Let ${named(items, say)} run down the wall one after the other and stir slowly with a spatula under the surface.`
    : say`Let ${named(items, say)} run down the wall and stir slowly with a spatula under the surface.`
}

export const surfactants: Maker = (plan, before) => {
  const { say } = plan
  const items = plan.at('surfactant')
  const melted = standing(before, 'surfactants-hot')
  if (items.length + melted.length === 0) return null
  return draft({
    id: 'surfactants',
    title: say`Stir the surfactants in, gently`,
    text: sentence(
      runDown(items, say),
      melted.length > 0 ? say`Stir the melted mixture in while it is warm.` : '',
      say`No blender.`,
    ),
    why: say`Shear makes foam that takes a day to go`,
    adds: items,
    uses: [...held(before), ...melted],
    because: told(waysOf(items)),
    sources: waysOf(items),
    cautions: hazardsOf(plan.context, items),
  })
}

/** Ions that set a gum. */
export const addIons: Maker = (plan, before) => {
  const { say } = plan
  const items = plan.at('ions')
  if (items.length === 0) return null
  return draft({
    id: 'add-ions',
    title: say`Add the ions that set it`,
    text: say`Dissolve ${named(items, say)} in a little of the water and stir it in quickly, all around.`,
    why: say`Where ions meet the gum slowly they set skins and strings`,
    adds: items,
    uses: held(before),
  })
}

export const joinAlcohol: Maker = (plan, before) => {
  const { say } = plan
  const cup = standing(before, 'alcohol-cup')
  const items = cup.length > 0 ? [] : plan.at('alcohol')
  if (cup.length + items.length === 0) return null
  return draft({
    id: 'add-alcohol',
    title: say`Bring in the alcohol`,
    text:
      items.length > 0
        ? say`Stir ${named(items, say)} in slowly, in a thin stream.`
        : say`Stir the alcohol cup and the water phase together, in a thin stream.`,
    why: say`Poured in at once it makes gums and salts fall out in clots`,
    adds: items,
    uses: [...held(before), ...cup],
    cautions: hazardsOf(plan.context, plan.at('alcohol')),
  })
}

/** Oils in traces, without a solubiliser of their own: into a little of the wash. */
export const scentIntoWash: Maker = (plan, before) => {
  const { say } = plan
  const items = before.some(({ id }) => id === 'premix') ? [] : plan.at('premix')
  if (items.length === 0) return null
  return draft({
    id: 'add-oils',
    title: say`Take the oils up`,
    text: say`Stir ${named(items, say)} with about ten times as much of the batch in a cup until clear or evenly cloudy, then stir that back in.`,
    why: say`Straight into the beaker they swim on top`,
    adds: items,
    uses: held(before),
    cautions: hazardsOf(plan.context, items),
  })
}

/** Salt or its like, in portions: past the top of its curve a wash thins again. */
export const thicken: Maker = (plan, before) => {
  const { say } = plan
  const items = plan.at('thicken')
  if (items.length === 0) return null
  const salts = items.filter(({ line }) => playsHere(plan.context, line, 'surfactant-thickener') && isSolid(line))
  return draft({
    id: 'thicken',
    title: say`Thicken at the end`,
    text:
      salts.length > 0
        ? say`Stir ${named(items, say)} in by quarters and wait after each; stop when it is thick enough, for past the top of the salt curve it turns thin again.`
        : say`Stir ${named(items, say)} in by quarters and wait after each; stop when it is thick enough.`,
    why: say`Body depends on pH and scent, so it is set when both are in`,
    adds: items,
    uses: held(before),
    because: items.flatMap(({ line }) => line.subject.cautionsAt.thickening ?? []).map((text) => because(text)),
  })
}
