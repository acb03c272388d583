import { plainLabel } from '#web/client/use-labels.ts'
import { useRoles } from '#web/client/use-roles.ts'
import { learn } from '#web/text/learn.ts'

const kinds: Readonly<Record<string, string>> = learn.kinds

/** Name of a role or of a kind of question. */
export function useGroupLabel(): (group: string) => string {
  const reply = useRoles()
  const roles = reply.state === 'ready' ? reply.data.roles : []
  return (group) => kinds[group] ?? roles.find(({ id }) => id === group)?.label ?? plainLabel(group)
}
