import type { FormulaContext } from '#engine/formula/context.ts'
import type { Say } from '#engine/words/say.ts'
import { readableName } from '#engine/units/readable-name.ts'
import { rangeOfProperty } from '#engine/graph/subject.ts'
import type { Addition } from './additive.ts'
import type { AdjustAsked } from './adjust-types.ts'
import type { Composition } from './composition.ts'
import { withoutHeat } from './composition.ts'

export interface TrapsAsked {
  context: FormulaContext
  composition: Composition
  addition: Addition | null
  asked: AdjustAsked
  temp_c: number
  /** ionic strength of what is known [mol/L of water] */
  ionic_strength: number
}

type Trap = (asked: TrapsAsked, say: Say) => string | null

const inFormula = ({ context, addition }: TrapsAsked, ids: readonly string[]): string[] => {
  const all = [...context.substances.map(({ subject }) => subject), ...(addition ? [addition.subject] : [])]
  return [...new Set(all.filter(({ id }) => ids.includes(id)).map(({ inci }) => readableName(inci)))].sort()
}

const ofClass = ({ context }: TrapsAsked, name: string): string[] =>
  context.lines.filter(({ subject }) => subject.classes.has(name)).map(({ subject }) => readableName(subject.inci))

const names = (acids: TrapsAsked, wanted: readonly string[]): string[] =>
  wanted.filter((name) =>
    [...acids.composition.acids, ...(acids.addition?.compound.acids ?? []).map(({ acid }) => acid)].some(
      (acid) => acid.name === name,
    ),
  )

const readsDiluted = ({ asked }: TrapsAsked): boolean => asked.diluted !== undefined || asked.meter === 'strips'

const GLYCOL_SHOWS_PERCENT = 20
const WARM_C = 30

const TRAPS: Trap[] = [
  (all, say) =>
    readsDiluted(all) && names(all, ['citric acid', 'phosphoric acid']).length > 0
      ? say`Citrate and phosphate read 0.2 to 0.25 higher in a 10 % dilution than in the product, because there is less salt: say whether a reading is neat or diluted.`
      : null,
  ({ asked }, say) =>
    (asked.measured?.length ?? 0) >= 2
      ? say`A straight line through two readings overshoots where they lie on a plateau and the target lies past it (10 mmol/kg of alkali aimed at pH 5.5 that way lands at 2.8). Never add more than the last step before you measure again.`
      : null,
  (all, say) =>
    inFormula(all, ['gluconolactone']).length > 0
      ? say`Gluconolactone opens to gluconic acid for hours: the pH goes on falling, so measure the next day before you correct.`
      : null,
  (all, say) =>
    inFormula(all, ['urea']).length > 0
      ? say`Urea gives off ammonia for months and the pH climbs: buffer the product and measure it again after weeks.`
      : null,
  (all, say) =>
    names(all, ['carbonic acid (CO2 in water)']).length > 0
      ? say`Carbonate and bicarbonate give off gas below about pH 7, for hours: the pH climbs again after the acid, and a dose for a closed vessel is too high. Leave room for foam, stir, wait, measure again.`
      : null,
  (all, say) => {
    const oxides = ofClass(all, 'amine-oxide')
    return oxides.length > 0 && all.asked.target_ph < 7
      ? say`${oxides.join(', ')}: amine oxides take up acid around pH 5 to 6.5 and turn cationic there; with anionic surfactants they then pair off.`
      : null
  },
  ({ composition }, say) => {
    const alkaline = composition.unknown.filter(({ wash }) => wash).map(({ says }) => says)
    return alkaline.length > 0
      ? say`${alkaline.join('. ')}. Another bottle may take a third or three times as much acid.`
      : null
  },
  (all, say) => {
    const soaps = ofClass(all, 'soap')
    return soaps.length > 0 && all.asked.target_ph < 8.5
      ? say`${soaps.join(', ')}: soap cannot be brought to skin pH; below about 8.5 it turns into fatty acid and the product separates.`
      : null
  },
  ({ asked }, say) =>
    asked.meter === 'strips'
      ? say`Strips read to 0.3 to 0.5 at best; in coloured or cloudy products, and with much surfactant, they mislead. Read them in a 10 % dilution in distilled water, or use a meter.`
      : null,
  ({ asked }, say) =>
    asked.diluted !== undefined
      ? say`Air-saturated water draws a product that hardly buffers to pH 5.6 to 6: dilute with fresh distilled water and read at once.`
      : null,
  ({ ionic_strength }, say) =>
    ionic_strength > 0.5
      ? say`The known salts make the water ${say.short(ionic_strength)} mol/L strong: above 0.5 the calculation is a guide only.`
      : null,
  ({ context }, say) => {
    const glycol_percent = context.lines
      .filter(({ subject }) => subject.allRoles.has('solvent'))
      .reduce((sum, { share_percent }) => sum + share_percent, 0)
    return glycol_percent >= GLYCOL_SHOWS_PERCENT
      ? say`${say.short(glycol_percent)} % of glycol or alcohol raises the constants of acids by some tenths (from memory): trust the meter more than the calculation.`
      : null
  },
  ({ temp_c }, say) =>
    temp_c > WARM_C
      ? say`Measure at room temperature: products neutralised with amines read up to 0.03 lower for each degree, and electrodes have to be set to the temperature.`
      : null,
  ({ composition, temp_c }, say) => {
    const cold = withoutHeat(composition.acids, temp_c)
    return cold.length > 0
      ? say`Not known how the constant of ${cold.map(say.text).join(', ')} moves with temperature: that of room temperature is used.`
      : null
  },
  ({ addition, asked }, say) => {
    const sold = addition ? rangeOfProperty(addition.subject, 'active_percent') : undefined
    return addition && sold?.max !== undefined && asked.strength_percent === undefined && !addition.proposed
      ? say`${readableName(addition.inci)} is usually sold as ${say.short(sold.min ?? sold.max)} to ${say.short(sold.max)} %: these grams are of the pure substance; state strength_percent for your bottle.`
      : null
  },
]

/** What misleads in this very product, with this very method. */
export const trapsOf = (asked: TrapsAsked): string[] => [
  ...TRAPS.flatMap((trap) => trap(asked, asked.context.world.say) ?? []),
  ...[...new Set(asked.composition.acids.map(({ caution }) => caution))]
    .filter((caution) => caution !== '')
    .map((caution) => `${asked.context.world.say.text(caution)}.`),
]
