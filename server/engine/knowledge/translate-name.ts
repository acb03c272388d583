import type { WordData } from './word-data.ts'

/** A word of another language, also as a German compound: "mandelol" is almond and oil. */
function translateWord(word: string, words: WordData, depth = 0): string | null {
  const known = words.translate.get(word)
  if (known !== undefined) return known
  for (const [end, english] of words.compoundEnds) {
    if (!word.endsWith(end) || word.length < end.length + 3) continue
    const head = word.slice(0, -end.length)
    const first =
      depth < 2
        ? (translateWord(head, words, depth + 1) ?? translateWord(head.replace(/(?:en|n|s|e)$/, ''), words, depth + 1))
        : null
    if (first !== null) return `${first} ${english}`
  }
  return null
}

/** Endings by which Romance and German chemical words differ from the English ones. */
function byEnding(word: string): string {
  if (word.length < 5) return word
  return word
    .replace(/(?:ico|ica|ique|isch)$/, 'ic')
    .replace(/(?:ilico|ilique)$/, 'ylic')
    .replace(/^est(?=ear)/, 'st')
    .replace(/ato$/, 'ate')
    .replace(/([bcdfglmnprstz])at$/, '$1ate')
    .replace(/uro$/, 'ide')
    .replace(/eto$/, 'ide')
    .replace(/([a-z])ure$/, '$1ide')
    .replace(/(?:ina|ine)$/, 'in')
    .replace(/eno$/, 'ene')
    .replace(/(?:ona|on)$/, 'one')
    .replace(/osa$/, 'ose')
}

/** English form of a name in German, Spanish, French or Portuguese; null when no word of it was recognised. */
export function translated(normal: string, words: WordData): string | null {
  let recognised = false
  const out = normal
    .replace(/\b[dl](?=(?:huile|[aeiouh][a-z]{3}))/g, (letter, at: number) =>
      words.translate.has(normal.slice(at).split(' ')[0] ?? '') ? letter : '',
    )
    .split(' ')
    .map((word) => {
      const english = translateWord(word, words)
      if (english !== null) {
        recognised ||= english !== word
        return english
      }
      return byEnding(word)
    })
    .filter((word) => word !== '')
  return recognised ? out.join(' ') : null
}
