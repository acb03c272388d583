import { heatAsked } from '#engine/checks/heat-too-low.ts'
import { because, nameOf } from '#engine/checks/say.ts'
import type { FormulaContext, FormulaLine } from '#engine/formula/context.ts'
import { rangeOfProperty, wordOf } from '#engine/graph/subject.ts'
import type { Say } from '#engine/words/say.ts'
import type { Reason } from './item.ts'
import { practice } from './reasons.ts'
import { bears_c, playsHere } from './roles-here.ts'

/** A temperature to be reached, with the claims it rests on. */
export interface Heat {
  min_c: number
  max_c: number
  because: Reason[]
  /** the recipe states less than a line needs [C] */
  statedTooLow?: number
}

/** What needs no more than this melts in a warm hand [C]. */
export const HAND_WARM_C = 30
/** A recipe that states less means the warmth of a room [C]. */
const PROCESS_HEAT_C = 45
/** Usual slack above what a line needs, so that it melts within minutes [C]. */
const SLACK_C = 5
/** More than this above the need is heat for nothing, even where the recipe allows it [C]. */
const MOST_ABOVE_C = 10

const askOf = (line: FormulaLine) => {
  const asked = heatAsked(line)
  if (!asked || asked.asked_c <= HAND_WARM_C) return []
  const most = rangeOfProperty(line.subject, asked.claim.property)?.max ?? asked.asked_c
  return [{ line, ...asked, sure_c: Math.max(asked.asked_c, most) }]
}

/** Highest need for heat of these lines with its claim; null where none states one above the warmth of a hand. */
export function mostHeatAsked(lines: readonly FormulaLine[]) {
  const asks = lines.flatMap(askOf)
  const key = ({ line }: (typeof asks)[number]): string => line.subject.id
  return asks.sort((a, b) => b.asked_c - a.asked_c || (key(a) < key(b) ? -1 : 1))[0] ?? null
}

/** What a line asks for, told with its name. */
export const askFact = (
  { line, what, asked_c, claim }: NonNullable<ReturnType<typeof mostHeatAsked>>,
  say: Say,
): Reason =>
  because(
    what === 'needs'
      ? say`${nameOf(line.subject)} needs ${asked_c} °C`
      : say`${nameOf(line.subject)} melts up to ${asked_c} °C`,
    claim,
  )

/** A solid or paste without a word on its melting: whether it needs heat is not known. */
export const heatNeedUnknown = (context: FormulaContext, line: FormulaLine): boolean =>
  heatAsked(line) === null &&
  !['liquid', 'powder'].includes(wordOf(line.subject, 'form') ?? '') &&
  playsHere(context, line, 'emulsifier', 'structurant', 'emollient', 'cationic-conditioner')

/** Top of a range [C]: no line that is heated may be asked to bear more than its claim. */
const capped = (top_c: number, lowest_c: number, heated: readonly FormulaLine[]): number => {
  const limits = heated.flatMap((line) => bears_c(line) ?? []).filter((limit_c) => limit_c >= lowest_c)
  return Math.min(top_c, ...limits)
}

/**
 * How hot a phase has to be: at least what its lines need, at most what the recipe states.
 *
 * @param lines  lines that are melted or dissolved with heat
 * @returns      null where nothing asks for heat: then the work is cold
 *
 * Where the recipe states less than a line needs, the need wins and `statedTooLow` says so; the check warns as well.
 */
export function heatFor(context: FormulaContext, lines: readonly FormulaLine[]): Heat | null {
  const { hottest_c, world } = context
  const { say } = world
  const most = mostHeatAsked(lines)
  if (!most) return statedHeat(context, lines)
  const fact = askFact(most, say)
  const min_c = most.asked_c
  const heated = context.lines.filter(({ phase }) => phase !== 'cool-down')
  if (hottest_c === null || hottest_c < min_c) {
    const max_c = capped(Math.max(most.sure_c, min_c + SLACK_C), min_c, heated)
    const slack = practice(say`up to ${SLACK_C} °C above, so that it melts within minutes`, say)
    return { min_c, max_c, because: [fact, slack], ...(hottest_c !== null && { statedTooLow: hottest_c }) }
  }
  const open = lines.some((line) => heatNeedUnknown(context, line))
  const top_c = capped(open ? hottest_c : Math.min(hottest_c, min_c + MOST_ABOVE_C), min_c, heated)
  return {
    min_c: open ? Math.max(min_c, top_c - SLACK_C) : min_c,
    max_c: top_c,
    because: [fact, asStated(hottest_c, say)],
  }
}

const asStated = (hottest_c: number, say: Say): Reason => ({
  ...because(say`the recipe states ${hottest_c} °C as the hottest point`),
  from: 'recipe',
})

/** Where no line states a need: the heat of the recipe, when something in it may need it. */
function statedHeat(context: FormulaContext, lines: readonly FormulaLine[]): Heat | null {
  const { hottest_c, world } = context
  const { say } = world
  const open = lines.filter((line) => heatNeedUnknown(context, line))
  if (open.length === 0 || hottest_c === null || hottest_c < PROCESS_HEAT_C) return null
  return {
    min_c: hottest_c - SLACK_C,
    max_c: hottest_c,
    because: [asStated(hottest_c, say)],
  }
}
