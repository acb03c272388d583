import type { BatchRemark } from '#engine/model/batch.ts'
import type { Placed } from './item.ts'
import type { Plan } from './plan.ts'

/** Something to be said about a batch, where there is something to be said. */
export type Remark = (plan: Plan) => BatchRemark[]

const keys = (items: readonly Placed[]): string[] => items.map(({ key }) => key).sort()
/** One remark about these lines; none where there are none. */
export const one = (remark: Omit<BatchRemark, 'lines'>, items: readonly Placed[]): BatchRemark[] =>
  items.length === 0 ? [] : [{ ...remark, lines: keys(items) }]
