import type { Static } from 'typebox'
import type { WindowEnd } from './common-window.ts'
import type { Because } from '#engine/model/finding.ts'
import type { Formula } from '#engine/model/formula.ts'
import type { Range } from '#engine/units/range.ts'
import type { LineWindow } from './line-window.ts'

export type Meter = 'meter' | 'strips'

/** What a person asks who wants to bring a batch to a pH. */
export interface AdjustAsked {
  formula: Formula
  batch_g: number
  target_ph: number
  /** id of the acid or base; left out: one is proposed */
  with?: string
  /** of the solution of it; left out: pure */
  strength_percent?: number
  /** readings in this batch, the first at 0 g */
  measured?: { added_g: number; ph: number }[]
  temp_c?: number
  /** product in the test dilution [%]; left out: read neat */
  diluted?: number
  meter?: Meter
}

export interface DoseStep {
  add_g: number
  /** of what, with its strength */
  of: string
  then: string
}

export interface Span {
  min: number
  max: number
}

/** A gap in what is known; `ingredient` is the line it concerns. */
export interface Gap {
  ingredient?: string
  says: string
}

export interface Way {
  way: 'composition' | 'measured'
  verdict: 'known' | 'range' | 'not-known'
  /** total from 0 g on, of what is weighed */
  dose_g: Span | null
  likely_g: number | null
  /** of that not yet added */
  still_g: Span | null
  steps: DoseStep[]
  uncertainty: string
  because: Static<typeof Because>[]
  unknown: Gap[]
}

export interface Chosen {
  ingredient: string
  inci: string
  kind: 'acid' | 'base'
  strength_percent: number
  proposed: boolean
}

export interface Adjusted {
  target_ph: number
  start: { ph: number; from: 'measured' | 'formula' | 'composition' } | null
  with: Chosen | null
  reading: { meter: Meter; error_ph: number; temp_c: number; diluted_percent: number | null }
  window: {
    common: Range | null
    low: WindowEnd | null
    high: WindowEnd | null
    verdict: 'inside' | 'outside' | 'not-known'
    objections: (LineWindow & { distance_ph: number })[]
    unknown: string[]
  }
  ways: Way[]
  dilutionTest: { product_percent: number; ph: number; ph_diluted: number; text: string } | null
  warnings: string[]
  cautions: string[]
  sources: string[]
}
