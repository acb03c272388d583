import { heatAsked } from '#engine/checks/heat-too-low.ts'
import { because, nameOf } from '#engine/checks/say.ts'
import { usedClaim } from '#engine/graph/subject.ts'
import { HAND_WARM_C } from './heat.ts'
import type { Item, Place, Placed, Reason } from './item.ts'
import { isGum, isHotGum, needsOtherLiquid, pigmentOilFor, solventFor, surfactantCarrier, wetterFor } from './media.ts'
import { hasAcrylicToNeutralise, makesSoapInside } from './process.ts'
import { heatReason, phaseReason, practice, roleReason, solubilityReason } from './reasons.ts'
import {
  bears_c,
  dissolvesIn,
  hasClass,
  inOil,
  isFirst,
  isPowder,
  isSolid,
  onlyInOil,
  playsHere,
} from './roles-here.ts'
import type { Setting } from './setting.ts'

type Where = { place: Place; reasons: Reason[] } | null
type Rule = (item: Item, setting: Setting) => Where

const at = (place: Place, ...reasons: Reason[]): Where => ({ place, reasons })

const neutralises: Rule = ({ line }, { context }) => {
  if (!playsHere(context, line, 'neutraliser') && !isFirst(context, line, 'base') && !hasClass(line, 'borate'))
    return null
  if (hasAcrylicToNeutralise(context) && !hasClass(line, 'borate'))
    return at(
      'neutraliser',
      roleReason(context, line),
      practice('a polymer is neutralised after it is dispersed, or it lumps'),
    )
  return makesSoapInside(context)
    ? at(
        'water',
        roleReason(context, line),
        practice('alkali and fatty acid become the emulsifier as the hot phases meet'),
      )
    : null
}

/** An amine that turns cationic with acid needs it before the phases meet. */
const acidPartner: Rule = ({ line }, { context }) => {
  if (!isFirst(context, line, 'acid')) return null
  const amine = context.lines.find(
    (other) =>
      playsHere(context, other, 'cationic-conditioner') && other.subject.needs.some(({ need }) => need === 'acid'),
  )
  const need = amine?.subject.needs.find((one) => one.need === 'acid')
  return amine && need ? at('water', because(`${nameOf(amine.subject)}: ${need.says}`)) : null
}

const adjustsPh: Rule = ({ line }, { context }) =>
  isFirst(context, line, 'ph-adjuster') && !isFirst(context, line, 'buffer')
    ? at('ph', roleReason(context, line), practice('moved in steps against the meter, when all else is in'))
    : null

const setsGum: Rule = ({ line }, { context }) =>
  isFirst(context, line, 'gelling-ion') &&
  context.lines.some((other) => other.subject.needs.some(({ need }) => need === 'ions'))
    ? at('ions', roleReason(context, line), practice('the gum has to be dissolved before the ions set it'))
    : null

const thickens: Rule = (item, setting) => {
  const { line } = item
  const { context } = setting
  if (hasClass(line, 'acrylic-polymer') && !isPowder(line) && isFirst(context, line, 'thickener')) {
    const isAcid = line.subject.needs.some(({ need }) => need === 'neutraliser')
    return at(isAcid ? 'water' : 'thicken', roleReason(context, line), solubilityReason(line))
  }
  if (hasClass(line, 'acrylic-polymer') && isPowder(line))
    return at('polymer', roleReason(context, line), solubilityReason(line))
  if (hasClass(line, 'swelling-clay') && isFirst(context, line, 'thickener'))
    return at('clay', roleReason(context, line))
  if (isHotGum(setting, line)) return at('hot', roleReason(context, line), heatAskReason(item))
  if (isGum(setting, line) && !tooHotFor(item, setting))
    return at('gum', roleReason(context, line), solubilityReason(line))
  return null
}

const heatAskReason = ({ line }: Item): Reason => {
  const asked = heatAsked(line)
  return asked
    ? because(`${asked.what} ${asked.asked_c} °C`, asked.claim)
    : because('what heat it needs is not on record')
}

const asksHeat = ({ line }: Item): boolean => (heatAsked(line)?.asked_c ?? 0) > HAND_WARM_C
const tooHotFor = ({ line }: Item, { heat }: Setting): boolean =>
  heat !== null && (bears_c(line) ?? Infinity) < heat.min_c

