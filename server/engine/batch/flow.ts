import { draft, held, standing } from './draft.ts'
import type { Draft, Maker, Plan } from './plan.ts'
import type { Process } from './process.ts'
import { barLate, barPowder, meltBar, pressBar, workIn } from './steps-bar.ts'
import { addCool, addPowder, coolDown, topUp } from './steps-cool.ts'
import { combine, emulsify, gumIntoOil, oilPhase, wetPigment } from './steps-emulsion.ts'
import { discard, fill, keepSample, mark, watch } from './steps-end.ts'
import { fatLate, fatPowder, meltFats, setFats, softenButters } from './steps-fat.ts'
import { dissolveHot, strewGum, strewPolymer, swellClay, wetGum, wetHot } from './steps-gum.ts'
import { addIons, joinAlcohol, scentIntoWash, surfactants, thicken, warmSurfactants } from './steps-late.ts'
import { adjustPh, neutralise } from './steps-ph.ts'
import { bind, grindColour, shapePowder, sieve } from './steps-powder.ts'
import { combineSoap, cureSoap, makeLye, meltSoapFats, mouldSoap, soapLate, testSoap, trace } from './steps-soap.ts'
import { clean, weigh } from './steps-start.ts'
import { alcoholCup, dissolveFirst, heatWater, premix, waterPhase } from './steps-water.ts'

const START: readonly Maker[] = [clean, weigh]
const END: readonly Maker[] = [fill, mark, keepSample, watch, discard]
const WATER: readonly Maker[] = [
  wetGum,
  dissolveFirst,
  premix,
  alcoholCup,
  swellClay,
  strewPolymer,
  wetHot,
  dissolveHot,
  strewGum,
  waterPhase,
]
const LATE: readonly Maker[] = [thicken]

/** Whatever still stands in a cup beside the batch comes in before it is filled. */
const joinRest: Maker = ({ say }, before) => {
  const cups = before.filter(({ isMain, adds }) => !isMain && adds.length > 0).map(({ id }) => id)
  const rest = standing(before, ...cups)
  if (rest.length === 0) return null
  return draft({
    id: 'join',
    title: say`Bring all together`,
    text: say`Stir what still stands in cups into the batch, in a thin stream.`,
    why: say`Poured in at once it falls out or lumps`,
    uses: [...held(before), ...rest],
  })
}

/** With oil outside the pH belongs to the water phase alone, so it is set before that goes in. */
const whenOilOutside =
  (make: Maker, isWanted: boolean): Maker =>
  (plan, before) =>
    (plan.context.form === 'water-in-oil') === isWanted ? make(plan, before) : null

/** Steps in the order in which a maker does them, by kind of work; each decides whether the batch asks for it. */
const FLOWS: Readonly<Record<Process, readonly Maker[]>> = {
  emulsion: [
    ...WATER,
    addIons,
    whenOilOutside(adjustPh, true),
    wetPigment,
    oilPhase,
    gumIntoOil,
    heatWater,
    combine,
    emulsify,
    coolDown,
    topUp,
    neutralise,
    warmSurfactants,
    surfactants,
    addPowder,
    addCool,
    whenOilOutside(adjustPh, false),
    ...LATE,
  ],
  'one-phase': [
    ...WATER,
    addIons,
    warmSurfactants,
    surfactants,
    joinAlcohol,
    coolDown,
    topUp,
    addCool,
    scentIntoWash,
    neutralise,
    addPowder,
    adjustPh,
    ...LATE,
  ],
  anhydrous: [wetPigment, meltFats, softenButters, fatPowder, fatLate, setFats],
  powder: [sieve, grindColour, bind, shapePowder],
  bar: [meltBar, workIn, barPowder, barLate, pressBar],
  soap: [makeLye, meltSoapFats, combineSoap, trace, soapLate, mouldSoap, cureSoap, testSoap],
}

/** All steps of a batch. A step only refers to steps before it, so their order is one that keeps every edge. */
export const stepsOf = (plan: Plan): Draft[] =>
  [...START, ...FLOWS[plan.process], joinRest, ...END].reduce<Draft[]>((before, make) => {
    const step = make(plan, before)
    return step ? [...before, step] : before
  }, [])
