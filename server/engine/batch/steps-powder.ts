import { hazardsOf } from './cautions.ts'
import { draft, held, named, sentence, standing, usualTime } from './draft.ts'
import type { Say } from '#engine/words/say.ts'
import type { Maker, Plan } from './plan.ts'
import { firstRole, hasClass, isFirst, playsHere } from './roles-here.ts'

const dust = (say: Say): string =>
  say`Fine dust: mask on, no draught, nothing to blow; keep children out until it has settled.`

export const isFizz = ({ context }: Plan): boolean =>
  context.lines.some((line) => firstRole(context, line) === 'effervescent-acid') &&
  context.lines.some((line) => firstRole(context, line) === 'effervescent-base')

export const sieve: Maker = (plan) => {
  const { say } = plan
  const powders = plan.at('powder')
  if (powders.length === 0) return null
  return draft({
    id: 'sieve',
    title: say`Sieve and mix the powders`,
    text: sentence(
      say`Sieve ${named(powders, say)} into a dry bowl, the largest first, and mix: small lines first with as much again of the largest, then with the rest.`,
      isFizz(plan) ? say`Bowl, spoon and hands have to be dry: one drop starts the fizz.` : '',
    ),
    why: say`A small line straight into a large one stays in one corner of it`,
    adds: powders,
    time: usualTime([5, 15, 'minutes'], say`until a smear is even`, say),
    cautions: [dust(say), ...hazardsOf(plan.context, powders)],
  })
}

export const grindColour: Maker = (plan, before) => {
  const { say } = plan
  const colours = plan.at('pigment')
  if (colours.length === 0) return null
  return draft({
    id: 'grind-colour',
    title: say`Grind the colour in`,
    text: say`Rub ${named(colours, say)} in a mortar with a few spoonfuls of the mix until no streak shows, then mix that back in.`,
    why: say`Pigment clumps smear as streaks on skin`,
    adds: colours,
    uses: held(before),
    cautions: [dust(say), ...hazardsOf(plan.context, colours)],
  })
}

export const bind: Maker = (plan, before) => {
  const { say } = plan
  const liquids = plan.at('binder')
  const holders = liquids.filter(({ line }) => playsHere(plan.context, line, 'solubiliser'))
  if (liquids.length === 0) return null
  return draft({
    id: 'bind',
    title: say`Work the liquid in`,
    text: sentence(
      holders.length > 0 && holders.length < liquids.length
        ? say`First stir the liquids together: ${named(holders, say)} takes the oils up.`
        : '',
      say`Drip or spray ${named(liquids, say)} on, a little at a time, and rub it in until no wet clump is left.`,
      isFizz(plan)
        ? say`It holds together when a pressed handful breaks clean; if it swells or hisses, it was wetted too fast.`
        : '',
    ),
    why: say`Liquid that comes at once makes balls that stay wet inside`,
    adds: liquids,
    uses: [...held(before), ...standing(before, 'premix')],
    cautions: [
      ...(isFizz(plan) ? [say`Oil from the bath makes tubs slippery: say so on the label.`] : []),
      ...hazardsOf(plan.context, liquids),
    ],
  })
}

const isSalt = ({ context, at }: Plan): boolean =>
  at('powder').every(({ line }) => isFirst(context, line, 'mineral-salt'))

export const shapePowder: Maker = (plan, before) => {
  const { say } = plan
  if (isSalt(plan)) return null
  const fizz = isFizz(plan)
  const pressed =
    fizz ||
    plan.context.lines.some((line) => playsHere(plan.context, line, 'powder-binder') && hasClass(line, 'metal-soap'))
  return draft({
    id: 'shape',
    title: fizz ? say`Press and dry` : say`Sieve once more`,
    text: fizz
      ? say`Press firmly into dry moulds, turn out, and let dry in dry air before wrapping airtight.`
      : pressed
        ? say`Sieve the whole once more; press it into pans if a cake is wanted.`
        : say`Sieve the whole once more.`,
    why: fizz ? say`Damp eats the fizz from the inside` : say`The last sieving breaks what the mixing balled up`,
    uses: held(before),
    ...(fizz ? { time: usualTime([12, 48, 'hours'], say`until hard all through`, say) } : {}),
    cautions: fizz ? [say`Never close it up damp: the gas bursts jars.`] : [dust(say)],
  })
}
