import type { Criterion, Role } from '#engine/model/records.ts'
import type { Lint, Vocabulary } from './lint.ts'

/** Names of a criterion that mean nothing. */
function unknownIn({ property, group, weight }: Criterion, groups: ReadonlySet<string>, words: Vocabulary): string[] {
  return [
    ...(property && !words.properties.has(property) ? [`criterion by the unknown property ${property}`] : []),
    ...(group && !groups.has(group) ? [`criterion by the unknown group ${group}`] : []),
    ...(weight > 0 ? [] : [`criterion with the weight ${weight}`]),
  ]
}

function circle(role: Role, roles: ReadonlyMap<string, Role>): boolean {
  const seen = new Set<string>()
  for (let at: string | undefined = role.id; at !== undefined; at = roles.get(at)?.broader) {
    if (seen.has(at)) return true
    seen.add(at)
  }
  return false
}

function faultsOf(role: Role, groups: ReadonlySet<string>, words: Vocabulary): string[] {
  const { roles, classes, properties } = words
  const { broader, confusedWith, swap } = role
  return [
    ...(broader !== undefined && !roles.has(broader) ? [`the broader role ${broader} is not known`] : []),
    ...(circle(role, roles) ? ['stands above itself'] : []),
    ...confusedWith.filter((other) => !roles.has(other)).map((other) => `confused with the unknown role ${other}`),
    ...(roles.has(swap.scope) ? [] : [`stand-ins are sought in the unknown role ${swap.scope}`]),
    ...swap.must.flatMap((must) => [
      ...(must.class && !classes.has(must.class) ? [`demands the unknown class ${must.class}`] : []),
      ...(must.one_of ?? [])
        .filter((word) => must.word && !properties.get(must.word)?.words.includes(word))
        .map((word) => `demands the unknown word ${word}`),
    ]),
    ...swap.criteria.flatMap((criterion) => unknownIn(criterion, groups, words)),
  ]
}

/** Guards against roles whose search goes by words that do not exist: it would silently find everything alike. */
export const roleIsWellFormed: Lint = (raw, vocabulary) => {
  const groups = new Set([...vocabulary.classes.values()].map(({ group }) => group))
  return [...vocabulary.roles.values()].flatMap((role) =>
    [...new Set(faultsOf(role, groups, vocabulary))].map((message) => ({
      path: `${raw.roles.path}/roles/${role.id}`,
      message,
    })),
  )
}
