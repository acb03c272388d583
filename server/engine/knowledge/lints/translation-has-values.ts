import type { Problem } from '#engine/model/records.ts'
import { isPair } from '#engine/words/catalogue.ts'
import type { RawFile } from '#engine/knowledge/raw.ts'
import type { Lint } from './lint.ts'

/** Places for values in a sentence, each once, in order: "{1} {2}". */
const placesOf = (text: string): string => [...new Set(text.match(/\{\d+\}/g) ?? [])].sort().join(' ')

const faultsOfFile = ({ path, data }: RawFile): Problem[] =>
  (Array.isArray(data) ? data : []).flatMap((pair, at) => {
    if (!isPair(pair)) return [{ path: `${path}/${at}`, message: 'no pair of en and de' }]
    const [asked, said] = [placesOf(pair.en), placesOf(pair.de)]
    const message = `says the values "${said}" where the English has "${asked}"`
    return asked === said ? [] : [{ path: `${path}/${at}`, message }]
  })

/**
 * Guards against a sentence that loses or invents a value in another language: a figure would be missing from a
 * warning. A doubt, so that the start need not read every language.
 */
export const translationHasValues: Lint = ({ languages = {} }) => Object.values(languages).flat().flatMap(faultsOfFile)
