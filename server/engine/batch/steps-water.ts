import { because } from '#engine/checks/say.ts'
import { usedClaim } from '#engine/graph/subject.ts'
import type { Say } from '#engine/words/say.ts'
import { hazardsOf } from './cautions.ts'
import { draft, held, named, sentence, standing, tempOf, usualTime } from './draft.ts'
import { hotWater } from './cautions.ts'
import type { Placed } from './item.ts'
import type { Maker, Plan } from './plan.ts'
import { told, waysOf } from './ways.ts'
import { solubilityReason } from './reasons.ts'
import { playsHere } from './roles-here.ts'

/** What hardly dissolves in water, taken up by a small liquid. */
export const dissolveFirst: Maker = (plan) => {
  const { say } = plan
  const powders = plan.at('first')
  if (powders.length === 0) return null
  const needs = powders.flatMap(({ line }) =>
    line.subject.needs.filter(({ need }) => need === 'process' || need === 'solubiliser'),
  )
  return draft({
    id: 'dissolve-first',
    title: say`Dissolve what water does not`,
    text: say`Stir ${named(powders, say)} into ${named(plan.at('first-medium'), say)} until clear; a lukewarm water bath helps.`,
    why: say`Straight into water it floats or falls out as crystals`,
    adds: [...powders, ...plan.at('first-medium')],
    because: [
      ...powders.flatMap(({ line }) => {
        const claim = usedClaim(line.subject, 'water_solubility_percent')
        return claim?.value === undefined
          ? [solubilityReason(line, say)]
          : [because(say`water takes up ${claim.value} %`, claim)]
      }),
      ...told(needs),
    ],
    sources: needs,
    cautions: hazardsOf(plan.context, powders),
    aside: true,
  })
}

/** Oils in traces and what dissolves them, before they meet water. */
export const premix: Maker = (plan) => {
  const { say } = plan
  const traces = plan.at('premix')
  if (traces.length === 0 || plan.context.form === 'wash') return null
  const holders = traces.filter(({ line }) => playsHere(plan.context, line, 'solubiliser', 'emulsifier', 'surfactant'))
  if (holders.length === 0) return null
  return draft({
    id: 'premix',
    title: say`Mix the oils with their solubiliser`,
    text: say`Stir ${named(
      traces.filter((one) => !holders.includes(one)),
      say,
    )} into ${named(holders, say)} until even, with no water in the cup.`,
    why: say`Once oil drops are in water, the solubiliser no longer gets around them`,
    adds: traces,
    because: holders.map(({ line }) => solubilityReason(line, say)),
    cautions: hazardsOf(plan.context, traces),
    aside: true,
  })
}

/** Alcohol and what dissolves in it. */
export const alcoholCup: Maker = (plan) => {
  const { say } = plan
  const lines = plan.at('alcohol')
  if (lines.length < 2) return null
  return draft({
    id: 'alcohol-cup',
    title: say`Dissolve in the alcohol`,
    text: say`Stir ${named(lines, say)} together until clear; keep it covered.`,
    why: say`Oils and scents dissolve in alcohol, not in water`,
    adds: lines,
    cautions: hazardsOf(plan.context, lines),
    aside: true,
  })
}

const saltsBeforeAcid = (plan: Plan): string => {
  const { say } = plan
  const salts = plan.at('water').filter(({ line }) => playsHere(plan.context, line, 'preservative'))
  return salts.length > 0 && plan.at('ph').length > 0
    ? say`Every grain of ${named(salts, say)} has to be gone before any acid comes in.`
    : ''
}

const cautionsOf = (plan: Plan) =>
  plan
    .at('water')
    .flatMap(({ line }) => line.subject.cautionsAt.dissolving ?? [])
    .map((text) => because(text))

const dissolvedText = (items: readonly Placed[], say: Say): string => {
  if (items.length === 0) return ''
  return items.length > 1
    ? say`Dissolve ${named(items, say)} in it, one after the other.`
    : say`Dissolve ${named(items, say)} in it.`
}

/** All that dissolves in water. */
export const waterPhase: Maker = (plan, before) => {
  const { say } = plan
  const main = held(before)
  const water = main.length === 0 ? plan.at('base') : []
  const unheldMedium = before.some(({ id }) => id === 'wet-gum') ? [] : plan.at('gum-medium')
  const dissolved = [
    ...plan.at('water'),
    ...unheldMedium,
    ...(before.some(({ id }) => id === 'dissolve-first') ? [] : plan.at('first-medium')),
  ]
  const slurry = standing(before, 'wet-gum')
  const cup = plan.firstJoins === 'water-phase' ? standing(before, 'dissolve-first') : []
  const cold = main.length > 0 && plan.keptBack?.units.has('water-phase') ? [plan.keptBack.key] : []
  if (water.length + dissolved.length + slurry.length + cup.length + cold.length === 0) return null
  const hasWater = water.length > 0 || main.length > 0
  return draft({
    id: 'water-phase',
    title: hasWater ? say`Make the water phase` : say`Mix what dissolves in water`,
    text: sentence(
      water.length > 0 ? say`Put ${named(water, say)} into the main beaker.` : '',
      cold.length > 0 ? say`Pour in the rest of the water, cold, stirring on.` : '',
      slurry.length > 0
        ? say`Stir the gum slurry in under strong stirring until no lump is left, and let it swell.`
        : '',
      cup.length > 0 ? say`Stir in the cup with what was dissolved first, slowly.` : '',
      dissolvedText(dissolved, say),
      saltsBeforeAcid(plan),
    ),
    why: say`What dissolves in water dissolves fastest before the batch is thick`,
    adds: [...water, ...dissolved],
    alsoAdds: cold,
    uses: [...main, ...slurry, ...cup],
    time:
      slurry.length > 0
        ? usualTime([10, 30, 'minutes'], say`until the gum has swollen and the liquid is even`, say)
        : undefined,
    because: [...told(waysOf(plan.at('water'))), ...cautionsOf(plan)],
    sources: waysOf(plan.at('water')),
    cautions: hazardsOf(plan.context, [...water, ...dissolved]),
  })
}

/** The water phase brought to the heat of the oil phase. */
export const heatWater: Maker = (plan, before) => {
  const { say } = plan
  if (!plan.heat) return null
  const isOilOutside = plan.context.form === 'water-in-oil'
  const water = held(before)
  if (water.length === 0) return null
  return draft({
    id: 'heat-water',
    title: say`Heat the water phase`,
    text: sentence(
      say`Heat the water phase, covered, to the same temperature as the oil phase.`,
      isOilOutside ? say`Weigh it and replace the water that evaporated, now: later it no longer goes in.` : '',
    ),
    why: say`Where the phases differ in temperature, fats and waxes set at once as grains`,
    uses: water,
    temp: tempOf(plan.heat),
    cautions: [hotWater(say)],
    weighBack: isOilOutside,
  })
}
