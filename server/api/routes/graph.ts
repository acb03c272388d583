import { ApiError } from '#api/api-error.ts'
import { graphRoute } from '#contract/graph.ts'
import { graphAround, RELATIONS } from '#engine/index.ts'
import type { RelationName, World } from '#engine/index.ts'
import { limitOf, wordsOf } from './query.ts'
import { knownId, mustBeClass, mustBeRole } from './shared.ts'
import type { App } from './shared.ts'

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

export function graphRoutes(app: App, world: World): void {
  app.route({
    ...graphRoute,
    handler: async ({ query: { around, steps = '1', relations, limit, after } }) => {
      const page = { ...limitOf(limit), ...(after !== undefined && { after }) }
      mustBeNode(world, around)
      const part = graphAround(world, { around, steps: STEPS[steps], ...relationsOf(relations), ...page })
      if (!part) throw new ApiError(400, 'bad-request', 'after: is no node of this part', { at: '/after' })
      return { ...part, graphVersion: world.knowledge.version }
    },
  })
}
