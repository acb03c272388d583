import { useState } from 'react'
import { Link } from 'wouter'
import { plainLabel } from '#web/client/use-labels.ts'
import type { RoleReply } from '#web/client/use-roles.ts'
import { useRole, useRoles } from '#web/client/use-roles.ts'
import { useTitle } from '#web/client/use-title.ts'
import { exploreHref } from '#web/explorer/address.ts'
import { LessonOfRole } from '#web/lessons/lesson-of-role.tsx'
import { RecordList } from '#web/parts/record-list.tsx'
import { RoleSought } from '#web/parts/role-sought.tsx'
import { Failed, Loading } from '#web/parts/states.tsx'
import { text } from '#web/text/text.ts'
import { InEnglish, Said, Spoken } from '#web/parts/spoken.tsx'

const T = text.roles

const AT_FIRST = 24
type LabelOf = (id: string) => string

function Links({ title, ids, labelOf }: { title: string; ids: readonly string[]; labelOf: LabelOf }) {
  if (ids.length === 0) return null
  return (
    <div>
      <dt>{title}</dt>
      <dd>
        {ids.map((id, at) => (
          <span key={id}>
            {at > 0 && ', '}
            <Link href={`/role/${id}`}>
              <Said>{labelOf(id)}</Said>
            </Link>
          </span>
        ))}
      </dd>
    </div>
  )
}

function Players({ records, labelOf }: { records: RoleReply['playedBy']; labelOf: LabelOf }) {
  const [shown, setShown] = useState(AT_FIRST)
  return (
    <section className="card">
      <h2>
        {T.playedBy} ({records.length})
      </h2>
      {records.length === 0 ? (
        <p>{T.noPlayers}</p>
      ) : (
        <RecordList records={records.slice(0, shown)} roleLabel={labelOf} />
      )}
      {records.length > shown && (
        <button type="button" onClick={() => setShown(records.length)}>
          {text.swaps.more(records.length - shown)}
        </button>
      )}
    </section>
  )
}

function Role({ role, labelOf }: { role: RoleReply; labelOf: LabelOf }) {
  useTitle(role.label)
  return (
    <>
      <h1>
        <Said>{role.label}</Said>
      </h1>
      <p className="lead">
        <Said>{role.says}</Said>
      </p>
      <LessonOfRole role={role.id} />
      <p>
        <Link href={exploreHref(`role:${role.id}`)}>{text.explorer.around}</Link>
      </p>
      <section className="card">
        <dl>
          <Links title={T.broader} ids={role.broader === undefined ? [] : [role.broader]} labelOf={labelOf} />
          <Links title={T.narrower} ids={role.narrower} labelOf={labelOf} />
          <Links title={T.confused} ids={role.confusedWith} labelOf={labelOf} />
          <div>
            <dt>{T.phase}</dt>
            <dd>{T.phases[role.phase] ?? role.phase}</dd>
          </div>
        </dl>
      </section>
      <RoleSought swap={role.swap} />
      <Players key={role.id} records={role.playedBy} labelOf={labelOf} />
    </>
  )
}

/** One role: what it is, how a stand-in for it is sought, who plays it. */
export function RolePage({ id }: { id: string }) {
  const reply = useRole(id)
  const roles = useRoles()
  const labelOf = (role: string) =>
    (roles.state === 'ready' ? roles.data.roles.find((one) => one.id === role)?.label : undefined) ?? plainLabel(role)
  return (
    <div className="page">
      {reply.state === 'ready' && (
        <Spoken by="GET /api/roles/:id">
          <InEnglish by="GET /api/roles/:id" />
          <Role role={reply.data} labelOf={labelOf} />
        </Spoken>
      )}
      {reply.state === 'failed' && reply.code === 'unknown-role' && <h1>{T.unknown}</h1>}
      {reply.state === 'failed' && <Failed failure={reply} />}
      {(reply.state === 'loading' || reply.state === 'idle') && <Loading>{T.loadingOne}</Loading>}
    </div>
  )
}
