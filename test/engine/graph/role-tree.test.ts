import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Role } from '#engine/model/records.ts'
import { buildRoleTree } from '#engine/graph/role-tree.ts'
import { realWorld } from '../../helpers.ts'

type Broader = Pick<Role, 'id' | 'broader'>

/** The role and all above it, read off the records one by one. */
function above(id: string, roles: ReadonlyMap<string, Broader>): string[] {
  const broader = roles.get(id)?.broader
  return [id, ...(broader === undefined ? [] : above(broader, roles))]
}

const agrees = (roles: ReadonlyMap<string, Role>) => {
  const tree = buildRoleTree(roles)
  const ids = [...roles.keys()]
  for (const id of ids) {
    expect(tree.above(id)).toEqual(above(id, roles))
    expect([...tree.below(id)].sort()).toEqual(ids.filter((other) => above(other, roles).includes(id)).sort())
  }
  for (const a of ids) {
    for (const b of ids) {
      const [up, down] = [above(a, roles), above(b, roles)]
      const meet = up.find((id) => down.includes(id))
      const steps = meet === undefined ? Infinity : up.indexOf(meet) + down.indexOf(meet)
      expect(tree.distance(a, b)).toBe(steps)
    }
  }
}

/** Forests: every role may have a broader one among those before it. */
const forests = fc.array(fc.option(fc.nat()), { minLength: 1, maxLength: 9 }).map((parents) =>
  parents.map((parent, index) => ({
    id: `r${index}`,
    ...(parent !== null && index > 0 && { broader: `r${parent % index}` }),
  })),
)

describe('closures by traversal', () => {
  test('equal those read off the records, in the real roles', () => agrees(realWorld().knowledge.roles))
  test('equal those read off the records, in any forest', () =>
    fc.assert(
      fc.property(forests, (roles) => agrees(new Map(roles.map((role) => [role.id, role as Role])))),
      { numRuns: 60 },
    ))
})

test('a role that nobody knows has nothing above, below or near', () => {
  const tree = buildRoleTree(new Map())
  expect([tree.above('x'), tree.below('x'), tree.distance('x', 'x')]).toEqual([[], [], Infinity])
})
