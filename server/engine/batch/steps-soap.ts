import { hazardsOf, hotOil } from './cautions.ts'
import { draft, held, named, sentence, usualTemp, usualTime } from './draft.ts'
import { heatFor, mostHeatAsked } from './heat.ts'
import type { Maker, Plan } from './plan.ts'

const isPotash = (plan: Plan): boolean =>
  plan
    .at('lye')
    .every(({ line }) => line.subject.classes.has('potassium-salt') || line.subject.id.startsWith('potassium'))

/** Usual meeting temperature of lye and fats; higher where a fat sets above it [C]. */
const MEET_C = { min: 30, max: 45 }

const meetTemp = (plan: Plan) => {
  const { say } = plan
  const most = mostHeatAsked(plan.at('oil').map(({ line }) => line))
  const usual = usualTemp(MEET_C, say`lye and fats both lukewarm and no more than ten degrees apart`, say)
  if (!most || most.asked_c <= MEET_C.max) return usual
  const heat = heatFor(
    { ...plan.context, hottest_c: null },
    plan.at('oil').map(({ line }) => line),
  )
  return heat ? { min: heat.min_c, max: heat.max_c, because: heat.because } : usual
}

export const makeLye: Maker = (plan) => {
  const { say } = plan
  const lye = plan.at('lye')
  return draft({
    id: 'lye',
    title: say`Lye into water`,
    text: sentence(
      say`Cold ${named(plan.at('base'), say)} stands in the jug in a basin of cold water. Strew ${named(lye, say)} in by spoonfuls, stirring until clear after each.`,
      say`Lye into water, never water onto lye. Turn your face away, do not breathe the fumes, and let it cool where nobody can knock it over.`,
    ),
    why: say`Lye dissolves with great heat; water poured onto it boils and spits`,
    adds: [...lye, ...plan.at('base')],
    temp: usualTemp({ max: 95 }, say`the solution heats itself that far; then let it cool`, say),
    time: usualTime([30, 90, 'minutes'], say`until it has cooled`, say),
    cautions: [
      say`Lye burns eyes and skin. Goggles and gloves stay on until everything is washed. On skin: rinse with much water at once. In the eye: rinse 15 minutes and call an ambulance.`,
      say`Vinegar is for the worktop, never for skin.`,
      ...hazardsOf(plan.context, lye),
    ],
    aside: true,
  })
}

export const meltSoapFats: Maker = (plan) => {
  const { say } = plan
  const fats = plan.at('oil')
  const most = mostHeatAsked(fats.map(({ line }) => line))
  const heat = heatFor(
    { ...plan.context, hottest_c: null },
    fats.map(({ line }) => line),
  )
  return draft({
    id: 'melt',
    title: most ? say`Melt the fats` : say`Warm the fats`,
    text: say`Warm ${named(fats, say)} together until clear, and let them cool to the temperature at which they meet the lye.`,
    why: say`Solid flakes in the fat do not turn into soap`,
    adds: fats,
    after: ['weigh'],
    temp: heat
      ? { min: heat.min_c, max: heat.max_c, because: heat.because }
      : usualTemp(MEET_C, say`liquid fats are only warmed`, say),
    cautions: [hotOil(say), ...hazardsOf(plan.context, fats)],
  })
}

export const combineSoap: Maker = (plan, before) => {
  const { say } = plan
  return draft({
    id: 'combine',
    title: say`Pour the lye into the fats`,
    text: say`Pour the lye solution into the fats in a thin stream, over the head of the resting blender, stirring by hand.`,
    why: say`Lye in fat spreads; fat in lye spits and leaves pockets of bare lye`,
    uses: [...held(before), 'lye'],
    temp: meetTemp(plan),
    cautions: [say`Splashes burn: goggles and gloves on, blender off until it is under the surface.`],
  })
}

export const trace: Maker = (plan, before) => {
  const { say } = plan
  return draft({
    id: 'trace',
    title: isPotash(plan) ? say`Blend to a thick paste` : say`Blend until it draws a trace`,
    text: sentence(
      say`Blend in short bursts with stirring between until what drips from the spoon stays on the surface.`,
      isPotash(plan)
        ? say`Potash soap stays a paste: keep it hot in a water bath and stir now and then until it is glassy all through.`
        : '',
    ),
    why: say`Before that it still parts into fat and lye`,
    uses: held(before),
    time: isPotash(plan)
      ? usualTime([3, 6, 'hours'], say`until glassy, without white grains`, say)
      : usualTime([2, 20, 'minutes'], say`by the fats: olive oil is slow`, say),
    cautions: [say`Raw soap burns like lye: gloves and goggles on.`],
  })
}

export const soapLate: Maker = (plan, before) => {
  const { say } = plan
  const items = plan.at('cool', 'powder')
  if (items.length === 0) return null
  return draft({
    id: 'cool-down',
    title: say`Stir in scent, colour and extras`,
    text: say`Stir in ${named(items, say)} by hand, quickly.`,
    why: say`Scents can make it thicken within seconds`,
    adds: items,
    uses: held(before),
    cautions: hazardsOf(plan.context, items),
  })
}

export const mouldSoap: Maker = (plan, before) => {
  const { say } = plan
  return draft({
    id: 'mould',
    title: isPotash(plan) ? say`Into the jar` : say`Into the mould`,
    text: isPotash(plan)
      ? say`Fill the paste into a jar of polypropylene or glass and let it rest.`
      : say`Pour into the mould, knock the air out, cover it and keep it warm; then turn out and cut, with gloves on.`,
    why: say`The reaction goes on and warms itself; it is still lye and fat inside`,
    uses: held(before),
    time: isPotash(plan)
      ? usualTime([1, 2, 'weeks'], say`until it no longer bites`, say)
      : usualTime([24, 48, 'hours'], say`until firm enough to cut`, say),
    cautions: [say`Fresh soap burns: gloves. Keep it from children and animals.`],
  })
}

export const cureSoap: Maker = (plan, before) => {
  const { say } = plan
  return isPotash(plan)
    ? null
    : draft({
        id: 'cure',
        title: say`Let it cure`,
        text: say`Set the bars apart on a rack in an airy, dry, shaded place and turn them now and then. Weigh one bar each week: it is ready when it no longer loses weight.`,
        why: say`Water leaves and the last lye reacts; a young bar is harsh and melts away`,
        uses: held(before),
        time: usualTime([4, 6, 'weeks'], say`bars rich in olive oil longer`, say),
      })
}

/** The pH of soap tells little: what counts is that no lye is left. */
export const testSoap: Maker = ({ say }, before) =>
  draft({
    id: 'ph',
    title: say`Test for lye that is left`,
    text: say`Dissolve one gram in 99 g of distilled water and measure: soap itself reads about 9 to 10.5. Well above that, white crusts or weeping drops that bite mean free lye: do not use it. Never test with the tongue.`,
    why: say`A wrong weight shows now, before skin finds it`,
    uses: held(before),
    cautions: [say`Bars with free lye burn: grate and re-cook them or throw them away, wrapped.`],
  })
