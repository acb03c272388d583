import type { Lint } from './lint.ts'

/** Guards against a role that nobody explains: a learner who meets it would find its members and not its work. */
export const roleHasLesson: Lint = (raw, { roles, lessons }) =>
  [...roles.keys()]
    .filter((role) => lessons.get(role)?.about.kind !== 'role')
    .map((role) => ({ path: `${raw.roles.path}/roles/${role}`, message: 'no lesson explains this role' }))
