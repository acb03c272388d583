import { swapSheetRoute, swapsRoute } from '#contract/swaps.ts'
import { findSwaps, swapSheetLines } from '#engine/index.ts'
import type { Formula, SheetLine, World } from '#engine/index.ts'
import { answer } from './answer.ts'
import { ApiError } from './api-error.ts'
import { knownId, knownWishes, soundFormula } from './guards.ts'

/** Record ids of named lines, each once. @throws ApiError 404 for an unknown id, 422 for one that is no line */
function namedLines(
  world: World,
  formula: Formula,
  { key, ids: named }: { key: string; ids: readonly string[] },
): string[] {
  const ids = named.map((id, index) => {
    const at = `/${key}/${index}`
    const known = knownId(world, id, at)
    if (formula.lines.some(({ ingredient }) => ingredient === known)) return known
    throw new ApiError(422, 'not-in-formula', `${at.slice(1)}: ${id} is not a line of the formula`, { at })
  })
  return [...new Set(ids)]
}

export const swapAnswers = [
  answer(swapsRoute, ({ world }, { body }) => {
    const formula = soundFormula(world, body.formula)
    const missing = namedLines(world, formula, { key: 'missing', ids: body.missing })
    const wishes = body.wishes && { wishes: knownWishes(world, body.wishes) }
    const about = body.about?.map((id, index) => knownId(world, id, `/about/${index}`))
    const { limit } = body
    return findSwaps(world, {
      formula,
      missing,
      ...wishes,
      ...(about && { about }),
      ...(limit !== undefined && { limit }),
    })
  }),
  answer(swapSheetRoute, async ({ world, breathe }, { body }) => {
    const formula = soundFormula(world, body.formula)
    const wishes = body.wishes && { wishes: knownWishes(world, body.wishes) }
    const only = body.lines && { lines: namedLines(world, formula, { key: 'lines', ids: body.lines }) }
    const lines: SheetLine[] = []
    for (const line of swapSheetLines(world, { formula, ...wishes, ...only })) {
      lines.push(line)
      await breathe() // a long sheet must not keep everybody else waiting
    }
    return { lines, graphVersion: world.knowledge.version }
  }),
]
