import { faultsOf, unknownIngredient, withAliases } from '#engine/index.ts'
import type { Fault, Formula, World } from '#engine/index.ts'
import { ApiError } from './api-error.ts'

/** What does not exist is 404, what cannot be is 422. */
const errorOf = ({ code, message, at, nearest }: Fault): ApiError =>
  new ApiError(code === 'unknown-ingredient' ? 404 : 422, code, message, { at, ...(nearest && { nearest }) })

/** The id of the record behind an id or alias. @throws ApiError 404 with the nearest ids */
export function knownId(world: World, id: string, at: string): string {
  const subject = world.find(id)
  if (!subject) throw errorOf(unknownIngredient(world, id, at))
  return subject.id
}

/** The formula with record ids. @throws ApiError with the first fault: 404 for an unknown id, else 422 */
export function soundFormula(world: World, formula: Formula): Formula {
  const [fault] = faultsOf(formula, world)
  if (fault) throw errorOf(fault)
  return withAliases(formula, world)
}

export const unknownRole = (role: string, at: string): ApiError =>
  new ApiError(404, 'unknown-role', `${at.slice(1)}: no role has the id ${role}`, { at })

/** @throws ApiError 404 when there is no such role */
export function mustBeRole(world: World, role: string | undefined, at: string): void {
  if (role === undefined || world.knowledge.roles.has(role)) return
  throw unknownRole(role, at)
}

/** @throws ApiError 404 when there is no such class */
export function mustBeClass(world: World, id: string | undefined, at: string): void {
  if (id === undefined || world.knowledge.classes.has(id)) return
  throw new ApiError(404, 'unknown-class', `${at.slice(1)}: no class has the id ${id}`, { at })
}

/** Wishes with record ids; what is to be avoided may be a class. @throws ApiError 404 for what is neither */
export function knownWishes<T extends { only?: string[]; without?: string[] }>(world: World, wishes: T): T {
  const { classes } = world.knowledge
  const only = wishes.only?.map((id, index) => knownId(world, id, `/wishes/only/${index}`))
  const without = wishes.without?.map((id, index) => {
    const known = classes.has(id) ? id : world.find(id)?.id
    if (known !== undefined) return known
    const at = `/wishes/without/${index}`
    throw new ApiError(404, 'unknown-class', `${at.slice(1)}: neither a class nor an ingredient has the id ${id}`, {
      at,
    })
  })
  return { ...wishes, ...(only && { only }), ...(without && { without }) }
}

/** What a relation cannot bear is 422. @throws ApiError that names the argument of the RangeError */
export function inRange<T>(work: () => T): T {
  try {
    return work()
  } catch (error) {
    if (!(error instanceof RangeError)) throw error
    const [argument] = error.message.split(':')
    throw new ApiError(422, 'out-of-range', error.message, { at: `/${argument}` })
  }
}
