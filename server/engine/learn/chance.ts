/** A source of numbers in [0, 1) that a seed fixes wholly. */
export type Chance = () => number

/** FNV-1a over UTF-16 units, 32 bits. Basis and prime as the algorithm's authors fixed them (from memory). */
export function hashOf(text: string, basis = 0x811c9dc5): number {
  let hash = basis
  for (let i = 0; i < text.length; i += 1) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193)
  return hash >>> 0
}

/** Sixteen hex digits; good enough to tell some thousand items apart. */
export const longHashOf = (text: string): string =>
  [hashOf(text), hashOf(text, 0x9e3779b9)].map((half) => half.toString(16).padStart(8, '0')).join('')

/** Mulberry32: 32 bits of state, enough to draw questions with; never for secrets. */
export function chanceOf(seed: number): Chance {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296
  }
}

/** One of them; undefined of none. */
export const drawOne = <T>(list: readonly T[], chance: Chance): T | undefined =>
  list[Math.floor(chance() * list.length)]

/** All of them in a drawn order. */
export function shuffled<T>(list: readonly T[], chance: Chance): T[] {
  return list
    .map((one) => ({ one, at: chance() }))
    .sort((a, b) => a.at - b.at)
    .map(({ one }) => one)
}
