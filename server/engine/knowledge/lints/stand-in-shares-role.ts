import type { Vocabulary } from './lint.ts'
import type { Lint } from './lint.ts'
import { membersOf } from './members.ts'
import type { Member } from './members.ts'
import { fileOf } from './places.ts'

/** Roles within which a search for a stand-in of this record looks: its roles and the scope of each. */
const soughtIn = ({ ingredient, allRoles }: Member, { roles }: Vocabulary): string[] => [
  ...allRoles,
  ...ingredient.roles.flatMap(({ role }) => roles.get(role)?.swap.scope ?? []),
]

/** Guards against a stand-in that has no role in common with what it replaces: it could not do the job. */
export const standInSharesRole: Lint = (_raw, vocabulary) => {
  const members = membersOf(vocabulary)
  const byId = new Map(members.map((member) => [member.id, member]))
  return members.flatMap((one) =>
    one.ingredient.standsFor.flatMap((claim, at) => {
      const other = byId.get(claim.for)
      if (!other || soughtIn(other, vocabulary).some((role) => one.allRoles.has(role))) return []
      return [
        {
          path: `${fileOf(one)}/stands_in_for/${at}`,
          message: `${one.id} and ${other.id} have no role in common`,
        },
      ]
    }),
  )
}
