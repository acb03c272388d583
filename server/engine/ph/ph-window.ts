import { buildContext } from '#engine/formula/build-context.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import { plays } from '#engine/graph/subject.ts'
import type { World } from '#engine/graph/world.ts'
import type { Formula } from '#engine/model/formula.ts'
import { distanceOutside } from '#engine/units/range.ts'
import { commonOf } from './common-window.ts'
import type { CommonWindow } from './common-window.ts'
import { lineWindows } from './line-window.ts'
import type { LineWindow } from './line-window.ts'

/** Whether a pH suits the lines whose windows are known, and which of them object. */
export interface PhVerdict {
  value: number | null
  verdict: 'inside' | 'outside' | 'not-known'
  objections: (LineWindow & { distance_ph: number })[]
}

export interface PhWindow extends CommonWindow {
  keeps: CommonWindow
  works: CommonWindow
  /** ids of lines without a known window */
  unknown: string[]
  ph: PhVerdict
  notes: string[]
  sources: string[]
}

/** @param windows at least the known ones; unknown lines object to nothing, and a caller has to name them */
export function judgePh(ph: number | null, windows: readonly LineWindow[]): PhVerdict {
  if (ph === null || windows.length === 0) return { value: ph, verdict: 'not-known', objections: [] }
  const objections = windows
    .map((one) => ({ ...one, distance_ph: distanceOutside(ph, one.window) }))
    .filter(({ distance_ph }) => distance_ph > 0)
  return { value: ph, verdict: objections.length === 0 ? 'inside' : 'outside', objections }
}

/** Lines whose window nobody stated; water itself has none to state. */
export function withoutWindow({ lines }: FormulaContext, windows: readonly LineWindow[]): string[] {
  const known = new Set(windows.map(({ ingredient }) => ingredient))
  const ids = lines
    .filter(({ subject }) => !known.has(subject.id) && !plays(subject, 'water'))
    .map(({ subject }) => subject.id)
  return [...new Set(ids)]
}

const LITTLE_WATER_PERCENT = 1

const notesOf = ({ water_percent, world: { say } }: FormulaContext, unknown: readonly string[]): string[] => [
  ...(water_percent < LITTLE_WATER_PERCENT
    ? [say`There is no water phase here, so there is no pH either; the windows count once it is wetted.`]
    : []),
  ...(unknown.length > 0
    ? [say`No window is known for ${unknown.length} of the lines: whether they bear this pH is not known.`]
    : []),
]

export const sourcesOfWindows = (windows: readonly LineWindow[]): string[] =>
  [...new Set(windows.flatMap(({ claim }) => claim.source.split(/\s*;\s*/)))].sort()

/** Which pH suits all lines, who sets each end, and where the formula's own pH lies. */
export function phWindow(world: World, formula: Formula): PhWindow {
  const context = buildContext(formula, world)
  const windows = lineWindows(context)
  const unknown = withoutWindow(context, windows)
  return {
    ...commonOf(windows),
    keeps: commonOf(windows.filter(({ kind }) => kind === 'keeps')),
    works: commonOf(windows.filter(({ kind }) => kind === 'works')),
    unknown,
    ph: judgePh(context.ph, windows),
    notes: notesOf(context, unknown),
    sources: sourcesOfWindows(windows),
  }
}
