/** Sentences of another language by their English text. */
export type Catalogue = ReadonlyMap<string, string>

export interface Pair {
  en: string
  de: string
}

/** An English text with its counterpart. */
export const isPair = (entry: unknown): entry is Pair => {
  const pair = entry as Partial<Record<keyof Pair, unknown>> | null
  return typeof pair?.en === 'string' && typeof pair.de === 'string'
}

/** Reads the lists of `en` and `de` that a language's files hold; the first of two equal English texts counts. */
export function catalogueOf(files: readonly unknown[]): Catalogue {
  const catalogue = new Map<string, string>()
  for (const pair of files.flatMap((file) => (Array.isArray(file) ? file.filter(isPair) : []))) {
    if (!catalogue.has(pair.en)) catalogue.set(pair.en, pair.de)
  }
  return catalogue
}
