import { likeness } from './edit-distance.ts'
import { bonesOf, soundOf, squashed, wordBag } from './normal-name.ts'

export interface NearName {
  name: string
  /** likeness as written, words in any order, 0 to 1 */
  written: number
  /** the same, or by sound where that is nearer */
  score: number
  /** differs in vowels, doubled letters or spelling by sound only */
  alike: boolean
}

export interface NearNames {
  /** names like the text, the likest first */
  search(normal: string): NearName[]
}

const CANDIDATES = 50
/** Share of letter runs in common below which a name is not looked at. */
const LEAST_DICE = 0.25
const BASE = 37

/** Text as the index sees it: by sound, no spaces, so that spacing and mishearing cost little. */
const indexed = (normal: string): string => squashed(soundOf(squashed(normal)))

function codeOf(text: string, at: number): number {
  let code = 0
  for (let i = at; i < at + 3; i++) {
    const letter = text.charCodeAt(i)
    const digit = Number.isNaN(letter) ? 0 : letter >= 97 ? letter - 96 : letter >= 48 ? letter - 21 : 0
    code = code * BASE + digit
  }
  return code
}

/** Codes of all runs of three letters, ends marked, each once. */
function trigramsOf(text: string): Set<number> {
  const padded = `  ${text} `
  const out = new Set<number>()
  for (let i = 0; i + 3 <= padded.length; i++) out.add(codeOf(padded, i))
  return out
}

interface RunTable {
  /** runs in each form */
  sizes: Uint16Array
  /** run → where its list begins */
  starts: Uint32Array
  /** places of the forms that hold a run, run after run */
  lists: Uint32Array
}

function tableOf(forms: readonly string[]): RunTable {
  const sizes = new Uint16Array(forms.length)
  const starts = new Uint32Array(BASE ** 3 + 1)
  const runs = forms.map(trigramsOf)
  for (const [index, set] of runs.entries()) {
    sizes[index] = set.size
    for (const code of set) starts[code + 1] = (starts[code + 1] ?? 0) + 1
  }
  for (let i = 1; i < starts.length; i++) starts[i] = (starts[i] ?? 0) + (starts[i - 1] ?? 0)
  const lists = new Uint32Array(starts[starts.length - 1] ?? 0)
  const filled = starts.slice()
  for (const [index, set] of runs.entries()) {
    for (const code of set) {
      const at = filled[code] ?? 0
      lists[at] = index
      filled[code] = at + 1
    }
  }
  return { sizes, starts, lists }
}

/** Names by their runs of three letters, kept in flat tables: they are many and looked through often. */
export function buildNearNames(names: readonly string[]): NearNames {
  const forms = names.map(indexed)
  const { sizes, starts, lists } = tableOf(forms)
  const shared = new Uint16Array(names.length)

  const candidates = (text: string): number[] => {
    shared.fill(0)
    const set = trigramsOf(text)
    for (const code of set) {
      const end = starts[code + 1] ?? 0
      for (let at = starts[code] ?? 0; at < end; at++) {
        const index = lists[at] ?? 0
        shared[index] = (shared[index] ?? 0) + 1
      }
    }
    const scored: { index: number; dice: number }[] = []
    for (let index = 0; index < shared.length; index++) {
      const both = shared[index] ?? 0
      if (both === 0) continue
      const dice = (2 * both) / (set.size + (sizes[index] ?? 0))
      if (dice >= LEAST_DICE) scored.push({ index, dice })
    }
    scored.sort((a, b) => b.dice - a.dice || a.index - b.index)
    return scored.slice(0, CANDIDATES).map((one) => one.index)
  }

  const ordered: (string | undefined)[] = []
  /** Letters of a name with its words in order; made when first needed. */
  const bagOf = (index: number): string => (ordered[index] ??= squashed(wordBag(names[index] ?? '')))

  return {
    search(normal) {
      const text = indexed(normal)
      const flat = squashed(normal)
      const bag = squashed(wordBag(normal))
      const bones = bonesOf(flat)
      const soundBones = bonesOf(text)
      const out = candidates(text).map((index) => {
        const name = names[index] ?? ''
        const letters = squashed(name)
        const sound = forms[index] ?? ''
        const written = Math.max(likeness(flat, letters), likeness(bag, bagOf(index)))
        const alike = bones === bonesOf(letters) || soundBones === bonesOf(sound)
        return { name, written, score: Math.max(written, likeness(text, sound)), alike }
      })
      return out.sort((a, b) => b.score - a.score || (a.name < b.name ? -1 : 1))
    },
  }
}
