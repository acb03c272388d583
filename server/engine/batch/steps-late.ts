import { because } from '#engine/checks/say.ts'
import { hazardsOf } from './cautions.ts'
import { draft, held, named, sentence, standing, tempOf } from './draft.ts'
import type { Maker } from './plan.ts'
import { isSolid, playsHere } from './roles-here.ts'
import { told, waysOf } from './ways.ts'

/** Solids of a wash, melted into a surfactant. */
export const warmSurfactants: Maker = (plan) => {
  const items = plan.at('warm-surfactant')
  if (items.length === 0) return null
  const solids = items.filter(({ line }) => isSolid(line))
  const carriers = items.filter((item) => !solids.includes(item))
  return draft({
    id: 'surfactants-hot',
    title: 'Melt the solids into a surfactant',
    text: sentence(
      `Warm ${named(solids)}`,
      carriers.length > 0 ? `in ${named(carriers)},` : '',
      'covered and stirred slowly, until nothing solid is left.',
    ),
    why: 'They dissolve in warm surfactant, not in cold wash',
    adds: items,
    after: ['weigh'],
    temp: plan.hotGum ? tempOf(plan.hotGum) : undefined,
    because: told(waysOf(solids)),
    sources: waysOf(solids),
    cautions: ['Hot surfactant sticks and burns.', ...hazardsOf(plan.context, items)],
    aside: true,
  })
}

export const surfactants: Maker = (plan, before) => {
  const items = plan.at('surfactant')
  const melted = standing(before, 'surfactants-hot')
  if (items.length + melted.length === 0) return null
  return draft({
    id: 'surfactants',
    title: 'Stir the surfactants in, gently',
    text: sentence(
      items.length > 0
        ? `Let ${named(items)} run down the wall${items.length > 1 ? ' one after the other' : ''} and stir slowly with a spatula under the surface.`
        : '',
      melted.length > 0 ? 'Stir the melted mixture in while it is warm.' : '',
      'No blender.',
    ),
    why: 'Shear makes foam that takes a day to go',
    adds: items,
    uses: [...held(before), ...melted],
    because: told(waysOf(items)),
    sources: waysOf(items),
    cautions: hazardsOf(plan.context, items),
  })
}

/** Ions that set a gum. */
export const addIons: Maker = (plan, before) => {
  const items = plan.at('ions')
  if (items.length === 0) return null
  return draft({
    id: 'add-ions',
    title: 'Add the ions that set it',
    text: `Dissolve ${named(items)} in a little of the water and stir it in quickly, all around.`,
    why: 'Where ions meet the gum slowly they set skins and strings',
    adds: items,
    uses: held(before),
  })
}

export const joinAlcohol: Maker = (plan, before) => {
  const cup = standing(before, 'alcohol-cup')
  const items = cup.length > 0 ? [] : plan.at('alcohol')
  if (cup.length + items.length === 0) return null
  return draft({
    id: 'add-alcohol',
    title: 'Bring in the alcohol',
    text:
      items.length > 0
        ? `Stir ${named(items)} in slowly, in a thin stream.`
        : 'Stir the alcohol cup and the water phase together, in a thin stream.',
    why: 'Poured in at once it makes gums and salts fall out in clots',
    adds: items,
    uses: [...held(before), ...cup],
    cautions: hazardsOf(plan.context, plan.at('alcohol')),
  })
}

/** Oils in traces, without a solubiliser of their own: into a little of the wash. */
export const scentIntoWash: Maker = (plan, before) => {
  const items = before.some(({ id }) => id === 'premix') ? [] : plan.at('premix')
  if (items.length === 0) return null
  return draft({
    id: 'add-oils',
    title: 'Take the oils up',
    text: `Stir ${named(items)} with about ten times as much of the batch in a cup until clear or evenly cloudy, then stir that back in.`,
    why: 'Straight into the beaker they swim on top',
    adds: items,
    uses: held(before),
    cautions: hazardsOf(plan.context, items),
  })
}

/** Salt or its like, in portions: past the top of its curve a wash thins again. */
export const thicken: Maker = (plan, before) => {
  const items = plan.at('thicken')
  if (items.length === 0) return null
  const salts = items.filter(({ line }) => playsHere(plan.context, line, 'surfactant-thickener') && isSolid(line))
  return draft({
    id: 'thicken',
    title: 'Thicken at the end',
    text: `Stir ${named(items)} in by quarters and wait after each; stop when it is thick enough${salts.length > 0 ? ', for past the top of the salt curve it turns thin again' : ''}.`,
    why: 'Body depends on pH and scent, so it is set when both are in',
    adds: items,
    uses: held(before),
    because: items.flatMap(({ line }) =>
      line.subject.cautions.filter((text) => /curve|thin/.test(text)).map((text) => because(text)),
    ),
  })
}
