import { learnAnswersRoute, learnItemsRoute } from '#contract/learn.ts'
import type { AnswerBody } from '#contract/learn.ts'
import { answerItem, makeItem, makeItems, withoutKey } from '#engine/index.ts'
import type { World } from '#engine/index.ts'
import { answer } from './answer.ts'
import { ApiError } from './api-error.ts'
import { mustBeRole } from './guards.ts'

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

export const learnAnswers = [
  answer(learnItemsRoute, async ({ world, breathe }, { body }) => {
    body.roles?.forEach((role, index) => {
      mustBeRole(world, role, `/roles/${index}`)
    })
    const items = []
    for (const item of makeItems(world, body)) {
      items.push(withoutKey(item))
      await breathe() // a queue takes a while to make
    }
    return { items, graphVersion: world.knowledge.version }
  }),
  answer(learnAnswersRoute, ({ world }, { body }) => {
    const judged = answerItem(shownItem(world, body), body.choice)
    return { ...judged, cited: citedIn(world, judged.sources), graphVersion: world.knowledge.version }
  }),
]
