import type { Temperature } from '#engine/model/batch.ts'
import { hotOil, hazardsOf } from './cautions.ts'
import { limitClaim, shyest } from './cool-temp.ts'
import { draft, held, named, sentence, standing, tempOf, usualTemp } from './draft.ts'
import { askFact, mostHeatAsked } from './heat.ts'
import type { Placed } from './item.ts'
import type { Maker, Plan } from './plan.ts'
import { practice } from './reasons.ts'
import { hasClass, isFirst, isPowder } from './roles-here.ts'
import { told, waysOf } from './ways.ts'

const hardestFirst = (items: readonly Placed[]): Placed[] => {
  const ask = ({ line }: Placed): number => mostHeatAsked([line])?.asked_c ?? 0
  return [...items].sort((a, b) => ask(b) - ask(a) || b.exact_g - a.exact_g || (a.key < b.key ? -1 : 1))
}

/** Waxes and oils melted together, the hardest first; or only mixed, where all are liquid. */
export const meltFats: Maker = (plan, before) => {
  const { say } = plan
  const fats = hardestFirst(plan.at('oil'))
  if (fats.length === 0) return null
  const { heat } = plan
  const paste = standing(before, 'wet-pigment')
  return draft({
    id: 'melt',
    title: heat ? say`Melt` : say`Mix the oils`,
    text: sentence(
      heat
        ? say`Melt in a water bath, the hardest first: ${named(fats, say)}. Stir until clear.`
        : say`Stir ${named(fats, say)} together; no heat is needed.`,
      paste.length > 0 ? say`Stir the powder paste into the melt.` : '',
    ),
    why: heat
      ? say`What melts highest needs the longest; softer fats go on to be spared`
      : say`All are liquid at room temperature`,
    adds: fats,
    uses: paste,
    after: ['weigh'],
    temp: heat ? tempOf(heat) : undefined,
    because: told(waysOf(fats)),
    sources: waysOf(fats),
    cautions: [...(heat ? [hotOil(say)] : []), ...hazardsOf(plan.context, fats)],
  })
}

/** Soft fats in the heat that is left. */
export const softenButters: Maker = (plan, before) => {
  const { say } = plan
  const butters = plan.at('butter')
  if (butters.length === 0) return null
  const most = mostHeatAsked(butters.map(({ line }) => line))
  const main = held(before)
  return draft({
    id: 'butters',
    title: say`Off the heat: add the soft fats`,
    text: say`Take it off the heat and stir ${named(butters, say)} in until clear; warm again only if grains stay.`,
    why: say`Soft fats that were overheated and cooled slowly turn grainy`,
    adds: butters,
    uses: main,
    temp: most
      ? {
          min: most.asked_c,
          because: [askFact(most, say)],
        }
      : undefined,
    because: told(waysOf(butters)),
    sources: waysOf(butters),
  })
}

/** Usual top for powders and scents in a melt: when it begins to thicken [C]. */
const THICKENING_C = 60

/** Lowest limit of these lines, with its claim; what is usual where none states one, or where scent or powder is among them. */
function lateTemp(plan: Plan, items: readonly Placed[]): Temperature {
  const { say } = plan
  const least = shyest(items)
  const isUsual = items.some(({ line }) => isFirst(plan.context, line, 'scent') || isPowder(line))
  return !least || (isUsual && least.limit_c > THICKENING_C)
    ? usualTemp({ max: THICKENING_C }, say`when the melt begins to thicken; scents leave above, powders sink`, say)
    : { max: least.limit_c, because: [limitClaim(least, say)] }
}

export const fatPowder: Maker = (plan, before) => {
  const { say } = plan
  const powders = plan.at('powder')
  if (powders.length === 0) return null
  return draft({
    id: 'add-powder',
    title: say`Stir the powder in`,
    text: say`Sieve ${named(powders, say)} in by spoonfuls and rub out the lumps. Keep stirring until it thickens, or it sinks.`,
    why: say`A thickening melt holds the powder up, a thin one lets it settle`,
    adds: powders,
    uses: held(before),
    temp: plan.heat ? lateTemp(plan, powders) : undefined,
    cautions: hazardsOf(plan.context, powders),
  })
}

export const fatLate: Maker = (plan, before) => {
  const { say } = plan
  const items = plan.at('cool')
  if (items.length === 0) return null
  return draft({
    id: 'cool-down',
    title: say`Add what bears no heat`,
    text: plan.heat
      ? say`Stir and wait until it clouds at the wall but still pours, then stir in ${named(items, say)}.`
      : items.length > 1
        ? say`Stir in ${named(items, say)}, one after the other.`
        : say`Stir in ${named(items, say)}.`,
    why: plan.heat
      ? say`The cooler, the less scent leaves and the less breaks down; but it must not have set`
      : say`Small lines are spread best in the whole`,
    adds: items,
    uses: held(before),
    temp: plan.heat ? lateTemp(plan, [...items, ...plan.at('powder')]) : undefined,
    because: told(waysOf(items)),
    sources: waysOf(items),
    cautions: hazardsOf(plan.context, items),
  })
}

/** Graininess comes from slow cooling of fats with several crystal forms. */
export const setFats: Maker = (plan, before) => {
  const { say } = plan
  if (!plan.heat) return null
  const grainy = plan.placed.filter(
    ({ line }) => isFirst(plan.context, line, 'butter') || hasClass(line, 'firm-butter', 'soft-butter'),
  )
  return draft({
    id: 'set',
    title: say`Pour and let it set`,
    text: sentence(
      say`Pour into dry containers while it still runs, and do not move them until it is firm.`,
      grainy.length > 0
        ? say`${named(grainy, say)} can turn grainy: set it in the refrigerator, then let it come back to room temperature before the lid goes on.`
        : say`Put the lid on when it is cold: warm it sweats under it.`,
    ),
    why: say`Quick, still cooling gives small crystals and a smooth top`,
    uses: held(before),
    because: [practice(say`butters with several crystal forms stay smooth when they are cooled quickly`, say)],
    cautions: [say`Molten wax burns: hold containers with a cloth, keep children away.`],
  })
}

export const isSettingFat = (plan: Plan): boolean => plan.process === 'anhydrous' && plan.heat !== null
