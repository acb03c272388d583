import { numberOf } from '#engine/graph/subject.ts'
import type { Dilution } from '#engine/model/batch.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import type { Item, Placed } from './item.ts'
import { dissolvesIn, hasClass, inOil, inWater, isFirst, isLiquid, isPowder, playsHere } from './roles-here.ts'

/** Fewer steps than this and the scale's own error is a tenth of the line. */
export const LEAST_UNITS = 10

/** Strengths at which stocks are usually made [%]; what swells makes a jelly above the last. */
const STRENGTHS = [10, 1, 0.1]
const SWELLING_PERCENT = 1
/** The carrier has to give this up without becoming small itself [share of it]. */
const MOST_OF_CARRIER = 0.5

export const swells = (line: Item['line']): boolean =>
  hasClass(line, 'polysaccharide', 'cellulose-ether', 'acrylic-polymer', 'swelling-clay', 'cationic-polymer') ||
  line.subject.allRoles.has('thickener')

/** Lines that could carry it, the best first: they are in the recipe anyway. */
function carriers(context: FormulaContext, item: Item, items: readonly Item[]): Item[] {
  const solubility = dissolvesIn(item.line)
  const isOf = (fits: (other: Item) => boolean) =>
    items
      .filter((other) => other.key !== item.key && fits(other))
      .sort((a, b) => b.units - a.units || (a.key < b.key ? -1 : 1))
  const water = isOf(({ line }) => isFirst(context, line, 'water'))
  const diols = isOf(
    ({ line }) => isLiquid(line) && inWater(line) && playsHere(context, line, 'glycol-solvent', 'alcohol-solvent'),
  )
  const oils = isOf(({ line }) => isLiquid(line) && inOil(line) && isFirst(context, line, 'emollient'))
  const powders = isOf(({ line }) => isPowder(line) && isFirst(context, line, 'powder-base', 'filler-powder'))
  if (context.form === 'powder' && isPowder(item.line)) return powders
  if (solubility === 'water') return [...water, ...diols]
  if (solubility === 'oil' || solubility === 'silicone')
    return [...oils, ...diols.filter(({ line }) => hasClass(line, 'short-alcohol'))]
  return solubility === 'both' ? [...diols, ...oils, ...water] : oils
}

function strengthsFor(item: Item, carrier: Item): number[] {
  if (swells(item.line)) return STRENGTHS.filter((percent) => percent <= SWELLING_PERCENT)
  const limit_percent =
    dissolvesIn(carrier.line) === 'water' ? numberOf(item.line.subject, 'water_solubility_percent') : undefined
  // What dissolves in both but states no limit for water is not sent into water at a strength that may not hold.
  const most =
    limit_percent ??
    (dissolvesIn(item.line) === 'both' && dissolvesIn(carrier.line) === 'water' ? SWELLING_PERCENT : Infinity)
  return STRENGTHS.filter((percent) => percent <= most)
}

/** Smallest round weight of at least so many steps [g]: 1, 2 or 5 times a power of ten. */
function roundWeight(least_g: number): number {
  const power = 10 ** Math.floor(Math.log10(least_g))
  const factor = [1, 2, 5, 10].find((one) => one * power >= least_g * (1 - 1e-9)) ?? 10
  return Number((factor * power).toPrecision(6))
}

/** A stock of a line and its partner in the very ratio of the recipe, in place of both. */
function withPartner(item: Item, partner: Item, step_g: number): Dilution | null {
  const whole_g = (item.units + partner.units) * step_g
  if (item.units === 0 || item.units + partner.units < LEAST_UNITS) return null
  const pure_g = roundWeight(LEAST_UNITS * step_g)
  const clean = (mass_g: number): number => Number(mass_g.toPrecision(12))
  return {
    strength_percent: Number(((100 * item.exact_g) / (item.exact_g + partner.exact_g)).toPrecision(3)),
    carrier: partner.key,
    pure_g,
    carrier_g: clean(Math.round((pure_g * partner.exact_g) / item.exact_g / step_g) * step_g),
    take_g: clean(whole_g),
    less_carrier_g: clean(partner.units * step_g),
  }
}

/** The liquid that a small line goes in with anyway: what dissolves it, or another late line that mixes with it. */
function partnerOf(context: FormulaContext, item: Placed, placed: readonly Placed[]): Placed | null {
  const liquids = placed.filter((other) => other.key !== item.key && isLiquid(other.line) && other.units > item.units)
  if (item.place === 'first') return liquids.find(({ place }) => place === 'first-medium') ?? null
  if (item.place !== 'cool' || dissolvesIn(item.line) === 'water' || isPowder(item.line)) return null
  const fits = ({ place, line }: Placed): boolean =>
    place === 'cool' &&
    dissolvesIn(line) !== 'water' &&
    isFirst(context, line, 'preservative', 'solvent', 'antioxidant')
  return liquids.filter(fits).sort((a, b) => b.units - a.units || (a.key < b.key ? -1 : 1))[0] ?? null
}

/**
 * A stock that lets a scale weigh what it cannot show: the strongest one of which at least ten steps are needed.
 *
 *   stock needed [g] = line [g] · 100 / strength [%]
 *
 * @returns null where no line of the recipe can carry it
 */
export function dilutionFor(
  context: FormulaContext,
  item: Placed,
  items: readonly Placed[],
  step_g: number,
): Dilution | null {
  const partner = partnerOf(context, item, items)
  const together = partner ? withPartner(item, partner, step_g) : null
  if (together) return together
  const batch_g = items.reduce((sum, { exact_g }) => sum + exact_g, 0)
  const onScale = (mass_g: number): number => Number((Math.round(mass_g / step_g) * step_g).toPrecision(12))
  for (const carrier of carriers(context, item, items)) {
    for (const strength_percent of strengthsFor(item, carrier)) {
      const take_g = onScale((item.exact_g * 100) / strength_percent)
      const less_carrier_g = onScale(take_g - item.units * step_g)
      if (take_g < LEAST_UNITS * step_g * (1 - 1e-9) || less_carrier_g > MOST_OF_CARRIER * carrier.exact_g) continue
      const pure_g = roundWeight(LEAST_UNITS * step_g)
      if ((pure_g * 100) / strength_percent > batch_g) continue // a stock larger than the batch is no help
      const carrier_g = onScale((pure_g * (100 - strength_percent)) / strength_percent)
      return { strength_percent, carrier: carrier.key, pure_g, carrier_g, take_g, less_carrier_g }
    }
  }
  return null
}
