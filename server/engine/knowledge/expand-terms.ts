import { isObject } from './expand-claims.ts'
import type { RawFile } from './raw.ts'

/** Whose statements are given out, and on what terms. */
export interface Attribution {
  id: string
  text: string
  /** sources whose statements it is about */
  sources: readonly string[]
  /** what stands beside each of them in a table */
  credit: string
  /** given with its one ingredient, never in a table of many */
  singleOnly: boolean
}

/** Terms under which the data are given out. From graph-data/terms.yaml. */
export interface Terms {
  licence: { id: string; title: string; link: string }
  holder: string
  covers: string
  /** beside a statement that no attribution is about */
  credit: string
  attributions: readonly Attribution[]
  caution: string
}

type Loose = Record<string, unknown>

const text = (value: unknown): string => (typeof value === 'string' ? value : '')

const attributionOf = (entry: Loose): Attribution => ({
  id: text(entry['id']),
  text: text(entry['text']),
  sources: Array.isArray(entry['sources']) ? entry['sources'].map(String) : [],
  credit: text(entry['credit']),
  singleOnly: entry['single_only'] === true,
})

/** @param file terms.yaml; data made by hand have none, and state no terms then */
export function expandTerms(file: RawFile | undefined): Terms {
  const data = isObject(file?.data) ? file.data : {}
  const licence = isObject(data['licence']) ? data['licence'] : {}
  const attributions = Array.isArray(data['attributions']) ? data['attributions'].filter(isObject) : []
  return {
    licence: { id: text(licence['id']), title: text(licence['title']), link: text(licence['link']) },
    holder: text(data['holder']),
    covers: text(data['covers']),
    credit: text(data['credit']),
    attributions: attributions.map(attributionOf),
    caution: text(data['caution']),
  }
}

/** The attribution under which a statement of a source falls; several sources stand parted by semicolons. */
export const attributionFor = ({ attributions }: Terms, source: string): Attribution | undefined => {
  const ids = source.split(/\s*;\s*/)
  return attributions.find(({ sources }) => sources.some((one) => ids.includes(one)))
}

/** The terms as the sentences that a download carries. */
export const termsTexts = ({ covers, licence, holder, attributions, caution }: Terms): string[] => [
  `${covers}: ${licence.title}, ${holder}.`,
  ...attributions.map((one) => one.text),
  caution,
]
