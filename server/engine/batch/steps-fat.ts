import { because, nameOf } from '#engine/checks/say.ts'
import type { Temperature } from '#engine/model/batch.ts'
import { HOT_OIL, hazardsOf } from './cautions.ts'
import { limitClaim, shyest } from './cool-temp.ts'
import { draft, held, inTurn, listed, named, sentence, standing, tempOf, usualTemp } from './draft.ts'
import { mostHeatAsked } from './heat.ts'
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
  const fats = hardestFirst(plan.at('oil'))
  if (fats.length === 0) return null
  const { heat } = plan
  const paste = standing(before, 'wet-pigment')
  return draft({
    id: 'melt',
    title: heat ? 'Melt' : 'Mix the oils',
    text: sentence(
      heat
        ? `Melt in a water bath, the hardest first: ${named(fats)}. Stir until clear.`
        : `Stir ${named(fats)} together; no heat is needed.`,
      paste.length > 0 ? 'Stir the powder paste into the melt.' : '',
    ),
    why: heat
      ? 'What melts highest needs the longest; softer fats go on to be spared'
      : 'All are liquid at room temperature',
    adds: fats,
    uses: paste,
    after: ['weigh'],
    temp: heat ? tempOf(heat) : undefined,
    because: told(waysOf(fats)),
    sources: waysOf(fats),
    cautions: [...(heat ? [HOT_OIL] : []), ...hazardsOf(plan.context, fats)],
  })
}

/** Soft fats in the heat that is left. */
export const softenButters: Maker = (plan, before) => {
  const butters = plan.at('butter')
  if (butters.length === 0) return null
  const most = mostHeatAsked(butters.map(({ line }) => line))
  const main = held(before)
  return draft({
    id: 'butters',
    title: 'Off the heat: add the soft fats',
    text: `Take it off the heat and stir ${named(butters)} in until clear; warm again only if grains stay.`,
    why: 'Soft fats that were overheated and cooled slowly turn grainy',
    adds: butters,
    uses: main,
    temp: most
      ? {
          min: most.asked_c,
          because: [because(`${nameOf(most.line.subject)} ${most.what} ${most.asked_c} °C`, most.claim)],
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
  const least = shyest(items)
  const isUsual = items.some(({ line }) => isFirst(plan.context, line, 'scent') || isPowder(line))
  return !least || (isUsual && least.limit_c > THICKENING_C)
    ? usualTemp({ max: THICKENING_C }, 'when the melt begins to thicken; scents leave above, powders sink')
    : { max: least.limit_c, because: [limitClaim(least)] }
}

export const fatPowder: Maker = (plan, before) => {
  const powders = plan.at('powder')
  if (powders.length === 0) return null
  return draft({
    id: 'add-powder',
    title: 'Stir the powder in',
    text: `Sieve ${named(powders)} in by spoonfuls and rub out the lumps. Keep stirring until it thickens, or it sinks.`,
    why: 'A thickening melt holds the powder up, a thin one lets it settle',
    adds: powders,
    uses: held(before),
    temp: plan.heat ? lateTemp(plan, powders) : undefined,
    cautions: hazardsOf(plan.context, powders),
  })
}

export const fatLate: Maker = (plan, before) => {
  const items = plan.at('cool')
  if (items.length === 0) return null
  return draft({
    id: 'cool-down',
    title: 'Add what bears no heat',
    text: plan.heat
      ? `Stir and wait until it clouds at the wall but still pours, then stir in ${named(items)}.`
      : `Stir in ${named(items)}${inTurn(items)}.`,
    why: plan.heat
      ? 'The cooler, the less scent leaves and the less breaks down; but it must not have set'
      : 'Small lines are spread best in the whole',
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
  if (!plan.heat) return null
  const grainy = plan.placed.filter(
    ({ line }) => isFirst(plan.context, line, 'butter') || hasClass(line, 'firm-butter', 'soft-butter'),
  )
  return draft({
    id: 'set',
    title: 'Pour and let it set',
    text: sentence(
      'Pour into dry containers while it still runs, and do not move them until it is firm.',
      grainy.length > 0
        ? `${listed([...new Set(grainy.map(({ line }) => nameOf(line.subject)))])} can turn grainy: set it in the refrigerator, then let it come back to room temperature before the lid goes on.`
        : 'Put the lid on when it is cold: warm it sweats under it.',
    ),
    why: 'Quick, still cooling gives small crystals and a smooth top',
    uses: held(before),
    because: [practice('butters with several crystal forms stay smooth when they are cooled quickly')],
    cautions: ['Molten wax burns: hold containers with a cloth, keep children away.'],
  })
}

export const isSettingFat = (plan: Plan): boolean => plan.process === 'anhydrous' && plan.heat !== null
