import { pick, random, shuffled } from './random.ts'

export const KINDS = ['exact', 'prefix', 'typo1', 'typo2', 'swapped', 'sound'] as const
export type Kind = (typeof KINDS)[number]

export interface NameQuery {
  kind: Kind
  text: string
  /** place of the name meant */
  meant: number
}

const LETTERS = [...'abcdefghijklmnopqrstuvwxyz']
const SHORTEST = 6
const LONGEST = 40
/** A beginning is cut where no more names than this go on from it. */
const MOST_COMPLETIONS = 5

/** One letter left out, put in, changed or swapped with the next. */
function mistyped(rnd: () => number, text: string): string {
  const at = Math.floor(rnd() * text.length)
  const what = rnd()
  if (what < 0.25) return text.slice(0, at) + text.slice(at + 1)
  if (what < 0.5) return text.slice(0, at) + pick(rnd, LETTERS) + text.slice(at)
  if (what < 0.75) return text.slice(0, at) + pick(rnd, LETTERS) + text.slice(at + 1)
  const first = Math.min(at, text.length - 2)
  return text.slice(0, first) + text[first + 1]! + text[first]! + text.slice(first + 2)
}

/** What is written for one another by ear. */
const SOUNDS = (
  'ph f, y i, ae e, th t, x ks, qu kw, ch k, c k, ei ie, oe e, z s, ll l, tt t, ss s, mm m, ine in, yl ile, ' +
  'eu u, s z, i ee, u oo, o oh'
)
  .split(', ')
  .map((pair) => pair.split(' ') as [string, string])

/** Up to two places written by ear. */
function misheard(rnd: () => number, text: string): string {
  const fitting = SOUNDS.filter(([from]) => text.includes(from))
  let out = text
  for (const [from, to] of shuffled(rnd, fitting).slice(0, 2)) {
    const at = out.indexOf(from)
    if (at >= 0) out = out.slice(0, at) + to + out.slice(at + from.length)
  }
  return out
}

function reordered(rnd: () => number, text: string): string | null {
  const words = text.split(' ')
  return words.length < 2 ? null : shuffled(rnd, words).join(' ')
}

/** Number of names of an ascending list that begin so. */
function completions(sorted: readonly string[], start: string): number {
  const firstAt = (text: string): number => {
    let low = 0
    let high = sorted.length
    while (low < high) {
      const middle = (low + high) >> 1
      if (sorted[middle]! < text) low = middle + 1
      else high = middle
    }
    return low
  }
  return firstAt(`${start}\uffff`) - firstAt(start)
}

/** The shortest beginning from which few names go on. */
function beginningOf(sorted: readonly string[], name: string): string | null {
  for (let length = 4; length < name.length; length++) {
    if (completions(sorted, name.slice(0, length)) <= MOST_COMPLETIONS) return name.slice(0, length)
  }
  return null
}

/** Seeded questions about names in lower case, as many of each kind; no question is itself another name. */
export function makeQueries(names: readonly string[], count = 2000, seed = 20): NameQuery[] {
  const rnd = random(seed)
  const known = new Set(names)
  const sorted = [...names].sort()
  const usable = names.flatMap((name, meant) =>
    name.length >= SHORTEST && name.length <= LONGEST ? [{ name, meant }] : [],
  )
  const write: Record<Kind, (name: string) => string | null> = {
    exact: (name) => name,
    prefix: (name) => beginningOf(sorted, name),
    typo1: (name) => mistyped(rnd, name),
    typo2: (name) => mistyped(rnd, mistyped(rnd, name)),
    swapped: (name) => reordered(rnd, name),
    sound: (name) => misheard(rnd, name),
  }
  const out: NameQuery[] = []
  while (out.length < count) {
    const kind = KINDS[out.length % KINDS.length]!
    const { name, meant } = pick(rnd, usable)
    const text = write[kind](name)
    if (text === null || text === '' || (kind !== 'exact' && known.has(text))) continue
    out.push({ kind, text, meant })
  }
  return shuffled(rnd, out)
}
