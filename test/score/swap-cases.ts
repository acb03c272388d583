import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { idOf } from '#engine/index.ts'
import type { Area, Formula } from '#engine/model/formula.ts'
import type { Wishes } from '#engine/model/swap.ts'

/** One entry of an answer list: a single name or a blend with shares. */
export interface Entry {
  inci?: string
  blend?: { inci: string; share: number }[]
  grade?: 'good' | 'workable'
  severity?: 'unsafe' | 'breaks' | 'poor'
  kind?: string
  how?: string
}

export interface SwapCase {
  id: string
  group: string
  context: {
    product: 'leave-on' | 'rinse-off'
    type: string
    ph: number | null
    hottest_c: number | null
    market: 'eu' | 'us'
    lines: { inci: string; percent: number; phase: string }[]
    note?: string
  }
  missing: string
  accept: Entry[]
  avoid: Entry[]
  no_safe_swap: boolean
  blend_only?: boolean
  leave_out: 'fine' | 'workable' | 'no'
}

const FOLDER = join(import.meta.dirname, '../reference')

/** All cases of one folder of test/reference. */
export function readCases(folder: 'swaps' | 'swaps-own' = 'swaps'): SwapCase[] {
  const files = readdirSync(join(FOLDER, folder))
    .filter((name) => /cases.*\.json$/.test(name))
    .sort()
  return files.flatMap(
    (name) => (JSON.parse(readFileSync(join(FOLDER, folder, name), 'utf8')) as { cases: SwapCase[] }).cases,
  )
}

/** What a person would tick for a product of this type. */
const AREAS: [RegExp, Area[]][] = [
  [/\b(lip|lipstick)/, ['lip']],
  [/\beye/, ['eye']],
  [/\b(baby|nappy|diaper)/, ['under-3', 'body']],
  [/\b(shampoo|conditioner|hair|curl)/, ['hair']],
  [/\bface|facial|micellar|cleansing oil/, ['face']],
  [/\bhand/, ['hand']],
  [/\bdeodorant/, ['deodorant']],
  [/\b(body|shower|bath|bubble)/, ['body']],
]

/** What a person would wish for a product with such a note. */
const WISHES: [RegExp, string[]][] = [
  [/nut-free|nut and peanut allergy/, ['tree-nut', 'peanut']],
  [/no animal material/, ['animal-derived']],
]

export function wishesOf({ context: { note = '' } }: SwapCase): Wishes {
  const without = WISHES.flatMap(([test, classes]) => (test.test(note) ? classes : []))
  return without.length > 0 ? { without } : {}
}

/** @param withAreas false: as a caller who tells nothing of where the product is used */
export function formulaOf({ context }: SwapCase, withAreas = true): Formula {
  const areas = AREAS.flatMap(([test, found]) => (test.test(context.type) ? found : []))
  const sum = context.lines.reduce((total, line) => total + line.percent, 0)
  return {
    market: context.market,
    product: context.product,
    ...(withAreas && areas.length > 0 && { areas: [...new Set(areas)] }),
    ph: context.ph,
    hottest_c: context.hottest_c,
    lines: context.lines.map((line) => ({
      ingredient: idOf(line.inci),
      share_percent: Math.abs(sum - 100) > 0.05 ? (line.percent * 100) / sum : line.percent,
      ...((line.phase === 'water' || line.phase === 'oil' || line.phase === 'cool-down') && { phase: line.phase }),
    })),
  }
}

const FREE = new Set(['aqua', 'glycerin'])

/** Names of an entry as a set of ids: parts of a blend without the carriers that do not count. */
export const idsOfEntry = (entry: Entry): string[] =>
  entry.blend
    ? entry.blend.map(({ inci }) => idOf(inci)).filter((id) => !FREE.has(id))
    : idOf(entry.inci ?? '').split('-and-')

/** Does an answer (ids of all its lines, blends taken apart) name this entry? */
export function names(answer: readonly string[], entry: Entry): boolean {
  const parts = idsOfEntry(entry)
  const given = new Set(answer.flatMap((id) => id.split('-and-')))
  if (entry.blend)
    return parts.filter((id) => given.has(id)).length >= Math.min(2, parts.length) && given.size <= parts.length + 2
  const own = idOf(entry.inci ?? '')
  return (
    answer.length === 1 &&
    (answer[0] === own || (parts.length > 1 && parts.every((id) => given.has(id)) && given.size === parts.length))
  )
}
