import type { World } from '#engine/index.ts'
import type { Finding } from '#engine/model/finding.ts'
import { circumstancesOf } from './law-circumstances.ts'
import type { Circumstances } from './law-circumstances.ts'
import { findingsOfEntry, formulaOf, has } from './law-formulas.ts'
import { NOT_CHECKABLE, SETS_NOTHING } from './law-not-checkable.ts'
import type { LawRow } from './law-rows.ts'
import { statedFor } from './law-stated-uses.ts'

export type Outcome = 'figure' | 'use' | 'told' | 'nothing' | 'not-checkable'

/** How a row fares: by figure or ban, by a use that has to be asked, told as a condition; and what went wrong. */
export interface Judged {
  row: LawRow
  outcome: Outcome
  faults: string[]
}

/** So far inside and outside of a limit, and of a pH. */
const [INSIDE, OUTSIDE, PH_STEP] = [0.98, 1.03, 0.2]
/** What is put in of a substance that no amount of which is allowed, or that a pH is tied to. */
const SOME_PERCENT = 0.1
const USUAL_PH = 6

const isOpinion = ({ type }: LawRow): boolean => type === 'opinion_max_percent' || type === 'panel_conclusion'
const isBan = ({ type }: LawRow): boolean => type.startsWith('prohibited')
const dayOf = ({ applies_from }: LawRow): string | undefined => (applies_from === '' ? undefined : applies_from)
const substanceOf = (row: LawRow, here: Circumstances): string => here.substance ?? row.ids[0] ?? ''

/** A pH that the row allows. */
function goodPh({ ph_min, ph_max }: LawRow): number {
  if (ph_min !== null && ph_max !== null) return (ph_min + ph_max) / 2
  if (ph_max !== null) return ph_max - 0.5
  return ph_min === null ? USUAL_PH : ph_min + 0.5
}

/** The limit as per cent of the pure substance. */
export const limitOf = (row: LawRow, { already_percent = 0, factor = 1 }: Circumstances): number | null =>
  row.max_percent === null ? null : (row.max_percent_as_supplied ?? (row.max_percent - already_percent) / factor)

interface Trial {
  share_percent: number | null
  ph: number
}

/** Formulas just outside of what the row allows: too much, or at a wrong pH. */
function outsideOf(row: LawRow, here: Circumstances): Trial[] {
  const ph = here.ph ?? goodPh(row)
  if (isBan(row)) return [{ share_percent: SOME_PERCENT, ph }]
  const limit_percent = limitOf(row, here)
  const room_percent = 100 - Object.values(here.beside ?? {}).reduce((sum, share) => sum + share, 0)
  const tooMuch = limit_percent === null ? Infinity : limit_percent * OUTSIDE
  return [
    ...(tooMuch <= room_percent ? [{ share_percent: tooMuch, ph }] : []),
    ...(row.ph_max === null ? [] : [{ share_percent: SOME_PERCENT, ph: row.ph_max + PH_STEP }]),
    ...(row.ph_min === null || isOpinion(row) ? [] : [{ share_percent: SOME_PERCENT, ph: row.ph_min - PH_STEP }]),
  ]
}

function insideOf(row: LawRow, here: Circumstances): Trial {
  const ph = here.ph ?? goodPh(row)
  if (isBan(row)) return { share_percent: null, ph }
  const limit_percent = limitOf(row, here)
  return { share_percent: limit_percent === null ? 10 * SOME_PERCENT : limit_percent * INSIDE, ph }
}

const said = (findings: readonly Finding[]): string =>
  findings.map(({ severity, rule }) => `${severity} ${rule}`).join(', ') || 'fine'

