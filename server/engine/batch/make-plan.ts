import type { FormulaContext, FormulaLine } from '#engine/formula/context.ts'
import { heatFor } from './heat.ts'
import type { Heat } from './heat.ts'
import type { Item, Placed } from './item.ts'
import { keptBackOf } from './kept-back.ts'
import { place } from './place.ts'
import { atPlaces } from './plan.ts'
import type { Plan } from './plan.ts'
import { processOf } from './process.ts'
import type { Process } from './process.ts'
import { bears_c, hasClass, inOil, isFirst, isSolid, onlyInOil, playsHere } from './roles-here.ts'
import type { Setting } from './setting.ts'
import { hotWaterFor } from './ways.ts'

/** Lines that are melted together in this kind of work. */
function meltedLines(context: FormulaContext, process: Process): FormulaLine[] {
  const isLate = (line: FormulaLine): boolean => isFirst(context, line, 'scent', 'preservative', 'antioxidant')
  const structures = (line: FormulaLine): boolean =>
    playsHere(context, line, 'emulsifier', 'cationic-conditioner', 'structurant', 'emollient')
  const fits: Record<Process, (line: FormulaLine) => boolean> = {
    emulsion: (line) => (onlyInOil(line) || (inOil(line) && structures(line))) && !isLate(line),
    'one-phase': () => false,
    anhydrous: (line) => inOil(line) && !isLate(line),
    powder: () => false,
    bar: (line) => isSolid(line) && !isLate(line),
    soap: onlyInOil,
  }
  return context.lines.filter(fits[process])
}

const dissolvedHot = (placed: readonly Placed[]): FormulaLine[] =>
  placed.filter((item) => item.place === 'hot' || item.place === 'warm-surfactant').map(({ line }) => line)

/** What was dissolved first waits for the cool batch when a part of it bears no heat. */
function firstJoins({ heat }: Setting, placed: readonly Placed[]): Plan['firstJoins'] {
  const cup = placed.filter((item) => item.place === 'first' || item.place === 'first-medium')
  const isShy = ({ line }: Placed): boolean =>
    line.phase === 'cool-down' ||
    hasClass(line, 'aromatic-alcohol') ||
    (heat !== null && (bears_c(line) ?? Infinity) < heat.min_c)
  return cup.some(isShy) ? 'cool-down' : 'water-phase'
}

const isGumPlace = (item: Placed): boolean => item.place === 'gum'

interface Asked {
  context: FormulaContext
  items: readonly Item[]
  step_g: number
  date: string | null
  batchCode: string | null
}

/** Works out, before any step is written, where each line goes and how hot the work is. */
export function makePlan({ context, items, step_g, date, batchCode }: Asked): Plan {
  const process = processOf(context)
  const heat: Heat | null = process === 'soap' ? null : heatFor(context, meltedLines(context, process))
  const setting: Setting = { context, say: context.world.say, process, items, heat }
  const first = place(setting)
  const hotGum = process === 'one-phase' || process === 'emulsion' ? heatFor(context, dissolvedHot(first)) : null
  // In one phase what is dissolved or wetted hot heats the whole batch: what bears less has to wait.
  const whole = first.some((item) => item.place === 'hot') ? hotGum : hotWaterFor(first.filter(isGumPlace))
  const again: Setting = process === 'one-phase' && whole ? { ...setting, heat: whole } : setting
  const placed = again === setting ? first : place(again)
  return {
    ...again,
    placed,
    keptBack: keptBackOf(again, placed, step_g),
    step_g,
    at: atPlaces(placed),
    firstJoins: firstJoins(again, placed),
    hotGum,
    date,
    batchCode,
  }
}
