import type { Ingredient, Must } from '#engine/model/records.ts'
import { deciding } from './facts.ts'
import type { Lint } from './lint.ts'
import { fileOf } from './places.ts'

function passes(ingredient: Ingredient, must: Must): boolean {
  if (must.class) return ingredient.classes.has(must.class)
  const is = must.word && deciding(ingredient, must.word)?.is
  return !is || !must.one_of || must.one_of.includes(is)
}

/** Guards against an ingredient whose main role would refuse it as a stand-in: either the role or the record is wrong. */
export const memberPassesOwnRole: Lint = (_raw, { ingredients, roles }) =>
  [...ingredients.values()].flatMap((ingredient) => {
    const role = roles.get(ingredient.roles[0]?.role ?? '')
    return (role?.swap.must ?? [])
      .filter((must) => !passes(ingredient, must))
      .map((must) => ({
        path: `${fileOf(ingredient)}/roles/0`,
        message: `${role?.id} demands ${must.class ?? `${must.word} ${(must.one_of ?? []).join(' or ')}`}: ${must.why}`,
      }))
  })
