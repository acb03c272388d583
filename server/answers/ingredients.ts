import type { Static } from 'typebox'
import { ingredientRoute, ingredientsRoute } from '#contract/ingredients.ts'
import type { IngredientsQuery } from '#contract/ingredients.ts'
import { standInsRoute } from '#contract/swaps.ts'
import { chargesOf, describeIngredient, findIngredients, standIns } from '#engine/index.ts'
import type { IngredientQuery, Subject, World } from '#engine/index.ts'
import { answer } from './answer.ts'
import { ApiError } from './api-error.ts'
import { knownId, mustBeClass, mustBeRole } from './guards.ts'
import { limitOf, wordsOf } from './query.ts'

type Query = Static<typeof IngredientsQuery>

const MOST_BESIDE = 20
const PH = { low: -1, high: 15 }
const HEAT = { low: -20, high: 250 }

/** @throws ApiError 400 for a number out of range */
function numberOf(text: string | undefined, at: string, { low, high }: typeof PH): number | undefined {
  const number = text === undefined ? undefined : Number(text)
  if (number === undefined || (number >= low && number <= high)) return number
  throw new ApiError(400, 'bad-request', `${at.slice(1)}: expected ${low} to ${high}, got ${number}`, { at })
}

/** @throws ApiError 400 for a word that the data do not know */
function mustBeWord(word: string | undefined, words: readonly string[], at: string): void {
  if (word === undefined || words.includes(word)) return
  throw new ApiError(400, 'bad-request', `${at.slice(1)}: must be one of ${words.join(', ')}`, { at })
}

/** @throws ApiError 404 for an unknown id, 400 for too many */
function besideOf(world: World, text: string | undefined): Subject[] | undefined {
  const ids = wordsOf(text)
  if (ids === undefined) return undefined
  if (ids.length > MOST_BESIDE)
    throw new ApiError(400, 'bad-request', `beside: must NOT have more than ${MOST_BESIDE} ids`, { at: '/beside' })
  return ids.flatMap((id) => world.find(knownId(world, id, '/beside')) ?? [])
}

/** A query is text, and stays text up to here. @throws ApiError 400 or 404 naming the key */
function questionOf(world: World, query: Query): IngredientQuery {
  const { role, limit, ph: _ph, heat_c: _heat, cold, beside: _beside, ...rest } = query
  const roles = wordsOf(role)
  for (const one of roles ?? []) mustBeRole(world, one, '/role')
  mustBeClass(world, query.class, '/class')
  mustBeWord(query.solubility, world.knowledge.properties.get('solubility')?.words ?? [], '/solubility')
  mustBeWord(query.charge, chargesOf(world), '/charge')
  const ph = numberOf(query.ph, '/ph', PH)
  const heat_c = numberOf(query.heat_c, '/heat_c', HEAT)
  const beside = besideOf(world, query.beside)
  return {
    ...rest,
    ...limitOf(limit),
    ...(roles && { roles }),
    ...(ph !== undefined && { ph }),
    ...(heat_c !== undefined && { heat_c }),
    ...(cold && { cold: true as const }),
    ...(beside && { beside }),
  }
}

export const ingredientAnswers = [
  answer(ingredientsRoute, ({ world }, { query }) => ({
    ...findIngredients(world, questionOf(world, query)),
    graphVersion: world.knowledge.version,
  })),
  answer(ingredientRoute, ({ world }, { params }) => {
    const description = describeIngredient(world, knownId(world, params.id, '/id'))
    if (!description) throw new Error(`${params.id} was found and then not`)
    return { ...description, graphVersion: world.knowledge.version }
  }),
  answer(standInsRoute, ({ world }, { params, query }) => {
    const id = knownId(world, params.id, '/id')
    mustBeRole(world, query.role, '/role')
    return standIns(world, id, query)
  }),
]
