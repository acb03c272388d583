/** One step of a way through the graph, as a swap tells it. */
export interface WayStep {
  from: string
  relation: string
  to: string
}

/** Signs that stand in no id: between the parts of a step, and between steps. */
const PART = '~'
const STEP = ','

export const wayText = (way: readonly WayStep[]): string =>
  way.map(({ from, relation, to }) => [from, relation, to].join(PART)).join(STEP)

/** The steps of a text; what is no step is left out. */
export const wayFrom = (words: string | null): WayStep[] =>
  (words ?? '').split(STEP).flatMap((step) => {
    const [from, relation, to, ...more] = step.split(PART)
    return from && relation && to && more.length === 0 ? [{ from, relation, to }] : []
  })

/** Address of the explorer with this node in the middle. */
export const exploreHref = (node: string): string => `/explore?${new URLSearchParams({ at: node })}`

/** Address of the explorer that shows this way. */
export const wayHref = (way: readonly WayStep[]): string => `/explore?${new URLSearchParams({ path: wayText(way) })}`
