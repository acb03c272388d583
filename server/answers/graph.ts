import { graphRoute, wholeGraphRoute } from '#contract/graph.ts'
import { graphAround, RELATIONS, wholeGraph } from '#engine/index.ts'
import type { RelationName, World } from '#engine/index.ts'
import { answer } from './answer.ts'
import { ApiError } from './api-error.ts'
import { knownId, mustBeClass, mustBeRole } from './guards.ts'
import { limitOf, wordsOf } from './query.ts'

const isRelation = (word: string): word is RelationName => RELATIONS.some((relation) => relation === word)

/** @throws ApiError 400 that names the word which is no relation */
export function relationsOf(text: string | undefined): { relations: RelationName[] } | undefined {
  const words = wordsOf(text)
  if (words === undefined) return undefined
  const strange = words.find((word) => !isRelation(word))
  if (strange !== undefined) {
    const message = `relations: ${strange.slice(0, 60)} is none of ${RELATIONS.join(', ')}`
    throw new ApiError(400, 'bad-request', message, { at: '/relations' })
  }
  return { relations: words.filter(isRelation) }
}

export const STEPS = { '1': 1, '2': 2, '3': 3 } as const

/** @throws ApiError 404 when nothing has this key */
export function mustBeNode(world: World, around: string): void {
  if (world.graph.hasNode(around)) return
  if (around.startsWith('role:')) mustBeRole(world, around.slice(5), '/around')
  else if (around.startsWith('class:')) mustBeClass(world, around.slice(6), '/around')
  else knownId(world, around, '/around')
}

export const graphAnswer = answer(graphRoute, ({ world }, { query }) => {
  const { around, steps = '1', relations, limit, after } = query
  const page = { ...limitOf(limit), ...(after !== undefined && { after }) }
  mustBeNode(world, around)
  const part = graphAround(world, { around, steps: STEPS[steps], ...relationsOf(relations), ...page })
  if (!part) throw new ApiError(400, 'bad-request', 'after: is no node of this part', { at: '/after' })
  return { ...part, graphVersion: world.knowledge.version }
})

export const wholeGraphAnswer = answer(wholeGraphRoute, ({ world }) => ({
  ...wholeGraph(world),
  graphVersion: world.knowledge.version,
}))
