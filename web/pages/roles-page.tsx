import { Link } from 'wouter'
import type { RoleShort } from '#web/client/use-roles.ts'
import { useRoles } from '#web/client/use-roles.ts'
import { useTitle } from '#web/client/use-title.ts'
import { Failed, Loading } from '#web/parts/states.tsx'
import { text } from '#web/text/text.ts'
import { InEnglish, Said, Spoken } from '#web/parts/spoken.tsx'

const T = text.roles

function Branch({ role, all }: { role: RoleShort; all: readonly RoleShort[] }) {
  const below = all.filter(({ broader }) => broader === role.id)
  return (
    <li>
      <Link href={`/role/${role.id}`}>
        <Said>{role.label}</Said>
      </Link>{' '}
      <small>{T.players(role.players)}</small>
      <p>
        <Said>{role.says}</Said>
      </p>
      {below.length > 0 && (
        <ul>
          {below.map((one) => (
            <Branch key={one.id} role={one} all={all} />
          ))}
        </ul>
      )}
    </li>
  )
}

/** All roles as a tree. */
export function RolesPage() {
  useTitle(T.title)
  const reply = useRoles()
  return (
    <div className="page">
      <h1>{T.title}</h1>
      <p className="lead">{T.lead}</p>
      {reply.state === 'failed' && <Failed failure={reply} />}
      {(reply.state === 'loading' || reply.state === 'idle') && <Loading>{T.loading}</Loading>}
      {reply.state === 'ready' && (
        <Spoken by="GET /api/roles">
          <InEnglish by="GET /api/roles" />
          <ul className="tree">
            {reply.data.roles
              .filter(({ broader }) => broader === undefined)
              .map((role) => (
                <Branch key={role.id} role={role} all={reply.data.roles} />
              ))}
          </ul>
        </Spoken>
      )}
    </div>
  )
}