/** Limit, ban or pH window: one formula just inside, others just outside, all judged. */
function faultsOfFigure(world: World, row: LawRow, here: Circumstances): string[] {
  const substance = substanceOf(row, here)
  const judge = ({ share_percent, ph }: Trial) =>
    findingsOfEntry(
      world,
      row,
      formulaOf(row, { ...here, ph }, share_percent === null ? null : { substance, share_percent }),
      dayOf(row),
    )
  const inside = judge(insideOf(row, here))
  const outside = outsideOf(row, here).map(judge)
  const wrongInside = here.named ? has(inside, 'stop') : has(inside, 'stop', 'unknown', 'warn')
  const isRight = (found: readonly Finding[]): boolean =>
    has(found, row.access === 'memory' ? 'warn' : 'stop') ||
    (here.named === true && has(found, 'unknown')) ||
    (isOpinion(row) && has(found, 'warn'))
  return [
    ...(wrongInside ? [`inside is judged ${said(inside)}`] : []),
    ...(outside.length === 0 ? ['no formula outside could be made'] : []),
    ...outside.filter((found) => !isRight(found)).map((found) => `outside is judged ${said(found)}`),
  ]
}

/** A condition that is no figure: told where the substance is in, not told without it. */
function faultsOfTold(world: World, row: LawRow, here: Circumstances): string[] {
  const above = /above (\d+(?:\.\d+)?) %/.exec(row.conditions)?.[1]
  const tested = { substance: substanceOf(row, here), share_percent: above === undefined ? 1 : Number(above) + 1 }
  const withIt = findingsOfEntry(world, row, formulaOf(row, here, tested), dayOf(row))
  const without = findingsOfEntry(world, row, formulaOf(row, here, null), dayOf(row))
  return [
    ...(withIt.length === 0 ? ['is not told'] : []),
    ...(without.length > 0 ? ['is told without the substance'] : []),
    ...(withIt.some(({ message }) => message.includes(row.label)) ? [] : [`label words are not told: ${row.label}`]),
  ]
}

/** Conditions and purity rules carry no figure of the product; some figures speak of traces, particles, ways of making. */
const isTold = ({ type, fact }: LawRow): boolean =>
  ['condition', 'conditional', 'purity', 'peroxide_value', 'label', 'label-rule'].includes(type) ||
  ['EU-II-1381-01', 'EU-II-1382-01', 'US-CIR-salicylic-01', 'EU-II-1716-01'].includes(fact) ||
  fact.startsWith('EU-REACH-78-')

/** Rows of another kind that set a figure all the same. */
const AS_FIGURE: Record<string, Partial<LawRow>> = {
  'EU-III-15a-07': { max_percent: 5, access: 'read' }, // the conversion, tried on potassium hydroxide as cuticle softener
  'US-CFR-700.13-01': { type: 'max_percent' },
}

/** Judges one row. */
export function judgeRow(world: World, row: LawRow): Judged {
  if (SETS_NOTHING.has(row.type)) return { row, outcome: 'nothing', faults: [] }
  if (NOT_CHECKABLE.some(({ facts }) => facts.includes(row.fact))) return { row, outcome: 'not-checkable', faults: [] }
  const here = circumstancesOf(row)
  const asFigure = { ...row, ...AS_FIGURE[row.fact] }
  if (isTold(asFigure)) return { row, outcome: 'told', faults: faultsOfTold(world, row, here) }
  return { row, outcome: here.named ? 'use' : 'figure', faults: faultsOfUses(world, asFigure, here) }
}

/** A row that names a use: asked where nobody stated it, binding where it is stated. */
function faultsOfUses(world: World, row: LawRow, here: Circumstances): string[] {
  const stated = statedFor(row.fact)
  const unstated = here.named || stated === null ? faultsOfFigure(world, row, here) : []
  if (stated === null) return unstated
  const { named: _, ...plain } = here
  const told = faultsOfFigure(world, row, { ...plain, ...stated })
  return [...unstated, ...told.map((fault) => `stated: ${fault}`)]
}

/** A limit with a day still to come: before that day too much only warns of what is coming. Null where it has none. */
export function faultOfDay(world: World, row: LawRow, lastDayBefore: string): string | null {
  const here = { ...circumstancesOf(row), ...statedFor(row.fact) }
  const limit_percent = limitOf(row, here)
  if (limit_percent === null) return null
  const tested = { substance: substanceOf(row, here), share_percent: Math.min(95, limit_percent * OUTSIDE) }
  const found = findingsOfEntry(world, row, formulaOf(row, here, tested), lastDayBefore)
  if (has(found, 'stop')) return `stops before its day: ${said(found)}`
  return found.some(({ rule }) => rule === 'limit-coming') ? null : `is not announced: ${said(found)}`
}