/** Surfactants and what thickens or clouds a wash through them. */
const washes: Rule = (item, { context, process }) => {
  const { line } = item
  const isWash = context.form === 'wash' || process === 'one-phase'
  const melts = isSolid(line) && asksHeat(item)
  if (isFirst(context, line, 'surfactant-thickener', 'opacifier', 'foam-booster') && melts)
    return at(process === 'emulsion' ? 'oil' : 'warm-surfactant', roleReason(context, line), heatAskReason(item))
  if (isFirst(context, line, 'surfactant-thickener'))
    return at('thicken', roleReason(context, line), practice('a wash is thickened at the end, when its pH is right'))
  if (!isFirst(context, line, 'surfactant')) return null
  if (!isWash) return at('water', roleReason(context, line), solubilityReason(line))
  if (melts && isPowder(line)) return at('warm-surfactant', roleReason(context, line), heatAskReason(item))
  return at('surfactant', roleReason(context, line), practice('surfactants go in last and gently, or the batch foams'))
}

const ALCOHOL_PERCENT = 10

const alcohols: Rule = ({ line }, { context, process }) => {
  if (process !== 'one-phase') return null
  const alcohol_percent = context.lines.reduce(
    (sum, one) => sum + (isFirst(context, one, 'alcohol-solvent') ? one.share_percent : 0),
    0,
  )
  if (alcohol_percent < ALCOHOL_PERCENT) return null
  if (isFirst(context, line, 'alcohol-solvent')) return at('alcohol', roleReason(context, line), heatReason(line))
  return onlyInOil(line)
    ? at('alcohol', solubilityReason(line), practice('oils and scents dissolve in the alcohol first'))
    : null
}

/** A solid that melts lower dissolves in scent or surfactant without heat [C]. */
const MELTS_C = 45

/** Traces of oil in a product without oil phase, and what dissolves them there. */
const traces: Rule = (item, { context, process }) => {
  const { line } = item
  if (process !== 'one-phase') return null
  if (context.form === 'wash' && onlyInOil(line) && isSolid(line) && (heatAsked(line)?.asked_c ?? 0) >= MELTS_C)
    return at('warm-surfactant', solubilityReason(line), heatAskReason(item))
  const isTrace = (one: typeof line): boolean => onlyInOil(one) && !isFirst(context, one, 'surfactant')
  if (isTrace(line))
    return at('premix', solubilityReason(line), practice('mixed with what dissolves it before it meets water'))
  if (!isFirst(context, line, 'solubiliser', 'emulsifier')) return null
  return context.lines.some(isTrace)
    ? at('premix', roleReason(context, line), practice('takes the oils up before they meet water'))
    : at('surfactant', roleReason(context, line), solubilityReason(line))
}

const insoluble: Rule = (item, { context, process }) => {
  const { line } = item
  if (!isPowder(line) || (dissolvesIn(line) !== 'insoluble' && line.phase !== 'powder')) return null
  const isFine = hasClass(line, 'pigment', 'metal-oxide') && !hasClass(line, 'pearl')
  return process === 'emulsion' && isFine
    ? at('pigment', solubilityReason(line), practice('ground into oil, it does not clot'))
    : at('powder', solubilityReason(line), roleReason(context, line))
}

/** Neither phase nor heat limit on record. */
const isOpen = (line: Item['line']): boolean =>
  usedClaim(line.subject, 'phase') === undefined && bears_c(line) === undefined

/** What goes in when the batch has cooled: by its heat limit, by the recipe or its record, and what preserves or scents. */
const coolsDown: Rule = (item, setting) => {
  const { line, stated } = item
  const { context, heat, process } = setting
  if (tooHotFor(item, setting)) return at('cool', heatReason(line), roleReason(context, line))
  if (heat !== null && stated === undefined && isOpen(line) && isFirst(context, line, 'plant-extract', 'active'))
    return at('cool', heatReason(line), practice('what is not known to bear heat goes in after it'))
  const isLate = line.phase === 'cool-down' || isFirst(context, line, 'preservative', 'scent')
  if (!isLate) return null
  if (isSolid(line) && !isPowder(line) && asksHeat(item)) return null // it would stay as grains
  if (heat === null && process === 'one-phase' && isPowder(line) && dissolvesIn(line) === 'water')
    return at('water', solubilityReason(line), practice('a powder dissolves best before the batch is thick'))
  const holds = heat !== null && (bears_c(line) ?? -Infinity) >= heat.max_c
  if (context.form === 'water-in-oil' && dissolvesIn(line) === 'water' && holds)
    return at('water', heatReason(line), practice('in a water-in-oil emulsion it no longer reaches the droplets later'))
  return at('cool', roleReason(context, line), heatReason(line), phaseReason(line, stated))
}

