import { likeness } from './edit-distance.ts'
import { buildLetterRuns } from './letter-runs.ts'
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

/** Text as the index sees it: by sound, no spaces, so that spacing and mishearing cost little. */
const indexed = (normal: string): string => squashed(soundOf(squashed(normal)))

/** The forms of a name that a text is compared with. */
interface Forms {
  letters: string
  /** letters with the words in alphabetic order */
  bag: string
  bones: string
  soundBones: string
}

/** Names by what they look and sound like. */
export function buildNearNames(names: readonly string[]): NearNames {
  const sounds = names.map(indexed)
  const runs = buildLetterRuns(sounds)
  const known: (Forms | undefined)[] = []

  /** Made when first needed: most names are never near anything typed. */
  const formsOf = (place: number): Forms => {
    const made = known[place]
    if (made) return made
    const name = names[place] ?? ''
    const letters = squashed(name)
    const bag = squashed(wordBag(name))
    return (known[place] = { letters, bag, bones: bonesOf(letters), soundBones: bonesOf(sounds[place] ?? '') })
  }

  return {
    search(normal) {
      const text = indexed(normal)
      const flat = squashed(normal)
      const bag = squashed(wordBag(normal))
      const bones = bonesOf(flat)
      const soundBones = bonesOf(text)
      const out = runs.sharing(text, CANDIDATES).map((place) => {
        const forms = formsOf(place)
        const written = Math.max(likeness(flat, forms.letters), likeness(bag, forms.bag))
        const alike = bones === forms.bones || soundBones === forms.soundBones
        return {
          name: names[place] ?? '',
          written,
          score: Math.max(written, likeness(text, sounds[place] ?? '')),
          alike,
        }
      })
      const apart = ({ name }: NearName): number => Math.abs(name.length - normal.length)
      return out.sort((a, b) => b.score - a.score || apart(a) - apart(b) || (a.name < b.name ? -1 : 1))
    },
  }
}
