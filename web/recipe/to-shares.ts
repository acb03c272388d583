import type { ParsedRecipe, ReadLine, Trouble } from './types.ts'

type Basis = ParsedRecipe['basis']
interface Shared {
  share_percent: number | null
  fills: boolean
  trouble?: Trouble
}
export interface Shares {
  basis: Basis
  total: number | null
  lines: Shared[]
}

const round = (value: number): number => Number(value.toFixed(4))
const sumOf = (lines: ReadLine[]): number => lines.reduce((sum, { amount }) => sum + (amount ?? 0), 0)

function basisOf(lines: ReadLine[]): Basis {
  const having = lines.filter(({ amount }) => amount !== null)
  if (having.some(({ unit }) => unit === 'percent')) return 'percent'
  if (having.some(({ unit }) => unit === 'grams')) return 'grams'
  return sumOf(having) > 105 ? 'parts' : 'percent' // plain figures beyond rounding above 100 are no per cent
}

/** What the whole comes to: stated by the line that fills up, else the sum. */
function totalOf(lines: ReadLine[], basis: Basis): number | null {
  if (basis === 'percent') return null
  const filler = lines.find(({ fills }) => fills)
  if (!filler) return sumOf(lines)
  return filler.fillsTo !== undefined && filler.fillsTo > sumOf(lines) ? filler.fillsTo : null
}

function shareOf(line: ReadLine, basis: Basis, total: number | null): Shared {
  if (line.fills) return { share_percent: null, fills: true }
  const trouble = line.trouble ? { trouble: line.trouble } : {}
  if (line.amount === null) return { share_percent: null, fills: false, ...trouble }
  if (basis === 'percent') {
    if (line.unit === 'grams') return { share_percent: null, fills: false, trouble: 'grams-among-percent' }
    const fits = line.amount <= 100
    return fits
      ? { share_percent: line.amount, fills: false }
      : { share_percent: null, fills: false, trouble: 'no-share' }
  }
  if (total === null) return { share_percent: null, fills: false, trouble: 'no-total' }
  return { share_percent: round((line.amount / total) * 100), fills: false }
}

/** Turns amounts into shares in per cent; grams and parts become per cent of their sum. Only the first line that fills up may do so. */
export function toShares(lines: ReadLine[]): Shares {
  const basis = basisOf(lines)
  const total = totalOf(lines, basis)
  const first = lines.findIndex(({ fills }) => fills)
  return {
    basis,
    total: total === null ? null : round(total),
    lines: lines.map((line, at) =>
      line.fills && at !== first
        ? { share_percent: null, fills: false, trouble: 'second-filler' }
        : shareOf(line, basis, total),
    ),
  }
}