const OILY = ['emulsifier', 'cationic-conditioner', 'structurant', 'emollient']

const oily: Rule = (item, { context, process }) => {
  const { line, stated } = item
  if (process !== 'emulsion') return null
  const isOily =
    onlyInOil(line) ||
    line.phase === 'oil' ||
    (inOil(line) && line.phase !== 'water' && playsHere(context, line, ...OILY))
  if (!isOily || stated === 'water') return null
  return at('oil', solubilityReason(line), ...(asksHeat(item) ? [heatAskReason(item)] : []), phaseReason(line, stated))
}

const base: Rule = (item, setting) => {
  const { line } = item
  if (!isFirst(setting.context, line, 'water-phase')) return null
  return tooHotFor(item, setting) ? at('cool', heatReason(line)) : at('base', roleReason(setting.context, line))
}

const dissolvesHot: Rule = (item, { process }) =>
  process === 'one-phase' && asksHeat(item) && isSolid(item.line)
    ? at('hot', heatAskReason(item), solubilityReason(item.line))
    : null

const RULES: readonly Rule[] = [
  base,
  neutralises,
  acidPartner,
  adjustsPh,
  setsGum,
  thickens,
  alcohols,
  insoluble,
  washes,
  traces,
  coolsDown,
  oily,
  dissolvesHot,
]

/** Place of each line in a product with a water phase; the first rule that has a word decides. */
export function placeWatery(setting: Setting): Placed[] {
  const placed = setting.items.map((item): Placed => {
    const found = RULES.reduce<Where>((where, rule) => where ?? rule(item, setting), null)
    return {
      ...item,
      ...(found ?? { place: 'water', reasons: [solubilityReason(item.line), phaseReason(item.line, item.stated)] }),
    }
  })
  return withMedia(placed, setting)
}

const moved = (item: Placed, place: Place, fact: string): Placed => ({ ...item, place, reasons: [practice(fact)] })

/** Gives the helpers their place: the liquid that wets, dissolves, grinds or melts what cannot go in by itself. */
function withMedia(placed: readonly Placed[], setting: Setting): Placed[] {
  const hard = placed.filter((item) => ['water', 'cool'].includes(item.place) && needsOtherLiquid(setting, item.line))
  const solvent = solventFor(setting, hard)
  const gums = placed.filter(({ place }) => place === 'gum')
  const wetter = wetterFor(
    setting,
    [...gums, ...placed.filter(({ place }) => place === 'hot')].filter(({ line }) => isGum(setting, line)),
    solvent,
  )
  const pigments = placed.filter(({ place }) => place === 'pigment')
  const grinder = pigmentOilFor(setting, pigments)
  const melted = placed.filter(({ place }) => place === 'warm-surfactant')
  const carrier = melted.length > 0 ? surfactantCarrier(setting) : null
  return placed.map((item) => {
    if (solvent && hard.includes(item))
      return { ...item, place: 'first', reasons: [...firstReasons(item), ...item.reasons] }
    if (item.key === solvent?.key) return moved(item, 'first-medium', 'takes up what hardly dissolves in water')
    if (item.key === wetter?.key)
      return moved(item, 'gum-medium', 'wets the gum without swelling it, so that it does not lump')
    if (item.key === grinder?.key) return moved(item, 'pigment-medium', 'wets the powder')
    if (item.place === 'pigment' && !grinder) return { ...item, place: 'powder' }
    if (item.key === carrier?.key) return moved(item, 'warm-surfactant', 'takes up what melts into it')
    return item
  })
}

const firstReasons = ({ line }: Placed): Reason[] =>
  line.subject.needs.filter(({ need }) => need === 'process' || need === 'solubiliser').map(({ says }) => because(says))
