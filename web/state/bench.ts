import type { Api } from '#contract/api.ts'
import type { Phase, Trouble } from '#web/recipe/types.ts'

type Stated = Api['POST /api/check']['body']['formula']
export type Dispensing = NonNullable<Stated['dispensing']>
export type Use = NonNullable<Stated['uses']>[number]
export type Analysis = NonNullable<Stated['analyses']>[number]

export type Market = 'eu' | 'us'
export type Product = 'leave-on' | 'rinse-off'
export type Area = 'face' | 'eye' | 'lip' | 'hair' | 'hand' | 'body' | 'deodorant' | 'intimate' | 'nail' | 'under-3'
export type Form = 'oil-in-water' | 'water-in-oil' | 'anhydrous' | 'gel' | 'wash' | 'bar' | 'powder' | 'solution'

export interface BenchLine {
  key: string
  kind: 'ingredient' | 'unread'
  /** as it was typed or pasted */
  typed: string
  name: string
  /** record that a person chose or a swap brought; null: ask the server what the name means */
  chosen: string | null
  share_percent: number | null
  fills: boolean
  phase: Phase | null
  strength_percent?: number
  trouble?: Trouble
  /** kept in the recipe, left out of the check */
  aside: boolean
  missing: boolean
}

export interface Settings {
  market: Market
  product: Product
  areas: Area[]
  ph: number | null
  hottest_c: number | null
  batch_g: number | null
  /** what the law asks of the product and no recipe shows; left out: not said */
  dispensing?: Dispensing
  professional?: boolean
  uses?: Use[]
  /** what suppliers found in raw materials */
  analyses?: Analysis[]
}

export interface WishList {
  without: string[]
  cold: boolean
  keepPh: boolean
  onlyShelf: boolean
  /** also names known only by function and name */
  alsoInventory?: boolean
  /** factors on the weights of criteria, as moved by hand */
  weights?: Record<string, number>
  /** names of what is at hand, one a line */
  shelf: string
}

/** All that is on the bench: one state of the history. */
export interface Bench {
  /** which of the person's recipes this is; given when the first line comes, never part of a link */
  recipe?: string
  title: string
  lines: BenchLine[]
  notes: string
  /** what the reader of the text wants to say about it, as codes of the text catalogue */
  said: { basis: 'percent' | 'grams' | 'parts'; total: number | null; phRange: [number, number] | null }
  settings: Settings
  wishes: WishList
  /** form stated by the server for the recipe of a swap; null: worked out from the lines */
  form: Form | null
}

export const EMPTY: Bench = {
  title: '',
  lines: [],
  notes: '',
  said: { basis: 'percent', total: null, phRange: null },
  settings: { market: 'eu', product: 'leave-on', areas: [], ph: null, hottest_c: null, batch_g: null },
  wishes: { without: [], cold: false, keepPh: false, onlyShelf: false, shelf: '' },
  form: null,
}

/** A key that no line has yet. */
export function freshKey(lines: readonly { key: string }[]): string {
  const used = lines.map(({ key }) => Number(key.slice(1))).filter((n) => Number.isInteger(n))
  return `l${Math.max(0, ...used) + 1}`
}

/** The bench as no one's recipe: what a link carries, and what a new recipe begins with. */
export function withoutRecipe(bench: Bench): Bench {
  const { recipe: _, ...rest } = bench
  return rest
}

/** Whether two benches say the same, whosever recipe they are. Order of keys does not count. */
export const isSameBench = (a: Bench, b: Bench): boolean => inOrder(withoutRecipe(a)) === inOrder(withoutRecipe(b))

const inOrder = (value: unknown): string =>
  JSON.stringify(value, (_, one: unknown) =>
    typeof one === 'object' && one !== null && !Array.isArray(one)
      ? Object.fromEntries(Object.entries(one).sort(([x], [y]) => (x < y ? -1 : 1)))
      : one,
  )
