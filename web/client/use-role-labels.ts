import { language } from '#web/text/language.ts'
import { plainLabel } from './use-labels.ts'
import { useRoles } from './use-roles.ts'

/** Names of roles by id. An id reads as an English name; other languages ask for theirs. */
export function useRoleLabels(): (id: string) => string {
  const reply = useRoles(language !== 'en')
  const roles = reply.state === 'ready' ? reply.data.roles : []
  return (id) => roles.find((one) => one.id === id)?.label ?? plainLabel(id)
}
