import type { RawFile } from './raw.ts'
import { isObject } from './expand-claims.ts'
import { normalName, soundOf, squashed } from './normal-name.ts'

/** An everyday word with several readings: the person is asked. */
export interface EverydayWord {
  choices: string[]
  /** choices beside those listed: who plays this role or belongs to this class */
  role?: string
  class?: string
  why: string
}

/** What people type beside the names of records. From graph-data/names.yaml, keys in normal form. */
export interface WordData {
  /** squashed text → what it may mean */
  ask: ReadonlyMap<string, EverydayWord>
  /** the same texts spelt by sound → squashed text */
  askBySound: ReadonlyMap<string, string>
  /** squashed text → the one thing meant, with a remark */
  means: ReadonlyMap<string, { take: string; note: string }>
  /** squashed text → why it is no ingredient of the inventory */
  notHere: ReadonlyMap<string, string>
  /** names of inventory entries without a record, by id */
  names: ReadonlyMap<string, readonly string[]>
  /** foreign word → English word */
  translate: ReadonlyMap<string, string>
  /** second half of a German compound → English word */
  compoundEnds: readonly (readonly [string, string])[]
  /** second botanical name of a plant → name the inventory uses */
  genus: readonly (readonly [string, string])[]
  /** words for how a thing is supplied, which do not change what it is */
  supply: ReadonlySet<string>
}

type Loose = Record<string, unknown>

const objects = (value: unknown): Loose[] => (Array.isArray(value) ? value.filter(isObject) : [])
const words = (value: unknown): string[] =>
  Array.isArray(value) ? value.map(String) : typeof value === 'string' ? value.split(/\s*;\s*/) : []
const pairs = (value: unknown): [string, string][] =>
  isObject(value) ? Object.entries(value).map(([key, text]) => [normalName(key), normalName(String(text))]) : []

const keyed = <T>(list: Loose[], make: (entry: Loose) => T): Map<string, T> =>
  new Map(
    list.flatMap((entry) => {
      const value = make(entry)
      return words(entry['text']).map((text) => [squashed(normalName(text)), value] as const)
    }),
  )

export function expandWords(file: RawFile): WordData {
  const data = isObject(file.data) ? file.data : {}
  const ask = keyed(objects(data['ask']), (entry): EverydayWord => ({
    choices: words(entry['choices']),
    ...(typeof entry['role'] === 'string' && { role: entry['role'] }),
    ...(typeof entry['class'] === 'string' && { class: entry['class'] }),
    why: String(entry['why'] ?? ''),
  }))
  return {
    ask,
    askBySound: new Map([...ask.keys()].map((text) => [soundOf(text), text])),
    means: keyed(objects(data['means']), (entry) => ({
      take: String(entry['take']),
      note: String(entry['note'] ?? ''),
    })),
    notHere: keyed(objects(data['not_here']), (entry) => String(entry['why'] ?? '')),
    names: new Map(
      isObject(data['names']) ? Object.entries(data['names']).map(([id, list]) => [id, words(list)] as const) : [],
    ),
    translate: new Map(pairs(data['translate'])),
    compoundEnds: pairs(data['compound_ends']).sort((a, b) => b[0].length - a[0].length || (a[0] < b[0] ? -1 : 1)),
    genus: pairs(data['genus']).sort((a, b) => b[0].length - a[0].length || (a[0] < b[0] ? -1 : 1)),
    supply: new Set(words(data['supply']).map(normalName)),
  }
}
