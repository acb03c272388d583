import { attributionFor } from '#engine/knowledge/expand-terms.ts'
import { normalName } from '#engine/knowledge/name-index.ts'
import type { Source } from '#engine/model/records.ts'
import { kindOfSource, linkOfSource, yearOfSource } from './source-kind.ts'
import type { SourceKind } from './source-kind.ts'
import { usesBySource } from './source-uses.ts'
import type { SourceUse } from './source-uses.ts'
import type { World } from './world.ts'

export interface SourceShort {
  id: string
  title: string
  kind: SourceKind
  year: number | null
  locator: string
  link: string | null
  /** A standard or original paper … D supplier page, M memory; as the list states it */
  grade: string
  /** statements that rest on it */
  statements: number
}

export interface SourceDescription extends SourceShort {
  note: string
  /** terms under which its statements are given out */
  licence: { title: string; text: string }
  /** records with a statement that rests on it */
  ingredients: number
  uses: SourceUse[]
  next: string | null
  total: number
  /** its values are given with their one ingredient only, never in a table of many */
  singleOnly: boolean
}

const USUAL_LIMIT = 50

const shortOf = (world: World, source: Source): SourceShort => ({
  id: source.id,
  title: source.title,
  kind: kindOfSource(source),
  year: yearOfSource(source),
  locator: source.locator,
  link: linkOfSource(source),
  grade: source.grade,
  statements: usesBySource(world).get(source.id)?.length ?? 0,
})

export interface SourceQuery {
  text?: string
  kind?: SourceKind
  limit?: number
  /** last id of the page before */
  after?: string
}

/** A page of the sources, by id; words must begin words of id, title or place. */
export function listSources(world: World, { text = '', kind, limit = USUAL_LIMIT, after }: SourceQuery) {
  const words = normalName(text)
    .split(' ')
    .filter((word) => word !== '')
  const fits = ({ id, title, locator, kind: own }: SourceShort): boolean => {
    const padded = ` ${normalName(`${id} ${title} ${locator}`)}`
    return (kind === undefined || own === kind) && words.every((word) => padded.includes(` ${word}`))
  }
  const found = [...world.knowledge.sources.values()]
    .map((source) => shortOf(world, source))
    .filter(fits)
    .sort((a, b) => (a.id < b.id ? -1 : 1))
  const rest = after === undefined ? found : found.filter(({ id }) => id > after)
  const page = rest.slice(0, limit)
  return { sources: page, next: rest.length > page.length ? (page.at(-1)?.id ?? null) : null, total: found.length }
}

function licenceOf({ knowledge: { terms } }: World, id: string): SourceDescription['licence'] {
  const own = attributionFor(terms, id)
  const rest = terms.attributions.find(({ id: one }) => one === 'others')
  return { title: own?.credit ?? '', text: own?.text ?? rest?.text ?? '' }
}

/** The value of a statement that may only be given with its ingredient is left to the page of that. */
const withoutValue = ({ claim: _, ...use }: SourceUse): SourceUse => use

/**
 * One source with a page of what rests on it; null when there is no such source.
 * @param after how many statements were on the pages before
 */
export function describeSource(world: World, id: string, limit = USUAL_LIMIT, after = 0): SourceDescription | null {
  const source = world.knowledge.sources.get(id)
  if (!source) return null
  const all = usesBySource(world).get(id) ?? []
  const singleOnly = attributionFor(world.knowledge.terms, id)?.singleOnly === true
  const page = all.slice(after, after + limit)
  const end = after + page.length
  return {
    ...shortOf(world, source),
    note: source.note,
    licence: licenceOf(world, id),
    ingredients: new Set(all.flatMap(({ ingredient }) => ingredient ?? [])).size,
    uses: singleOnly ? page.map(withoutValue) : page,
    next: end < all.length ? String(end) : null,
    total: all.length,
    singleOnly,
  }
}
