import type { Api } from '#contract/api.ts'
import type { Bench, BenchLine } from './bench.ts'
import { freshKey } from './bench.ts'
import { shareOf, sumShares } from './shares.ts'

export type Formula = Api['POST /api/check']['body']['formula']
export type IdOf = (line: BenchLine) => string | null

/** What still keeps a bench from being checked. */
export type Lacking = 'no-lines' | 'unread' | 'names' | 'shares' | 'sum'
export type Asked = { formula: Formula; aside_percent: number } | { lacking: Lacking }

function lackingOf(bench: Bench, idOf: IdOf): Lacking | null {
  const used = bench.lines.filter(({ aside }) => !aside)
  if (used.length === 0) return 'no-lines'
  if (used.some(({ kind }) => kind === 'unread')) return 'unread'
  if (used.some((line) => idOf(line) === null)) return 'names'
  const { state } = sumShares(bench.lines)
  if (state === 'open') return 'shares'
  return state === 'adds-up' ? null : 'sum'
}

const round = (value: number): number => Number(value.toFixed(6))

/** What is said of the product beside the recipe; papers only on what is in it. */
function factsOf({ dispensing, professional, uses, analyses = [] }: Bench['settings'], lines: Formula['lines']) {
  const own = analyses.filter(({ ingredient }) => lines.some((line) => line.ingredient === ingredient))
  return {
    ...(dispensing !== undefined && { dispensing }),
    ...(professional !== undefined && { professional }),
    ...(uses !== undefined && { uses }),
    ...(own.length > 0 && { analyses: own }),
  }
}

/**
 * The formula to ask the server about, or what it lacks.
 *
 * Lines put aside are left out and the others scaled to 100 %; `aside_percent` is what was left out.
 */
export function toFormula(bench: Bench, idOf: IdOf): Asked {
  const lacking = lackingOf(bench, idOf)
  if (lacking) return { lacking }
  const sum = sumShares(bench.lines)
  const aside_percent = bench.lines.reduce((total, line) => total + (line.aside ? (shareOf(line, sum) ?? 0) : 0), 0)
  const scale = 100 / (100 - aside_percent)
  const lines = bench.lines
    .filter(({ aside }) => !aside)
    .map((line) => ({
      ingredient: idOf(line) ?? '',
      ...(line.fills ? { fills: true as const } : { share_percent: round((line.share_percent ?? 0) * scale) }),
      ...(line.phase !== null && { phase: line.phase }),
      ...(line.strength_percent !== undefined && { strength_percent: line.strength_percent }),
    }))
  const { market, product, areas, ph, hottest_c } = bench.settings
  const form = bench.form === null ? {} : { form: bench.form }
  return {
    formula: {
      ...{ market, product, ...(areas.length > 0 && { areas }), ...form, ph, hottest_c, lines },
      ...factsOf(bench.settings, lines),
    },
    aside_percent,
  }
}

/** Puts the recipe of a stand-in on the bench. Lines put aside stay; a line that is still there keeps its key and its text. */
export function takeFormula(bench: Bench, formula: Formula, idOf: IdOf): Bench {
  const aside = bench.lines.filter((line) => line.aside)
  const sum = sumShares(bench.lines)
  const scale = (100 - aside.reduce((total, line) => total + (shareOf(line, sum) ?? 0), 0)) / 100
  const free = bench.lines.filter((line) => !line.aside)
  const lines: BenchLine[] = []
  for (const line of formula.lines) {
    const at = free.findIndex((one) => idOf(one) === line.ingredient)
    const [old] = at < 0 ? [] : free.splice(at, 1)
    const { trouble: _, strength_percent: __, ...kept } = old ?? newLine(line.ingredient, [...bench.lines, ...lines])
    lines.push({
      ...kept,
      chosen: line.ingredient,
      share_percent: line.fills || line.share_percent === undefined ? null : round(line.share_percent * scale),
      fills: line.fills === true,
      phase: line.phase ?? kept.phase,
      missing: false,
      ...(line.strength_percent !== undefined && { strength_percent: line.strength_percent }),
    })
  }
  const { market, product, areas, ph, hottest_c } = formula
  const settings = { ...bench.settings, market, product, areas: areas ?? [], ph, hottest_c }
  return { ...bench, lines: [...lines, ...aside], settings, form: formula.form ?? null }
}

const newLine = (id: string, lines: readonly BenchLine[]): BenchLine => ({
  key: freshKey(lines),
  kind: 'ingredient',
  typed: '',
  name: id.replaceAll('-', ' '),
  chosen: id,
  share_percent: null,
  fills: false,
  phase: null,
  aside: false,
  missing: false,
})
