import { batchSheet } from '#engine/index.ts'
import type { BatchAsk, BatchSheet, BatchStep } from '#engine/model/batch.ts'
import type { Formula } from '#engine/model/formula.ts'
import { FORMULAS } from '../../formulas/read-formulas.ts'
import { makeFormula, realWorld } from '../../helpers.ts'

type Ask = Partial<Omit<BatchAsk, 'formula'>>

export const sheetOf = (formula: Formula, ask: Ask = {}): BatchSheet =>
  batchSheet(realWorld(), { formula, batch_g: 200, ...ask })

/** Sheet of one of the whole formulas. */
export const sheetNamed = (name: string, ask: Ask = {}): BatchSheet =>
  sheetOf(FORMULAS.find((one) => one.name === name)!.formula, ask)

/** Sheet of lines `{ id: share }`, filled up with water. */
export const sheetFor = (...args: Parameters<typeof makeFormula>): BatchSheet => sheetOf(makeFormula(...args))

export const stepOf = (sheet: BatchSheet, id: string): BatchStep => {
  const found = sheet.steps.find((step) => step.id === id)
  if (!found) throw new Error(`no step ${id} in ${sheet.order.join(' ')}`)
  return found
}

/** Step that adds the whole of a line, or its first portion. */
export const stepAdding = (sheet: BatchSheet, line: string): string =>
  sheet.lines.find((one) => one.line === line)?.portions[0]?.step ?? ''

export const weighed = (sheet: BatchSheet, line: string): number =>
  sheet.lines.find((one) => one.line === line)!.weigh_g

export const isBefore = (sheet: BatchSheet, first: string, then: string): boolean =>
  sheet.order.includes(first) && sheet.order.indexOf(first) < sheet.order.indexOf(then)

export const saysOf = (sheet: BatchSheet, kind: string): string[] =>
  sheet.remarks.filter((remark) => remark.kind === kind).map(({ message, remedy }) => `${message} => ${remedy ?? ''}`)
