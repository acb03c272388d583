import { expect, test } from 'vitest'
import { buildApp } from '#api/app.ts'
import type { App } from '#api/routes/shared.ts'
import type { Finding } from '#engine/model/finding.ts'
import type { Formula } from '#engine/model/formula.ts'
import type { Label } from '#engine/model/label.ts'
import { makeFormula, realWorld } from '../helpers.ts'
import { ask } from './ask.ts'

export type Shares = Readonly<Record<string, number>>
export type Rest = Parameters<typeof makeFormula>[1]

export const startLaw = (): Promise<App> => buildApp({ world: realWorld(), rateLimit: false })

/** All that is sold pure, so that a limit is met by the figure in the recipe. */
const pure = (formula: Formula): Formula => ({
  ...formula,
  lines: formula.lines.map((line) => (line.fills ? line : { strength_percent: 100, ...line })),
})

async function post<T>(app: App, url: string, body: unknown): Promise<T> {
  const reply = await ask(app, 'POST', url, body)
  if (reply.status !== 200) throw new Error(`${reply.status} ${JSON.stringify(reply.body)}`)
  return reply.body as T
}

const GRAVITY = ['stop', 'warn', 'unknown'] as const

/** The gravest that the check says of one entry of law, with the rule that says it; silent where it says nothing. */
export async function verdictOf(
  app: App,
  { entry, shares, rest, placedOn }: { entry: string; shares: Shares; rest?: Rest; placedOn?: string },
): Promise<string> {
  const formula = pure(makeFormula(shares, { areas: ['hand'], ...rest }))
  const { findings } = await post<{ findings: Finding[] }>(app, '/api/check', {
    formula,
    ...(placedOn && { placedOn }),
  })
  const said = findings.filter(
    ({ rule, message }) => /^(limit|law-ph)/.test(rule) && new RegExp(`entry ${entry}(,| in the)`).test(message),
  )
  const severity = GRAVITY.find((one) => said.some((finding) => finding.severity === one))
  if (!severity) return said.length === 0 ? 'silent' : 'note'
  const rules = said.filter((finding) => finding.severity === severity).map(({ rule }) => rule)
  return `${severity} ${[...new Set(rules)].join(' ')}`
}

/** Findings of the check on a recipe. */
export async function findingsOf(app: App, formula: Formula): Promise<Finding[]> {
  return (await post<{ findings: Finding[] }>(app, '/api/check', { formula })).findings
}

/** The label of a recipe. */
export const labelOf = (app: App, formula: Formula, placedOn?: string): Promise<Label> =>
  post<Label>(app, '/api/label', { formula, ...(placedOn && { placedOn }) })

/** Question, entry, recipe, product, what is to be said, day. */
export type Question = readonly [string, string, Shares, Rest, string, string?]

/** What the check may say of an entry. */
export const [STOP, ASKED, SILENT] = ['stop limit-by-law', 'unknown limit-by-law', 'silent']
export const SHAMPOO: Rest = { product: 'rinse-off', areas: ['hair'] }
export const WASH: Rest = { product: 'rinse-off', areas: ['body'] }
export const FACE: Rest = { areas: ['face'] }
export const BODY: Rest = { areas: ['body'] }

/** Puts questions to the API one by one; each is a test of its own. */
export function run(app: () => App, questions: readonly Question[]): void {
  for (const [name, entry, shares, rest = {}, expected, placedOn] of questions) {
    test(name, async () => {
      const said = await verdictOf(app(), { entry, shares, rest, ...(placedOn !== undefined && { placedOn }) })
      expect(said).toBe(expected)
    })
  }
}
