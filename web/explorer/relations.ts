/** Relations of the graph in the order in which they are read. */
export const RELATIONS = [
  'plays',
  'is-a',
  'broader',
  'confused-with',
  'stands-in-for',
  'does-not-stand-in-for',
  'made-of',
  'needs',
  'boosted-by',
  'inactivated-by',
  'clashes-with',
  'limited-by',
  'holds-with',
] as const
export type Relation = (typeof RELATIONS)[number]

/** Shown unless switched: holds-with joins nearly all to all. */
export const USUAL: readonly Relation[] = RELATIONS.filter((relation) => relation !== 'holds-with')

export const isRelation = (word: string): word is Relation => RELATIONS.some((relation) => relation === word)

export type Direction = 'out' | 'in'

/** Names by which a way tells a relation from its other end. */
const INVERSE: Readonly<Record<string, Relation>> = { 'played-by': 'plays', narrower: 'broader' }

/** Relations that read the same from both ends: they make one group. */
const BOTH_WAYS: readonly string[] = ['confused-with', 'clashes-with', 'holds-with']

/** A relation under its own name, and from which end it is read. */
export function readFrom(name: string): { relation: string; direction: Direction } {
  const inverse = INVERSE[name]
  return inverse ? { relation: inverse, direction: 'in' } : { relation: name, direction: 'out' }
}

export const directionOf = (relation: string, isFrom: boolean): Direction =>
  isFrom || BOTH_WAYS.includes(relation) ? 'out' : 'in'

/** What a relation is about: it decides the colour of its line. */
export const FAMILY: Readonly<Record<string, 'job' | 'kind' | 'stand-in' | 'help' | 'harm' | 'law' | 'hold'>> = {
  plays: 'job',
  broader: 'job',
  'confused-with': 'job',
  'is-a': 'kind',
  'made-of': 'kind',
  'stands-in-for': 'stand-in',
  needs: 'help',
  'boosted-by': 'help',
  'does-not-stand-in-for': 'harm',
  'inactivated-by': 'harm',
  'clashes-with': 'harm',
  'limited-by': 'law',
  'holds-with': 'hold',
}
