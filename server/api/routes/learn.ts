import { ApiError } from '#api/api-error.ts'
import { learnAnswersRoute, learnItemsRoute } from '#contract/learn.ts'
import type { AnswerBody } from '#contract/learn.ts'
import { answerItem, makeItem, makeItems, withoutKey } from '#engine/index.ts'
import type { World } from '#engine/index.ts'
import { mustBeRole } from './shared.ts'
import type { App } from './shared.ts'

/** A queue takes a while to make; other callers are answered in between. */
const othersFirst = (): Promise<void> => new Promise((resolve) => void setImmediate(resolve))

/** The item that was shown. @throws ApiError 404 where the graph makes none or another, 422 for no choice of it */
function shownItem(world: World, { item: ref, id, choice }: AnswerBody) {
  mustBeRole(world, ref.role, '/item/role')
  const item = makeItem(world, ref)
  if (!item) throw new ApiError(404, 'unknown-item', 'item: the graph makes no such item', { at: '/item' })
  if (id !== undefined && id !== item.id) {
    throw new ApiError(404, 'unknown-item', `id: the graph has changed since; it now makes ${item.id} of this`, {
      at: '/id',
    })
  }
  if (item.choices.some((one) => one.id === choice)) return item
  throw new ApiError(422, 'not-a-choice', `choice: ${choice} is not one of the choices of this item`, { at: '/choice' })
}

/** Sources that can be looked up, as they are printed. */
const citedIn = ({ knowledge }: World, ids: readonly string[]) =>
  ids.flatMap((id) => {
    const source = knowledge.sources.get(id)
    return source ? [{ id, title: source.title, locator: source.locator }] : []
  })

export function learnRoutes(app: App, world: World): void {
  const graphVersion = world.knowledge.version
  app.route({
    ...learnItemsRoute,
    handler: async ({ body }) => {
      body.roles?.forEach((role, index) => {
        mustBeRole(world, role, `/roles/${index}`)
      })
      const items = []
      for (const item of makeItems(world, body)) {
        items.push(withoutKey(item))
        await othersFirst()
      }
      return { items, graphVersion }
    },
  })
  app.route({
    ...learnAnswersRoute,
    handler: async ({ body }) => {
      const answer = answerItem(shownItem(world, body), body.choice)
      return { ...answer, cited: citedIn(world, answer.sources), graphVersion }
    },
  })
}
