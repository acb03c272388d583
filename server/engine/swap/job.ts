import type { FormulaContext, RoleHere } from '#engine/formula/context.ts'
import { shareOf } from '#engine/formula/build-context.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { PlaysRole, Role, SwapSpec } from '#engine/model/records.ts'

/** What a missing ingredient does in this formula: the job for which a stand-in is sought. */
export interface Job {
  missing: Subject
  share_percent: number
  strength_percent?: number
  role: Role
  claim: PlaysRole
  swap: SwapSpec
  /** further roles that it plays here */
  others: readonly RoleHere[]
}

/** How well a share fits the usual level of a role: 1 inside, less outside. */
function fits(share_percent: number, claim: PlaysRole): number {
  const { min = 0, max = 100 } = claim.level_percent ?? {}
  if (share_percent < min) return share_percent / min
  return share_percent > max ? max / share_percent : 1
}

/** The first role whose level fits the share; a role at a fifth of its least dose is not the reason for the line. */
function mainRoleHere(roles: readonly RoleHere[], share_percent: number): RoleHere | undefined {
  return roles.find(({ claim }) => fits(share_percent, claim) > 0.5) ?? roles[0]
}

/** The job of a line, or null when no role of it is known. */
export function jobOf(context: FormulaContext, missing: Subject): Job | null {
  const share_percent = shareOf(context, missing.id)
  const roles = context.rolesOf(missing)
  const main = mainRoleHere(roles, share_percent)
  const role = main && context.world.knowledge.roles.get(main.role)
  if (!main || !role) return null
  const strength = context.lines.find((line) => line.subject.id === missing.id)?.strength_percent
  return {
    missing,
    share_percent,
    ...(strength !== undefined && { strength_percent: strength }),
    role,
    claim: main.claim,
    swap: role.swap,
    others: roles.filter((here) => here.role !== main.role),
  }
}
