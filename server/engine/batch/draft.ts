import { nameOf, sourcesOf } from '#engine/checks/say.ts'
import type { Duration, Temperature } from '#engine/model/batch.ts'
import type { Say } from '#engine/words/say.ts'
import type { Heat } from './heat.ts'
import type { Placed, Reason } from './item.ts'
import type { Draft } from './plan.ts'
import { practice } from './reasons.ts'

interface Written {
  id: string
  title: string
  text: string
  why: string
  adds?: readonly Placed[]
  /** keys of lines that go in beside `adds` (water kept back) */
  alsoAdds?: readonly string[]
  uses?: readonly string[]
  after?: readonly string[]
  temp?: Temperature | undefined
  time?: Duration | undefined
  because?: readonly Reason[]
  /** statements of records on which it rests, beside usual practice */
  sources?: readonly { source: string }[]
  cautions?: readonly string[]
  aside?: boolean
  weighBack?: boolean
}

const PRACTICE = { source: 'practice' }

/** A step with what it leaves unsaid filled in; whatever rests on no record rests on usual practice. */
export function draft(written: Written): Draft {
  const { adds = [], alsoAdds = [], uses = [], after = [], cautions = [], because = [], temp, time } = written
  return {
    id: written.id,
    title: written.title,
    text: written.text,
    why: written.why,
    adds: [...adds.map(({ key }) => key), ...alsoAdds],
    uses: [...uses],
    after: [...after],
    ...(temp && { temp_c: temp }),
    ...(time && { time }),
    because: [...because],
    sources: sourcesOf(...(written.sources ?? []), PRACTICE),
    cautions: [...new Set(cautions)],
    isMain: written.aside !== true,
    ...(written.weighBack === true && { weighBack: true }),
  }
}

/** Names of lines as people read them: "a, b and c", each once. */
export const named = (items: readonly Placed[], say: Say): string =>
  say.list([...new Set(items.map(({ line }) => nameOf(line.subject)))], 'and')

export const sentence = (...parts: readonly string[]): string => parts.filter((part) => part !== '').join(' ')

/** A heat as the temperature of a step. */
export const tempOf = (heat: Heat): Temperature => ({ min: heat.min_c, max: heat.max_c, because: heat.because })

/** A temperature that rests on no claim. */
export const usualTemp = (range: { min?: number; max?: number }, why: string, say: Say): Temperature => ({
  ...range,
  because: [practice(why, say)],
})

type Span = readonly [min: number, max: number, unit: Duration['unit']]

/** A time that rests on no claim. */
export const usualTime = ([min, max, unit]: Span, why: string, say: Say): Duration => ({
  min,
  max,
  unit,
  because: [practice(why, say)],
})

/** Id of the step that holds the batch so far. */
export const held = (before: readonly Draft[]): string[] => {
  const main = before.filter(({ isMain, adds, uses }) => isMain && (adds.length > 0 || uses.length > 0)).at(-1)
  return main ? [main.id] : []
}

/** Mixtures of these steps that are made and still stand beside the batch. */
export const standing = (before: readonly Draft[], ...ids: string[]): string[] =>
  ids.filter((id) => before.some((step) => step.id === id) && !before.some(({ uses }) => uses.includes(id)))
