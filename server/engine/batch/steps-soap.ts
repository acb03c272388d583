import { hazardsOf, HOT_OIL } from './cautions.ts'
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
  const most = mostHeatAsked(plan.at('oil').map(({ line }) => line))
  const usual = usualTemp(MEET_C, 'lye and fats both lukewarm and no more than ten degrees apart')
  if (!most || most.asked_c <= MEET_C.max) return usual
  const heat = heatFor(
    { ...plan.context, hottest_c: null },
    plan.at('oil').map(({ line }) => line),
  )
  return heat ? { min: heat.min_c, max: heat.max_c, because: heat.because } : usual
}

export const makeLye: Maker = (plan) => {
  const lye = plan.at('lye')
  return draft({
    id: 'lye',
    title: 'Lye into water',
    text: sentence(
      `Cold ${named(plan.at('base'))} stands in the jug in a basin of cold water. Strew ${named(lye)} in by spoonfuls, stirring until clear after each.`,
      'Lye into water, never water onto lye. Turn your face away, do not breathe the fumes, and let it cool where nobody can knock it over.',
    ),
    why: 'Lye dissolves with great heat; water poured onto it boils and spits',
    adds: [...lye, ...plan.at('base')],
    temp: usualTemp({ max: 95 }, 'the solution heats itself that far; then let it cool'),
    time: usualTime(30, 90, 'minutes', 'until it has cooled'),
    cautions: [
      'Lye burns eyes and skin. Goggles and gloves stay on until everything is washed. On skin: rinse with much water at once. In the eye: rinse 15 minutes and call an ambulance.',
      'Vinegar is for the worktop, never for skin.',
      ...hazardsOf(plan.context, lye),
    ],
    aside: true,
  })
}

export const meltSoapFats: Maker = (plan) => {
  const fats = plan.at('oil')
  const most = mostHeatAsked(fats.map(({ line }) => line))
  const heat = heatFor(
    { ...plan.context, hottest_c: null },
    fats.map(({ line }) => line),
  )
  return draft({
    id: 'melt',
    title: most ? 'Melt the fats' : 'Warm the fats',
    text: `Warm ${named(fats)} together until clear, and let them cool to the temperature at which they meet the lye.`,
    why: 'Solid flakes in the fat do not turn into soap',
    adds: fats,
    after: ['weigh'],
    temp: heat
      ? { min: heat.min_c, max: heat.max_c, because: heat.because }
      : usualTemp(MEET_C, 'liquid fats are only warmed'),
    cautions: [HOT_OIL, ...hazardsOf(plan.context, fats)],
  })
}

export const combineSoap: Maker = (plan, before) =>
  draft({
    id: 'combine',
    title: 'Pour the lye into the fats',
    text: 'Pour the lye solution into the fats in a thin stream, over the head of the resting blender, stirring by hand.',
    why: 'Lye in fat spreads; fat in lye spits and leaves pockets of bare lye',
    uses: [...held(before), 'lye'],
    temp: meetTemp(plan),
    cautions: ['Splashes burn: goggles and gloves on, blender off until it is under the surface.'],
  })

export const trace: Maker = (plan, before) =>
  draft({
    id: 'trace',
    title: isPotash(plan) ? 'Blend to a thick paste' : 'Blend until it draws a trace',
    text: sentence(
      'Blend in short bursts with stirring between until what drips from the spoon stays on the surface.',
      isPotash(plan)
        ? 'Potash soap stays a paste: keep it hot in a water bath and stir now and then until it is glassy all through.'
        : '',
    ),
    why: 'Before that it still parts into fat and lye',
    uses: held(before),
    time: isPotash(plan)
      ? usualTime(3, 6, 'hours', 'until glassy, without white grains')
      : usualTime(2, 20, 'minutes', 'by the fats: olive oil is slow'),
    cautions: ['Raw soap burns like lye: gloves and goggles on.'],
  })

export const soapLate: Maker = (plan, before) => {
  const items = plan.at('cool', 'powder')
  if (items.length === 0) return null
  return draft({
    id: 'cool-down',
    title: 'Stir in scent, colour and extras',
    text: `Stir in ${named(items)} by hand, quickly.`,
    why: 'Scents can make it thicken within seconds',
    adds: items,
    uses: held(before),
    cautions: hazardsOf(plan.context, items),
  })
}

export const mouldSoap: Maker = (plan, before) =>
  draft({
    id: 'mould',
    title: isPotash(plan) ? 'Into the jar' : 'Into the mould',
    text: isPotash(plan)
      ? 'Fill the paste into a jar of polypropylene or glass and let it rest.'
      : 'Pour into the mould, knock the air out, cover it and keep it warm; then turn out and cut, with gloves on.',
    why: 'The reaction goes on and warms itself; it is still lye and fat inside',
    uses: held(before),
    time: isPotash(plan)
      ? usualTime(1, 2, 'weeks', 'until it no longer bites')
      : usualTime(24, 48, 'hours', 'until firm enough to cut'),
    cautions: ['Fresh soap burns: gloves. Keep it from children and animals.'],
  })

export const cureSoap: Maker = (plan, before) =>
  isPotash(plan)
    ? null
    : draft({
        id: 'cure',
        title: 'Let it cure',
        text: 'Set the bars apart on a rack in an airy, dry, shaded place and turn them now and then. Weigh one bar each week: it is ready when it no longer loses weight.',
        why: 'Water leaves and the last lye reacts; a young bar is harsh and melts away',
        uses: held(before),
        time: usualTime(4, 6, 'weeks', 'bars rich in olive oil longer'),
      })

/** The pH of soap tells little: what counts is that no lye is left. */
export const testSoap: Maker = (_plan, before) =>
  draft({
    id: 'ph',
    title: 'Test for lye that is left',
    text: 'Dissolve one gram in 99 g of distilled water and measure: soap itself reads about 9 to 10.5. Well above that, white crusts or weeping drops that bite mean free lye: do not use it. Never test with the tongue.',
    why: 'A wrong weight shows now, before skin finds it',
    uses: held(before),
    cautions: ['Bars with free lye burn: grate and re-cook them or throw them away, wrapped.'],
  })
