import { namesIn } from '#engine/knowledge/selector.ts'
import type { Ingredient } from '#engine/model/records.ts'
import type { Lint, Vocabulary } from './lint.ts'

/** Nodes that an ingredient's record joins it to. */
function neighboursOf(ingredient: Ingredient): string[] {
  const selected = [...ingredient.clashes, ...ingredient.boostedBy, ...ingredient.inactivatedBy].map((one) => one.with)
  const named = [...selected, ...ingredient.needs.flatMap(({ any_of }) => any_of)].flatMap((selector) => {
    const { classes, roles, ids } = namesIn(selector)
    return [...ids, ...roles.map((id) => `role:${id}`), ...classes.map((id) => `class:${id}`)]
  })
  const others = [...ingredient.standsFor, ...ingredient.notFor].map((one) => one.for)
  return [
    ...ingredient.roles.map(({ role }) => `role:${role}`),
    ...[...ingredient.classes].map((id) => `class:${id}`),
    ...ingredient.madeOf.map((part) => part.ingredient),
    ...named,
    ...others,
  ]
}

function edgesOf({ ingredients, roles, limits }: Vocabulary): [string, string][] {
  return [
    ...[...ingredients.values()].flatMap((one) => neighboursOf(one).map((to): [string, string] => [one.id, to])),
    ...[...roles.values()].flatMap(({ id, broader }): [string, string][] =>
      broader === undefined ? [] : [[`role:${id}`, `role:${broader}`]],
    ),
    ...limits.flatMap(({ id, members, memberClasses }) =>
      [...Object.keys(members), ...memberClasses.map((name) => `class:${name}`)].map((to): [string, string] => [
        `limit:${id}`,
        to,
      ]),
    ),
  ]
}

/** All nodes that can be walked to from one of them. */
function reachedFrom(start: string, edges: readonly [string, string][]): Set<string> {
  const next = new Map<string, string[]>()
  const join = (from: string, to: string): void => {
    const known = next.get(from)
    if (known) known.push(to)
    else next.set(from, [to])
  }
  for (const [from, to] of edges) {
    join(from, to)
    join(to, from)
  }
  const reached = new Set([start])
  for (const node of reached) for (const other of next.get(node) ?? []) reached.add(other)
  return reached
}

const PATH: Record<string, string> = { role: 'roles.yaml/roles/', class: 'classes.yaml/classes/' }

/** Guards against a record, role or class that no relation leads to: nobody who walks the graph would ever see it. */
export const nodeIsReached: Lint = (_raw, vocabulary) => {
  const nodes = [
    ...vocabulary.ingredients.keys(),
    ...[...vocabulary.roles.keys()].map((id) => `role:${id}`),
    ...[...vocabulary.classes.keys()].map((id) => `class:${id}`),
  ]
  const mostUsed = [...vocabulary.ingredients.values()][0]?.roles[0]?.role
  if (mostUsed === undefined) return []
  const reached = reachedFrom(`role:${mostUsed}`, edgesOf(vocabulary))
  return nodes
    .filter((node) => !reached.has(node))
    .map((node) => {
      const [kind = '', id = ''] = node.split(':')
      return { path: id === '' ? `ingredients/${node}.yaml` : `${PATH[kind]}${id}`, message: 'no relation leads to it' }
    })
}
