import { readNumber } from './number.ts'
import { phaseInWords } from './heading.ts'
import type { Phase } from './types.ts'

/** What a column of a pasted table holds. */
export type Column = 'name' | 'inci' | 'percent' | 'grams' | 'phase' | 'other'

export interface Row {
  text: string
  phase: Phase | null
  group: string | null
}

const HEADS: [RegExp, Column][] = [
  [/^inci/i, 'inci'],
  [
    /^(?:ingredients?|names?|raw\s*materials?|materials?|substance|zutat(?:en)?|rohstoffe?|stoff|ingredientes?|ingrédients?)/i,
    'name',
  ],
  [/^(?:%|per\s?cent|prozent|share|percentage|w\/?w|wt|anteil|conc)/i, 'percent'],
  [/^(?:g|grams?|gramm|weight|menge|mass|batch|amount\s*\(g\))(?=$|[\s(/\d])/i, 'grams'],
  [/^(?:phase|fase|part)$/i, 'phase'],
  [/^(?:amount|quantity|qty)/i, 'percent'],
  [/^(?:function|use|purpose|funktion|role|supplier|notes?|remarks?|comments?|no\.?|#|nr\.?)$/i, 'other'],
]

const columnOf = (cell: string): Column | null => HEADS.find(([pattern]) => pattern.test(cell.trim()))?.[1] ?? null

/** The cells of a table line, or null when the line is no table line. */
export function splitCells(line: string): string[] | null {
  const separator = line.includes('\t') ? /\t+/ : /\|/.test(line) ? /\|/ : line.includes(';') ? /;/ : /\s{3,}/
  const cells = line
    .replace(/^\||\|$/g, '')
    .split(separator)
    .map((cell) => cell.trim())
  return cells.length > 1 ? cells : null
}

/** `|---|:--:|` and the like. */
export const isRule = (line: string): boolean => /^[\s|:+=_*-]{3,}$/.test(line) && !/\p{L}|\d/u.test(line)

/** Columns named by a head line, or null when the line is no head: at least a name column and one more, and no figures. */
export function readHead(cells: string[]): Column[] | null {
  const columns = cells.map(columnOf)
  const known = columns.filter((column) => column !== null)
  const hasName = columns.includes('name') || columns.includes('inci')
  if (!hasName || known.length < 2 || cells.some((cell) => readNumber(cell) !== null)) return null
  return columns.map((column) => column ?? 'other')
}

const AMOUNT = /^(?:[\d.,\s]+(?:%|g|kg|mg)?|q\.?\s?s\.?.*|(?:to|ad|bis|up to)\s*100.*|balance|rest|remainder)$/i
const isGroup = (cell: string): boolean => /^(?:[A-H]\d?|I{1,3})$/.test(cell)

function withUnit(amount: string, unit: '%' | 'g'): string {
  return readNumber(amount) !== null && !amount.includes('%') ? `${amount} ${unit}` : amount
}

function byHead(cells: string[], head: Column[]): Row | null {
  const at = (column: Column): string => cells[head.indexOf(column)] ?? ''
  const name = at('inci') || at('name')
  const amount = at('percent') ? withUnit(at('percent'), '%') : withUnit(at('grams'), 'g')
  if (name === '') return null
  const phase = at('phase')
  return { text: `${name} ${amount}`.trim(), phase: phaseInWords(phase), group: isGroup(phase) ? phase : null }
}

/** Puts the name and the first amount of a table line together as one plain line. */
export function readRow(cells: string[], head: Column[] | null): Row | null {
  if (head) return byHead(cells, head)
  const filled = cells.filter((cell) => cell !== '')
  const group = filled.find(isGroup) ?? null
  const amounts = filled.filter((cell) => AMOUNT.test(cell) && !isGroup(cell))
  const rest = filled.filter((cell) => !AMOUNT.test(cell) && !isGroup(cell))
  const phaseCell =
    rest.length > 1 ? rest.find((cell) => /^(?:water|oil|cool[\s-]*down)(?:\s+phase)?$/i.test(cell)) : undefined
  const phase = phaseCell === undefined ? null : phaseInWords(phaseCell)
  const name = rest.find((cell) => cell !== phaseCell)
  if (name === undefined) return null
  return { text: [name, amounts.find((cell) => cell.includes('%')) ?? amounts[0] ?? ''].join(' ').trim(), phase, group }
}
