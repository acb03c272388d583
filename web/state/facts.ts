import type { Analysis, Settings, Use } from './bench.ts'

type Facts = Pick<Settings, 'dispensing' | 'professional' | 'uses' | 'analyses'>

/** Sets a fact or, with undefined, takes it back: what is not said is left out. */
export function withFact<K extends keyof Facts>(settings: Settings, key: K, value: Settings[K] | undefined): Settings {
  const entries = Object.entries({ ...settings, [key]: value }).filter(([, one]) => one !== undefined)
  return Object.fromEntries(entries) as unknown as Settings
}

export const NONE = 'none'

/** Ticks for uses: nothing ticked is not said, `none` is said and empty. */
export const ticksOf = (uses: readonly Use[] | undefined): (Use | typeof NONE)[] =>
  uses === undefined ? [] : uses.length === 0 ? [NONE] : [...uses]

export function usesOf(ticked: readonly (Use | typeof NONE)[], before: readonly Use[] | undefined): Use[] | undefined {
  const uses = ticked.filter((one): one is Use => one !== NONE)
  const isNoneNew = ticked.includes(NONE) && before?.length !== 0
  if (isNoneNew) return []
  return uses.length > 0 ? uses : undefined
}

/** Puts one figure into the papers; a figure of the same substance gives way. */
export function withFigure(
  analyses: readonly Analysis[],
  ingredient: string,
  figure: Analysis['holds'][number],
): Analysis[] {
  const known = analyses.find((one) => one.ingredient === ingredient) ?? { ingredient, holds: [] }
  const holds = [...known.holds.filter(({ substance }) => substance !== figure.substance), figure]
  return [...analyses.filter((one) => one.ingredient !== ingredient), { ...known, holds }].sort(byIngredient)
}

const byIngredient = (a: Analysis, b: Analysis): number => (a.ingredient < b.ingredient ? -1 : 1)

/** Takes one figure out; a paper without figures that is not complete says nothing and goes. */
export const withoutFigure = (analyses: readonly Analysis[], ingredient: string, substance: string): Analysis[] =>
  analyses
    .map((one) =>
      one.ingredient === ingredient ? { ...one, holds: one.holds.filter((held) => held.substance !== substance) } : one,
    )
    .filter(({ holds, complete }) => holds.length > 0 || complete === true)

export function withComplete(analyses: readonly Analysis[], ingredient: string, complete: boolean): Analysis[] {
  const known = analyses.find((one) => one.ingredient === ingredient) ?? { ingredient, holds: [] }
  const { complete: _, ...rest } = known
  const others = analyses.filter((one) => one.ingredient !== ingredient)
  if (!complete && rest.holds.length === 0) return others
  return [...others, { ...rest, ...(complete && { complete }) }].sort(byIngredient)
}
