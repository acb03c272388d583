/** What a person says about the batch beside the recipe and its size. */
export interface BatchInputs {
  step_g: number
  overage_percent: number | null
  /** YYYY-MM-DD or empty */
  date: string
  code: string
  currency: string
  /** price of a kilogram by ingredient id; kept in this browser, never in a link */
  prices: Readonly<Record<string, number>>
}

/** Steps of usual scales [g]. */
export const SCALE_STEPS = [1, 0.1, 0.01, 0.001] as const

export const NO_INPUTS: BatchInputs = {
  step_g: 0.1,
  overage_percent: null,
  date: '',
  code: '',
  currency: '',
  prices: {},
}

const KEY = 'understudy-batch'
type Store = Pick<Storage, 'getItem' | 'setItem'>

const isObject = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null
const isScale = (value: unknown): value is number => (SCALE_STEPS as readonly unknown[]).includes(value)
const isShare = (value: unknown): value is number => typeof value === 'number' && value >= 0 && value <= 100
const isPrice = (value: unknown): value is number => typeof value === 'number' && value >= 0 && value <= 10_000_000
const textOf = (value: unknown, longest: number): string => (typeof value === 'string' ? value.slice(0, longest) : '')
const dayOf = (value: unknown): string => (/^\d{4}-\d{2}-\d{2}$/.test(String(value)) ? String(value) : '')

export const LONGEST = { code: 60, currency: 10 } as const

/** Reads what it can; whatever does not fit stays as it was before. */
function taken(value: Record<string, unknown>, before: BatchInputs): BatchInputs {
  const { step_g, overage_percent, date, code, currency, prices } = value
  return {
    step_g: isScale(step_g) ? step_g : before.step_g,
    overage_percent: isShare(overage_percent) ? overage_percent : before.overage_percent,
    date: date === undefined ? before.date : dayOf(date),
    code: code === undefined ? before.code : textOf(code, LONGEST.code),
    currency: currency === undefined ? before.currency : textOf(currency, LONGEST.currency),
    prices: isObject(prices)
      ? (Object.fromEntries(Object.entries(prices).filter(([, price]) => isPrice(price))) as Record<string, number>)
      : before.prices,
  }
}

/** What this browser kept: scale, currency and prices, which hold for the next batch too; day and code do not. */
export function loadInputs(store: Store, today: string): BatchInputs {
  const fresh = { ...NO_INPUTS, date: today }
  try {
    const kept: unknown = JSON.parse(store.getItem(KEY) ?? 'null')
    return isObject(kept) ? taken({ ...kept, date: undefined, code: undefined }, fresh) : fresh
  } catch {
    return fresh
  }
}

export function saveInputs(store: Store, { step_g, overage_percent, currency, prices }: BatchInputs): void {
  try {
    store.setItem(KEY, JSON.stringify({ step_g, overage_percent, currency, prices }))
  } catch {
    // storage is full or forbidden: the sheet works on, it just does not outlive a reload
  }
}

const PART = '~'
const NAMES = { step_g: 's', overage_percent: 'o', date: 'd', code: 'c' } as const

/** The recipe and the batch of an address, parted: `#r1.…~s=0.1&d=2026-03-12`. */
export const partsOf = (hash: string): { recipe: string; batch: string } => {
  const [recipe = '', ...rest] = hash.split(PART)
  return { recipe, batch: rest.join(PART) }
}

/** What a link says about the batch, put behind its recipe. */
export function toAddress(recipe: string, { step_g, overage_percent, date, code }: BatchInputs): string {
  const said = new URLSearchParams({
    [NAMES.step_g]: String(step_g),
    ...(overage_percent !== null && overage_percent > 0 && { [NAMES.overage_percent]: String(overage_percent) }),
    ...(date !== '' && { [NAMES.date]: date }),
    ...(code !== '' && { [NAMES.code]: code }),
  })
  return `${recipe}${PART}${said}`
}

/** Takes in what a link says about the batch; what it leaves out stays. */
export function fromAddress(batch: string, before: BatchInputs): BatchInputs {
  const said = new URLSearchParams(batch)
  const number = (name: string): number | undefined => (said.has(name) ? Number(said.get(name)) : undefined)
  return taken(
    {
      step_g: number(NAMES.step_g),
      overage_percent: number(NAMES.overage_percent),
      ...(said.has(NAMES.date) && { date: said.get(NAMES.date) }),
      ...(said.has(NAMES.code) && { code: said.get(NAMES.code) }),
    },
    before,
  )
}
