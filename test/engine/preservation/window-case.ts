import { readFileSync } from 'node:fs'
import { idOf } from '#engine/index.ts'
import type { Formula, Line } from '#engine/model/formula.ts'

/** A worked question of a practitioner about one preservative; own wording, figures from the sources named. */
export interface WindowCase {
  id: string
  product_type: string
  ph: number
  agents: { inci: string; percent: number }[]
  with: { inci: string; percent: number }[]
  process: string | null
  question_type: 'ph-window' | 'incompatible' | 'cool-down' | 'survives' | 'sufficient' | 'formaldehyde' | 'role'
  expected: string
  accept: string[]
  finding_expected: boolean
  severity: 'none' | 'note' | 'warn' | 'stop'
  why: string
}

const FILE = new URL('../../reference/preservation/window-cases.json', import.meta.url)

export const windowCases = (): WindowCase[] => (JSON.parse(readFileSync(FILE, 'utf8')) as { cases: WindowCase[] }).cases

const OIL: Line[] = [{ ingredient: 'caprylic-capric-triglyceride', share_percent: 15, phase: 'oil' }]
const ANIONIC: Line[] = [{ ingredient: 'glyceryl-stearate-citrate', share_percent: 3, phase: 'oil' }, ...OIL]
const NONIONIC: Line[] = [
  { ingredient: 'cetearyl-olivate-and-sorbitan-olivate', share_percent: 4, phase: 'oil' },
  ...OIL,
]

/** What such a product holds beside the agents; our own, as plain as can be. */
function baseOf({ product_type, with: partners }: WindowCase): Line[] {
  const holdsEmulsifier = partners.some(({ inci }) => /CETEARETH/.test(inci))
  if (/anionic emulsifier/.test(product_type)) return ANIONIC
  if (/lotion|cream|milk/.test(product_type)) return holdsEmulsifier ? OIL : NONIONIC
  return []
}

/** The case as a formula; `process` decides where the agents go in. */
export function formulaOfCase(one: WindowCase): Formula {
  const [, hot_c] = /(\d\d) C/.exec(one.process ?? '') ?? []
  const hot = hot_c !== undefined
  const line = (inci: string, share_percent: number, agent: boolean): Line => ({
    ingredient: idOf(inci),
    share_percent,
    ...(agent && hot && { phase: 'water' as const }),
  })
  return {
    market: 'eu',
    product: /shampoo|wash|soap|cleanser|rinse|mask/.test(one.product_type) ? 'rinse-off' : 'leave-on',
    ph: one.ph,
    hottest_c: hot ? Number(hot_c) : baseOf(one).length > 0 ? 75 : 25,
    lines: [
      { ingredient: 'aqua', fills: true },
      ...one.agents.map(({ inci, percent }) => line(inci, percent, true)),
      ...one.with.map(({ inci, percent }) => line(inci, percent, false)),
      ...baseOf(one),
    ],
  }
}
