import type { FormulaContext, FormulaLine } from '#engine/formula/context.ts'
import { rangeOfProperty, wordOf } from '#engine/graph/subject.ts'

/** First role that a line plays in this formula; empty where it plays none on record. */
export const firstRole = (context: FormulaContext, line: FormulaLine): string =>
  context.rolesOf(line.subject)[0]?.role ?? ''

/** Whether its first role here is this one or a narrower one. */
export const isFirst = (context: FormulaContext, line: FormulaLine, ...roles: string[]): boolean => {
  const above = context.world.roles.above(firstRole(context, line))
  return roles.some((role) => above.includes(role))
}

/** Whether it plays this role or a narrower one here, at whatever rank. */
export const playsHere = (context: FormulaContext, line: FormulaLine, ...roles: string[]): boolean =>
  context
    .rolesOf(line.subject)
    .some((here) => roles.some((role) => context.world.roles.above(here.role).includes(role)))

export const isLiquid = ({ subject }: FormulaLine): boolean => wordOf(subject, 'form') === 'liquid'
export const isPowder = ({ subject }: FormulaLine): boolean => wordOf(subject, 'form') === 'powder'
export const isSolid = ({ subject }: FormulaLine): boolean =>
  ['solid', 'powder', 'paste'].includes(wordOf(subject, 'form') ?? '')

export const dissolvesIn = ({ subject }: FormulaLine): string | undefined => wordOf(subject, 'solubility')
export const inWater = (line: FormulaLine): boolean => ['water', 'both'].includes(dissolvesIn(line) ?? '')
export const inOil = (line: FormulaLine): boolean => ['oil', 'both', 'silicone'].includes(dissolvesIn(line) ?? '')
export const onlyInOil = (line: FormulaLine): boolean => ['oil', 'silicone'].includes(dissolvesIn(line) ?? '')

/** Hottest point that a line bears [C], as far as it is on record. */
export const bears_c = ({ subject }: FormulaLine): number | undefined => rangeOfProperty(subject, 'heat_max_c')?.max

export const hasClass = ({ subject }: FormulaLine, ...classes: string[]): boolean =>
  classes.some((one) => subject.classes.has(one))
