import type { Claim, Provenance } from './claim.ts'
import type { Area, Form, Id, Use } from './formula.ts'
import type { Finding, Severity } from './finding.ts'
import type { Range } from '#engine/units/range.ts'

export type RoleId = string
export type ClassId = string
export type Tier = 'full' | 'short' | 'inventory'

/** Circumstances in which a statement holds; all that are given must hold. `with`/`without`: id, class:x or role:x. */
export interface When {
  with?: string[]
  without?: string[]
  form?: Form[]
  product?: 'leave-on' | 'rinse-off'
  areas?: Area[]
  min_percent?: number
  max_percent?: number
  ph?: Range
}

export interface Level extends Range {
  typical?: number
}

export interface PlaysRole extends Provenance {
  role: RoleId
  level_percent?: Level
  when?: When
  /** how much of its use this role makes up, 0 to 1; below a half it is a side role */
  share?: number
}

export interface Relation extends Provenance {
  /** id, class:x or role:x */
  with: string
  says: string
  mechanism?: string
  severity?: 'breaks' | 'weakens' | 'poor'
  ph?: Range
  min_percent?: number
}

export interface Need extends Provenance {
  any_of: string[]
  need: string
  says: string
  /** a powder that hot water wets and cold water dissolves */
  wetsIn?: 'hot-water'
  /** how hot that water is at least [C]; undefined where nobody says */
  above_c?: number
  when?: When
}

/** Steps of the work that a caution can be about. */
export const CAUTION_STEPS = ['dissolving', 'thickening'] as const
export type CautionStep = (typeof CAUTION_STEPS)[number]

export interface StandsFor extends Provenance {
  for: string
  ratio?: number
  grade?: 'good' | 'workable'
  when?: When
  says: string
}

export interface NotFor extends Provenance {
  for: string
  when?: When
  why?: string
  says: string
}

export interface Part {
  ingredient: Id
  share_percent: number
}

export type NameKind = 'exact' | 'broad' | 'narrow' | 'former' | 'foreign'

/** An ingredient as the engine reads it: provenance filled in, claims by property, the used one first. */
export interface Ingredient {
  id: Id
  inci: string
  tier: Tier
  cas: string[]
  names: Record<NameKind, string[]>
  classes: ReadonlySet<ClassId>
  classProvenance: Provenance
  roles: PlaysRole[]
  facts: ReadonlyMap<string, Claim[]>
  madeOf: Part[]
  clashes: Relation[]
  needs: Need[]
  boostedBy: Relation[]
  inactivatedBy: Relation[]
  standsFor: StandsFor[]
  notFor: NotFor[]
  cautions: string[]
  /** those of them that belong to one step of the work */
  cautionsAt: Readonly<Partial<Record<CautionStep, readonly string[]>>>
}

export interface Must {
  property?: string
  word?: string
  class?: ClassId
  one_of?: string[]
  /** least spread of charge a mole at the pH of the formula: it has to buffer there; 0.25 at the constant itself */
  buffers?: number
  why: string
}

export interface Criterion {
  by: 'number' | 'class' | 'word' | 'profile' | 'spectrum'
  property?: string
  group?: string
  scale?: number
  /** distance in powers of ten */
  log?: boolean
  /** what a thing of this role is there for: who has nothing of it is another thing */
  purpose?: boolean
  weight: number
  why: string
}

export type DoseBasis = 'same' | 'active-matter' | 'equivalents' | 'strength' | 'own-level'

export interface SwapSpec {
  scope: RoleId
  dose: DoseBasis
  lost: 'fine' | 'workable' | 'no'
  must: Must[]
  criteria: Criterion[]
  irreplaceable?: string
  /** pH at which its work ends, for formulas that have none of their own: a dry fizz in the bath */
  ends_at_ph?: number
}

export interface Role {
  id: RoleId
  label: string
  says: string
  broader?: RoleId
  phase: string
  confusedWith: RoleId[]
  /** how such an ingredient is worked in, from this role or the nearest broader one */
  work?: string
  swap: SwapSpec
}

export interface IngredientClass {
  id: ClassId
  group: string
  says: string
}

export interface PropertySpec {
  id: string
  kind: 'range' | 'one-of' | 'spectrum' | 'profile'
  unit: string
  words: string[]
  says: string
  /** wider than anything real; a value outside is a slip */
  plausible?: Range
}

/** Two classes (or class and id) that do not go together. */
export interface ClassClash extends Provenance {
  id: string
  between: [string, string]
  mechanism: string
  severity: 'breaks' | 'weakens' | 'poor'
  says: string
  min_percent?: number
  ph?: Range
  unless?: When
}

export interface LimitRow extends Omit<Provenance, 'kind' | 'date'> {
  scope: {
    product?: 'leave-on' | 'rinse-off'
    areas?: Area[]
    not_areas?: Area[]
    /** `spray` (any) and `aerosol` (under pressure) are no forms of a formula but ways of dispensing it */
    form?: string[]
    not_form?: 'spray'[]
    /** a use that no recipe shows, in the words of the entry */
    only?: string
    /** that use as a formula may state it: any of these, none of those */
    uses?: Use[]
    not_uses?: Use[]
    /** for professional use only */
    professional?: true
    /** selectors of which one line at least must match for that use to be possible */
    needs?: string[]
    /** what those lines add up to at least */
    least_percent?: number
    /** pH below which nobody makes a product for that use */
    above_ph?: number
  }
  max_percent?: number
  /** which of its figures must not even be reached */
  strict?: 'percent' | 'ph'
  prohibited?: boolean
  ph?: Range
  condition?: string
  warning?: string
  warning_above_percent?: number
  applies_from?: string
  older_stock_until?: string
  /** act that gave the row its present wording */
  legal_act?: string
  note?: string
}

export interface Limit {
  id: string
  market: 'eu' | 'us'
  act: string
  entry: string
  title: string
  kind: 'law' | 'opinion'
  basis?: string
  members: Record<Id, number>
  memberClasses: ClassId[]
  /** the entry bears on a formula only where one of these is in */
  requires: Id[]
  use: string
  rows: LimitRow[]
  /** day on which the rows were compiled: what is in force when no day is asked for */
  date: string
  /** day of the official export that was read */
  exported?: string
}

/** A rule as data: why it exists and how it bears on a swap; its code is the check of the same name. */
export interface Rule {
  id: string
  title: string
  why: string
  severity: Severity
  /** refuse: a stand-in that makes it fire anew is refused; cost: it only loses rank; silent: it is only reported */
  swap: 'refuse' | 'cost' | 'silent'
  cost?: number
  status: string
  fires: unknown[]
  silent: unknown[]
}

export interface Source {
  id: string
  title: string
  locator: string
  grade: string
  note: string
  /** day or year of the work where the list gives one; else empty */
  date: string
}

export type Problem = { path: string; message: string }
export type { Claim, Finding, Provenance }
