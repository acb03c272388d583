import { heatAsked } from '#engine/checks/heat-too-low.ts'
import type { FormulaLine } from '#engine/formula/context.ts'
import { numberOf } from '#engine/graph/subject.ts'
import { matches } from '#engine/knowledge/selector.ts'
import type { Item } from './item.ts'
import { HAND_WARM_C } from './heat.ts'
import type { Setting } from './setting.ts'
import { dissolvesIn, hasClass, inWater, isFirst, isLiquid, isPowder, onlyInOil, playsHere } from './roles-here.ts'

/** Liquids that wet a gum without swelling it, and powders that hardly dissolve in water [times their weight]. */
const WETS_TIMES = 3
const OIL_WETS_TIMES = 5
const PIGMENT_TIMES = 1

const grams = (items: readonly Item[]): number => items.reduce((sum, { exact_g }) => sum + exact_g, 0)
const largest = (items: readonly Item[]): Item | null =>
  [...items].sort((a, b) => b.exact_g - a.exact_g || (a.key < b.key ? -1 : 1))[0] ?? null
const smallest = (items: readonly Item[]): Item | null =>
  [...items].sort((a, b) => a.exact_g - b.exact_g || (a.key < b.key ? -1 : 1))[0] ?? null

/** Powders that thicken water, lump in it, and are neither acrylic nor clay. */
export const isGum = ({ context }: Setting, line: FormulaLine): boolean =>
  isPowder(line) &&
  inWater(line) &&
  !hasClass(line, 'acrylic-polymer', 'swelling-clay', 'electrolyte') &&
  (isFirst(context, line, 'thickener', 'conditioning-polymer') || hasClass(line, 'polysaccharide', 'cellulose-ether'))

/** Gums that dissolve only with heat (gellan, agar, carrageenan). */
export const isHotGum = (setting: Setting, line: FormulaLine): boolean =>
  isGum(setting, line) && (heatAsked(line)?.asked_c ?? 0) > HAND_WARM_C

/** Cellulose ethers that are wetted in hot water and dissolve as it cools. */
export const isHotWetted = ({ subject }: Pick<FormulaLine, 'subject'>): boolean =>
  subject.needs.some(({ wetsIn }) => wetsIn === 'hot-water')

const DILUTE_ENOUGH = 0.5

/** Powders of which water at hand dissolves too little: another liquid has to take them up first. */
export function needsOtherLiquid({ context }: Setting, line: FormulaLine): boolean {
  if (!isPowder(line) || !['both', 'oil'].includes(dissolvesIn(line) ?? '')) return false
  if (line.subject.needs.some(({ need, any_of }) => need !== 'partner-emulsifier' && any_of.some(isSolventRole)))
    return true
  const limit_percent = numberOf(line.subject, 'water_solubility_percent')
  return limit_percent !== undefined && context.water_percent * limit_percent * DILUTE_ENOUGH < line.share_percent * 100
}

const isSolventRole = (selector: string): boolean => /^role:(glycol-solvent|alcohol-solvent|solvent)$/.test(selector)

const SOLVENTS = ['glycol-solvent', 'alcohol-solvent']
const FIRST_TIMES = 2

/** The liquid that takes a hardly soluble powder up: a diol or alcohol of the recipe, else an aromatic alcohol. */
export function solventFor(setting: Setting, powders: readonly Item[]): Item | null {
  if (powders.length === 0) return null
  const asked = powders.flatMap(({ line }) => line.subject.needs.flatMap(({ any_of }) => any_of.filter(isSolventRole)))
  const fits = ({ line, exact_g }: Item): boolean =>
    isLiquid(line) &&
    exact_g >= FIRST_TIMES * grams(powders) &&
    (playsHere(setting.context, line, ...SOLVENTS) ||
      hasClass(line, 'aromatic-alcohol', 'glycol') ||
      asked.some((selector) => matches(selector, line.subject)))
  return smallest(setting.items.filter(fits))
}

/** The polyol or diol in which gums are wetted; null where the recipe has too little of one. */
export function wetterFor(setting: Setting, gums: readonly Item[], taken: Item | null): Item | null {
  const fits = ({ key, line, exact_g }: Item): boolean =>
    key !== taken?.key &&
    isLiquid(line) &&
    hasClass(line, 'polyol', 'glycol') &&
    isFirst(setting.context, line, 'humectant', 'solvent') &&
    exact_g >= WETS_TIMES * grams(gums)
  return gums.length === 0 ? null : largest(setting.items.filter(fits))
}

/** Whether there is oil enough to stir a gum into, where nothing wets it. */
export const oilCanWet = (setting: Setting, gums: readonly Item[]): boolean =>
  grams(setting.items.filter(({ line }) => isLiquid(line) && onlyInOil(line))) >= OIL_WETS_TIMES * grams(gums)

/** The oil in which pigments are ground: polar, liquid, no more of it than needed. */
export function pigmentOilFor(setting: Setting, powders: readonly Item[]): Item | null {
  const fits = ({ line, exact_g }: Item): boolean =>
    isLiquid(line) &&
    onlyInOil(line) &&
    !isFirst(setting.context, line, 'scent', 'antioxidant', 'emulsifier') &&
    exact_g >= PIGMENT_TIMES * grams(powders)
  const oils = powders.length === 0 ? [] : setting.items.filter(fits)
  return smallest(oils.filter(({ line }) => hasClass(line, 'polar-oil', 'medium-polar-oil'))) ?? smallest(oils)
}

/** The liquid surfactant in which solids of a wash are melted. */
export const surfactantCarrier = (setting: Setting): Item | null =>
  largest(setting.items.filter(({ line }) => isLiquid(line) && isFirst(setting.context, line, 'surfactant')))
