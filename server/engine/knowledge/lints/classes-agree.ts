import { agree, statementsAbout } from '#engine/knowledge/inherited-claims.ts'
import { deciding } from './facts.ts'
import type { Lint } from './lint.ts'
import { fileOf } from './places.ts'

/** Points out a record whose classes say different things of it: it takes over neither and has to state its own. */
export const classesAgree: Lint = (_raw, { ingredients, classFacts, roles }) =>
  [...ingredients.values()].flatMap((ingredient) =>
    [...statementsAbout(ingredient, classFacts, roles)].flatMap(([property, statements]) => {
      if (agree(statements) || deciding(ingredient, property)) return []
      const who = statements
        .map(({ from }) => from)
        .sort()
        .join(' and ')
      return [
        { path: `${fileOf(ingredient)}/facts/${property}`, message: `${who} differ on ${property}; state its own` },
      ]
    }),
  )
