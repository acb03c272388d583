import { hazardsOf } from './cautions.ts'
import { draft, held, named, sentence, standing, tempOf, usualTime } from './draft.ts'
import type { Placed } from './item.ts'
import { isGum, isHotWetted, oilCanWet } from './media.ts'
import type { Maker, Plan } from './plan.ts'
import { hotWaterFor, told, waysOf } from './ways.ts'

/** Gums that have to be wetted; of what dissolves hot only those that lump. */
const wettable = (plan: Plan): Placed[] =>
  plan.at('gum', 'hot').filter(({ place, line }) => !isHotWetted(line) && (place === 'gum' || isGum(plan, line)))

/** How gums meet water without lumps in this batch. */
export function wetting(plan: Plan): 'polyol' | 'oil' | 'shear' | 'none' {
  const gums = wettable(plan)
  if (gums.length === 0) return 'none'
  if (plan.at('gum-medium').length > 0) return 'polyol'
  const isCream = plan.process === 'emulsion' && plan.context.form === 'oil-in-water' && plan.at('hot').length === 0
  return isCream && oilCanWet(plan, gums) ? 'oil' : 'shear'
}

export const wetGum: Maker = (plan) => {
  const { say } = plan
  const gums = wettable(plan)
  if (wetting(plan) !== 'polyol') return null
  const medium = plan.at('gum-medium')
  const ways = waysOf(gums)
  return draft({
    id: 'wet-gum',
    title: say`Wet the gum`,
    text: say`Stir ${named(gums, say)} into ${named(medium, say)} to a smooth slurry without dry spots.`,
    why: say`A powder that meets water dry swells at its skin and stays dry inside: fish eyes that no stirring gets out`,
    adds: [...gums, ...medium],
    because: told(ways),
    sources: ways,
    cautions: hazardsOf(plan.context, gums),
    aside: true,
  })
}

/** Swelling clay, in plain water before anything else. */
export const swellClay: Maker = (plan) => {
  const { say } = plan
  const clays = plan.at('clay')
  if (clays.length === 0) return null
  const ways = waysOf(clays)
  return draft({
    id: 'swell-clay',
    title: say`Let the clay swell`,
    text: say`Strew ${named(clays, say)} into the plain water under strong stirring and let it swell before anything else goes in.`,
    why: say`Salts, acids and surfactants keep the platelets from opening`,
    adds: [...clays, ...plan.at('base')],
    time: usualTime([30, 60, 'minutes'], say`strong stirring, cold water; a day standing does as well`, say),
    because: told(ways),
    sources: ways,
    cautions: hazardsOf(plan.context, clays),
  })
}

/** Acrylic powder, strewn on water and left to sink. */
export const strewPolymer: Maker = (plan, before) => {
  const { say } = plan
  const polymers = plan.at('polymer')
  if (polymers.length === 0) return null
  const main = held(before)
  const water = main.length === 0 ? plan.at('base') : []
  return draft({
    id: 'strew-polymer',
    title: say`Strew the polymer on the water`,
    text: say`Sieve ${named(polymers, say)} onto the surface of the water and do not stir until it has sunk and is wet through. Then stir slowly: hard shear cuts the chains and whips air in.`,
    why: polymers.some(({ line }) => line.subject.needs.some(({ need }) => need === 'neutraliser'))
      ? say`Stirred in dry it balls; wet through it makes a thin, cloudy, acid liquid that thickens only when it is neutralised`
      : say`Stirred in dry it balls; strewn and wetted grain by grain it swells evenly`,
    adds: [...polymers, ...water],
    uses: main,
    time: usualTime([20, 60, 'minutes'], say`until no grain is dry`, say),
    cautions: hazardsOf(plan.context, polymers),
  })
}

/** Gums and solids that dissolve in water only with heat. */
export const dissolveHot: Maker = (plan, before) => {
  const { say } = plan
  const hot = plan.at('hot')
  if (hot.length === 0) return null
  const slurry = standing(before, 'wet-gum')
  const inSlurry = slurry.length > 0 ? wettable(plan) : []
  const adds = hot.filter((item) => !inSlurry.includes(item))
  const main = held(before)
  const water = main.length === 0 ? plan.at('base') : []
  const ways = waysOf(hot)
  return draft({
    id: 'dissolve-hot',
    title: say`Dissolve with heat`,
    text: sentence(
      slurry.length > 0
        ? say`Stir the slurry into the cold water.`
        : say`Stir ${named(adds, say)} into the cold water.`,
      say`Heat under stirring, covered between, until nothing grainy is left.`,
    ),
    why: say`${named(hot, say)} dissolves only with heat; cold it stays as swollen grains`,
    adds: [...adds, ...water],
    uses: [...main, ...slurry],
    temp: plan.hotGum ? tempOf(plan.hotGum) : undefined,
    because: told(ways),
    sources: ways,
    cautions: [say`Hot jelly sticks and burns: long sleeves, stir slowly.`, ...hazardsOf(plan.context, adds)],
  })
}

/** Cellulose ethers that want hot water first and dissolve as it cools. */
export const wetHot: Maker = (plan, before) => {
  const { say } = plan
  const gums = plan.at('gum').filter(({ line }) => isHotWetted(line))
  if (gums.length === 0) return null
  const ways = waysOf(gums)
  const water = hotWaterFor(gums)
  const main = held(before)
  return draft({
    id: 'wet-hot',
    title: say`Wet the gum in hot water`,
    text: say`Stir ${named(gums, say)} into this part of the water, hot, until every grain is wet; it dissolves as it gets cold.`,
    why: say`In cold water it lumps, in hot water it does not dissolve and can be spread`,
    adds: [...gums, ...(main.length === 0 ? plan.at('base') : [])],
    uses: main,
    temp: water ? { min: water.min_c, because: water.because } : undefined,
    because: told(ways),
    sources: ways,
    cautions: [say`Hot water scalds.`, ...hazardsOf(plan.context, gums)],
  })
}

/** Where nothing in the recipe wets it: slowly into the vortex. */
export const strewGum: Maker = (plan, before) => {
  const { say } = plan
  if (wetting(plan) !== 'shear') return null
  const gums = plan.at('gum').filter(({ line }) => !isHotWetted(line))
  if (gums.length === 0) return null
  const main = held(before)
  const ways = waysOf(gums)
  return draft({
    id: 'strew-gum',
    title: say`Strew the gum into moving water`,
    text: say`Stir the water hard and strew ${named(gums, say)} in, a pinch at a time, each wetted before the next; go on until no lumps are left.`,
    why: say`The recipe has no glycerin or diol enough to wet it in; only shear keeps it from lumping`,
    adds: [...gums, ...(main.length === 0 ? plan.at('base') : [])],
    uses: main,
    time: usualTime([10, 30, 'minutes'], say`until it has swollen`, say),
    because: told(ways),
    sources: ways,
    cautions: hazardsOf(plan.context, gums),
  })
}
