import { hazardsOf } from './cautions.ts'
import { draft, sentence, usualTime } from './draft.ts'
import type { Maker, Plan } from './plan.ts'

const isDryWork = ({ process }: Plan): boolean => process === 'anhydrous' || process === 'powder' || process === 'bar'

const TOOLS: Record<Plan['process'], string> = {
  emulsion: 'two heat-proof beakers, thermometer, stick blender or whisk, spatula, pH meter',
  'one-phase': 'beaker, slow stirrer, spatula, pH meter',
  anhydrous: 'heat-proof beaker, water bath, thermometer, spatula',
  powder: 'bowl, sieve, mortar, dust mask',
  bar: 'heat-proof bowl, water bath, thermometer, mould or press, dust mask',
  soap: 'two heat-proof jugs of steel or polypropylene, stick blender, thermometer, mould, goggles, gloves',
}

/** Tools, hands and containers. */
export const clean: Maker = (plan) => {
  const { process } = plan
  const isSoap = process === 'soap'
  return draft({
    id: 'clean',
    title: isSoap ? 'Clear the place and put on goggles and gloves' : 'Clean and disinfect',
    text: sentence(
      isSoap
        ? 'Goggles, gloves, long sleeves and closed shoes on; window open; no children or animals in the room.'
        : 'Wash hands and tie hair back. Wash tools and containers, dry them, wipe or spray them with 70 % alcohol and let it evaporate.',
      isDryWork(plan) ? 'Everything has to be dry: water in it lets germs grow.' : '',
      `Lay out: scale, ${TOOLS[process]}.`,
      isSoap ? 'No aluminium, zinc or thin glass: lye eats metal and heat cracks glass.' : '',
    ),
    why: isSoap
      ? 'Lye burns eyes and skin within seconds'
      : 'Germs that come in with tools and jars are there before any preservative works',
    aside: true,
    ...(isSoap ? {} : { time: usualTime(1, 5, 'minutes', 'until the alcohol has evaporated') }),
    cautions: isSoap ? [] : ['Alcohol catches fire: no flame, no hot plate until it has evaporated.'],
  })
}

/** Every line into its own cup, ticked. */
export const weigh: Maker = ({ context, placed, process }) =>
  draft({
    id: 'weigh',
    title: 'Weigh',
    text: sentence(
      'Weigh each line of the table into its own clean cup, tick it and write down its lot number.',
      'Weigh the empty main beaker too and write its weight on it.',
      process === 'soap' ? 'Weigh lye and fats twice: a slip here burns.' : '',
    ),
    why: 'What was forgotten or weighed twice cannot be seen later',
    after: ['clean'],
    aside: true,
    cautions: hazardsOf(context, placed),
  })
