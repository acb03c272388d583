/** Arguments with which every function of words is called: numbers where it counts, short names where it names. */
const TRIES: readonly (readonly unknown[])[] = [
  ['X', 'Y', 'Z', 'W', 'V'],
  [1, 1, 1],
  [2, 3, 4],
]

const isObject = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null

/** What it says to each of the tries; nothing where it takes another kind of argument. */
const called = (say: (...args: unknown[]) => unknown): string[] =>
  TRIES.map((args) => {
    try {
      const said = say(...args)
      return typeof said === 'string' ? said : ''
    } catch {
      return '' // the compiler holds that both languages take the same
    }
  })

/** Every text of a group by its path; a function gives what it says to plain arguments. */
export function leavesOf(value: unknown, path = ''): [path: string, said: string][] {
  if (typeof value === 'string') return [[path, value]]
  if (typeof value === 'function') {
    return called(value as (...args: unknown[]) => unknown).map((said, at) => [`${path}(${at})`, said])
  }
  if (!isObject(value)) return []
  return Object.entries(value).flatMap(([key, below]) => leavesOf(below, path === '' ? key : `${path}.${key}`))
}

/** Words in it that are of a language: arguments, figures, units and signs are not. */
export const wordsIn = (said: string): string[] =>
  (said.match(/\p{L}{2,}/gu) ?? []).filter((word) => !/^(?:pH|NaN|min|kg|PDF|CSV|Infinity)$/.test(word))
