import { plainLabel } from '#web/client/use-labels.ts'
import { useRoles } from '#web/client/use-roles.ts'
import type { RoleShort } from '#web/client/use-roles.ts'
import { Failed, Loading } from '#web/parts/states.tsx'
import { MOST_ROLES } from '#web/state/teach.ts'
import { teach } from '#web/text/teach.ts'

const T = teach.class

interface Props {
  roles: readonly string[]
  onRoles: (roles: string[]) => void
}

function Branch({ role, all, ...props }: Props & { role: RoleShort; all: readonly RoleShort[] }) {
  const { roles, onRoles } = props
  const isChosen = roles.includes(role.id)
  const below = all.filter(({ broader }) => broader === role.id)
  return (
    <li>
      <label className="tick">
        <input
          type="checkbox"
          checked={isChosen}
          disabled={!isChosen && roles.length >= MOST_ROLES}
          onChange={() => onRoles(isChosen ? roles.filter((one) => one !== role.id) : [...roles, role.id])}
        />
        {role.label}
      </label>
      {below.length > 0 && (
        <ul aria-label={T.below(role.label)}>
          {below.map((one) => (
            <Branch key={one.id} role={one} all={all} {...props} />
          ))}
        </ul>
      )}
    </li>
  )
}

const named = (all: readonly RoleShort[]) => (id: string) => all.find((one) => one.id === id)?.label ?? plainLabel(id)

/** Roles ticked in their tree. A role stands for those below it too. */
export function RolePicker(props: Props) {
  const reply = useRoles()
  return (
    <section className="card" aria-labelledby="class-roles">
      <h2 id="class-roles">{T.roles}</h2>
      <p role="status">{T.rolesHint(props.roles.length, MOST_ROLES)}</p>
      {reply.state === 'failed' && <Failed failure={reply} />}
      {reply.state === 'loading' && <Loading>{T.rolesLoading}</Loading>}
      {reply.state === 'ready' && props.roles.length > 0 && (
        <p>{props.roles.map(named(reply.data.roles)).join(', ')}</p>
      )}
      {reply.state === 'ready' && (
        <details>
          <summary>{T.chooseRoles}</summary>
          <ul className="teach-roles">
            {reply.data.roles
              .filter(({ broader }) => broader === undefined)
              .map((role) => (
                <Branch key={role.id} role={role} all={reply.data.roles} {...props} />
              ))}
          </ul>
        </details>
      )}
    </section>
  )
}
