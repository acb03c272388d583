import type { Lint } from './lint.ts'

/** Guards against a legal entry that counts a name or class nobody can use: the one meant would slip through. */
export const limitMemberIsKnown: Lint = (_raw, { limits, ingredients, inventory, classes }) =>
  limits.flatMap(({ id, members, memberClasses }) => [
    ...Object.keys(members)
      .filter((member) => !ingredients.has(member) && !inventory.has(member))
      .map((member) => ({ path: `limits/${id}.yaml/members`, message: `${member} is not known` })),
    ...memberClasses
      .filter((name) => !classes.has(name))
      .map((name) => ({ path: `limits/${id}.yaml/member_classes`, message: `class ${name} is not known` })),
  ])
