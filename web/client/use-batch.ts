import { useMemo } from 'react'
import type { Api } from '#contract/api.ts'
import type { BatchInputs } from '#web/state/batch-inputs.ts'
import type { Bench } from '#web/state/bench.ts'
import { standingOf } from '#web/state/line-view.ts'
import { toFormula } from '#web/state/to-formula.ts'
import type { Formula, Lacking } from '#web/state/to-formula.ts'
import { call } from './call.ts'
import { useQuestion } from './question.ts'
import type { Question } from './question.ts'
import { useDebounced } from './use-debounced.ts'
import { useResolve } from './use-resolve.ts'

export type BatchBody = Api['POST /api/batch']['body']
export type BatchReply = Api['POST /api/batch']['reply']
export type BatchLine = BatchReply['lines'][number]
export type BatchStep = BatchReply['steps'][number]
export type BatchRemark = BatchReply['remarks'][number]

const WHILE_TYPING_MS = 350

/** What goes to the server; prices only of what is in the recipe. */
export function batchBody(formula: Formula, batch_g: number, inputs: BatchInputs): BatchBody {
  const { step_g, overage_percent, date, code, currency, prices } = inputs
  const own = new Set(formula.lines.map(({ ingredient }) => ingredient))
  const priced = Object.entries(prices).filter(([id]) => own.has(id))
  return {
    formula,
    batch_g,
    step_g,
    ...(overage_percent !== null && overage_percent > 0 && { overage_percent }),
    ...(priced.length > 0 && { prices_per_kg: Object.fromEntries(priced) }),
    ...(priced.length > 0 && currency !== '' && { currency }),
    ...(date !== '' && { date }),
    ...(code.trim() !== '' && { batchCode: code.trim() }),
  }
}

export interface BatchAnswer {
  sheet: Question<BatchReply>
  lacking: Lacking | null
  /** what was typed for an ingredient, by its id */
  typed: ReadonlyMap<string, string>
}

/** The sheet for what is on the bench. */
export function useBatch(bench: Bench, inputs: BatchInputs): BatchAnswer {
  const names = useResolve(bench.lines.filter(({ kind }) => kind === 'ingredient').map(({ name }) => name))
  const ids = useMemo(
    () =>
      new Map(
        bench.lines.map((line) => {
          const standing = standingOf(line, names)
          return [line.key, standing.state === 'known' ? standing.id : null]
        }),
      ),
    [bench.lines, names],
  )
  const asked = toFormula(bench, ({ key }) => ids.get(key) ?? null)
  const { batch_g } = bench.settings
  const body = 'formula' in asked && batch_g !== null ? batchBody(asked.formula, batch_g, inputs) : null
  const now = body === null ? '' : JSON.stringify(body)
  const settled = useDebounced(now, WHILE_TYPING_MS)
  const question = useQuestion({
    key: ['batch', settled],
    ask: (signal) => call('POST /api/batch', { body: JSON.parse(settled) as BatchBody, signal }),
    when: body !== null && settled !== '',
    keep: true,
  })
  return {
    sheet: question.state === 'ready' && now !== settled ? { ...question, old: true } : question,
    lacking: 'lacking' in asked ? asked.lacking : null,
    typed: new Map(bench.lines.flatMap((line) => (ids.get(line.key) ? [[ids.get(line.key) ?? '', line.name]] : []))),
  }
}
