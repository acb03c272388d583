export type Phase = 'water' | 'oil' | 'cool-down'
export type Unit = 'percent' | 'grams' | 'none'

/** What stops a line from being used as it stands; the words are in the text catalogue. */
export type Trouble =
  'no-share' | 'as-needed' | 'range' | 'kitchen-unit' | 'grams-among-percent' | 'second-filler' | 'no-total' | 'zero'

/** One line that names an ingredient. */
export interface ReadLine {
  kind: 'ingredient'
  typed: string
  name: string
  amount: number | null
  unit: Unit
  fills: boolean
  /** total up to which it fills, when the text says so [unit of the recipe] */
  fillsTo?: number
  phase: Phase | null
  /** letter or number of a heading that does not say which phase it is */
  group: string | null
  strength_percent?: number
  trouble?: Trouble
}

/** A line that could not be read; it stays visible and can be edited. */
export interface UnreadLine {
  kind: 'unread'
  typed: string
}

/** A comment, an instruction or a heading: kept as text. */
export interface NoteLine {
  kind: 'note'
  typed: string
}

export interface Process {
  ph?: number
  /** lower and upper end when the text gives a range */
  phRange?: [number, number]
  hottest_c?: number
  batch_g?: number
}

/** A recipe as read, with shares in per cent. */
export interface ParsedLine {
  kind: 'ingredient' | 'unread'
  typed: string
  name: string
  share_percent: number | null
  fills: boolean
  phase: Phase | null
  strength_percent?: number
  trouble?: Trouble
}

export interface ParsedRecipe {
  lines: ParsedLine[]
  notes: string[]
  process: Process
  basis: 'percent' | 'grams' | 'parts'
  /** grams or parts that were read as 100 % */
  total: number | null
}
