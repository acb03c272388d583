import { NUMBER, readNumber } from './number.ts'
import type { Process } from './types.ts'

const PH = new RegExp(
  String.raw`\bp\s?H(?:[\s-]?(?:value|wert))?\s*(?:[:=~≈]|of|to|at|is|auf|adjusted to|about|ca\.?|approx\.?|between|around)*\s*(${NUMBER})(?:\s*(?:-|–|to|bis|and)\s*(${NUMBER}))?`,
  'i',
)
const CELSIUS = /(-?\d{1,3}(?:[.,]\d+)?)\s*(?:°|º|˚|deg(?:rees?)?\.?)?\s*(?:C\b|℃|celsius)/g
const FAHRENHEIT = /(\d{2,3})\s*(?:°|º|˚|deg(?:rees?)?\.?)\s*F\b/g
const COOLING = /\b(?:cool|below|under|abkühl|unter|store|room)/i
const BATCH = new RegExp(
  String.raw`\b(?:batch(?:\s*size)?|makes|yields?|ergibt|total|ansatz|gesamt|menge|summe|sum|(?:ingredients|recipe)\s+for|(?:zutaten|rezept)\s+für)\b[^\d]{0,12}(${NUMBER})\s*(kg|g|grams?|gramm)\b`,
  'i',
)

const inRange = (value: number | null, low: number, high: number): value is number =>
  value !== null && value >= low && value <= high

function readPh(line: string): Process {
  const found = PH.exec(line)
  if (!found) return {}
  const low = readNumber(found[1] ?? '')
  const high = found[2] === undefined ? null : readNumber(found[2])
  if (!inRange(low, 0, 14)) return {}
  if (!inRange(high, low, 14)) return { ph: low }
  return { ph: Math.round((low + high) * 50) / 100, phRange: [low, high] }
}

function hottest(line: string): number | undefined {
  if (COOLING.test(line) && !/\bheat|\bmelt|erhitz|erwärm|schmelz/i.test(line)) return undefined
  const celsius = [...line.matchAll(CELSIUS)].map((hit) => readNumber(hit[1] ?? ''))
  const fahrenheit = [...line.matchAll(FAHRENHEIT)].map((hit) => Math.round(((Number(hit[1]) - 32) * 5) / 9))
  const all = [...celsius, ...fahrenheit].filter((value) => inRange(value, 20, 250))
  return all.length > 0 ? Math.max(...all) : undefined
}

/** What a line says about pH, heat and batch size; empty when it says nothing of the kind. */
export function readProcess(line: string): Process {
  const hottest_c = hottest(line)
  const batch = BATCH.exec(line)
  const mass = batch ? readNumber(batch[1] ?? '', true) : null
  return {
    ...readPh(line),
    ...(hottest_c !== undefined && { hottest_c }),
    ...(mass !== null && mass > 0 && { batch_g: /kg/i.test(batch?.[2] ?? '') ? mass * 1000 : mass }),
  }
}

/** Takes a later line's word into what is known: the hottest point wins, the last pH and batch size stand. */
export function mergeProcess(known: Process, next: Process): Process {
  const merged = { ...known, ...next }
  const heats = [known.hottest_c, next.hottest_c].filter((value) => value !== undefined)
  if (heats.length > 0) merged.hottest_c = Math.max(...heats)
  if (next.ph !== undefined && next.phRange === undefined) delete merged.phRange
  return merged
}
