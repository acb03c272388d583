import { hazardsOf } from './cautions.ts'
import { draft, sentence, usualTime } from './draft.ts'
import type { Say } from '#engine/words/say.ts'
import type { Maker, Plan } from './plan.ts'

const isDryWork = ({ process }: Plan): boolean => process === 'anhydrous' || process === 'powder' || process === 'bar'

const TOOLS: Record<Plan['process'], (say: Say) => string> = {
  emulsion: (say) => say`two heat-proof beakers, thermometer, stick blender or whisk, spatula, pH meter`,
  'one-phase': (say) => say`beaker, slow stirrer, spatula, pH meter`,
  anhydrous: (say) => say`heat-proof beaker, water bath, thermometer, spatula`,
  powder: (say) => say`bowl, sieve, mortar, dust mask`,
  bar: (say) => say`heat-proof bowl, water bath, thermometer, mould or press, dust mask`,
  soap: (say) => say`two heat-proof jugs of steel or polypropylene, stick blender, thermometer, mould, goggles, gloves`,
}

/** Tools, hands and containers. */
export const clean: Maker = (plan) => {
  const { say } = plan
  const { process } = plan
  const isSoap = process === 'soap'
  return draft({
    id: 'clean',
    title: isSoap ? say`Clear the place and put on goggles and gloves` : say`Clean and disinfect`,
    text: sentence(
      isSoap
        ? say`Goggles, gloves, long sleeves and closed shoes on; window open; no children or animals in the room.`
        : say`Wash hands and tie hair back. Wash tools and containers, dry them, wipe or spray them with 70 % alcohol and let it evaporate.`,
      isDryWork(plan) ? say`Everything has to be dry: water in it lets germs grow.` : '',
      say`Lay out: scale, ${TOOLS[process](say)}.`,
      isSoap ? say`No aluminium, zinc or thin glass: lye eats metal and heat cracks glass.` : '',
    ),
    why: isSoap
      ? say`Lye burns eyes and skin within seconds`
      : say`Germs that come in with tools and jars are there before any preservative works`,
    aside: true,
    ...(isSoap ? {} : { time: usualTime([1, 5, 'minutes'], say`until the alcohol has evaporated`, say) }),
    cautions: isSoap ? [] : [say`Alcohol catches fire: no flame, no hot plate until it has evaporated.`],
  })
}

/** Every line into its own cup, ticked. */
export const weigh: Maker = ({ say, context, placed, process }) =>
  draft({
    id: 'weigh',
    title: say`Weigh`,
    text: sentence(
      say`Weigh each line of the table into its own clean cup, tick it and write down its lot number.`,
      say`Weigh the empty main beaker too and write its weight on it.`,
      process === 'soap' ? say`Weigh lye and fats twice: a slip here burns.` : '',
    ),
    why: say`What was forgotten or weighed twice cannot be seen later`,
    after: ['clean'],
    aside: true,
    cautions: hazardsOf(context, placed),
  })
