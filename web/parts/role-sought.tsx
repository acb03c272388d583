import type { RoleReply } from '#web/client/use-roles.ts'
import { termWords } from '#web/format/term.ts'
import { text } from '#web/text/text.ts'
import { lowered } from '#web/format/lower.ts'
import { upTo } from '#web/format/number.ts'
import { Said } from './spoken.tsx'

const T = text.roles
const doseWords: Readonly<Record<string, string>> = T.doses

/** How a stand-in for a role is sought: demands, criteria with their weight, dose, and what happens without. */
export function RoleSought({ swap }: Pick<RoleReply, 'swap'>) {
  return (
    <section className="card">
      <h2>{T.sought}</h2>
      <dl>
        {swap.must.length > 0 && (
          <div>
            <dt>{T.must}</dt>
            <dd>
              <Said>{swap.must.join('; ')}</Said>
            </dd>
          </div>
        )}
        <div>
          <dt>{T.dose}</dt>
          <dd>{doseWords[swap.dose] ?? swap.dose}</dd>
        </div>
        <div>
          <dt>{T.lost}</dt>
          <dd>{text.swaps.leaveOutWords[swap.lost]}</dd>
        </div>
        {swap.irreplaceable !== undefined && (
          <div>
            <dt>{T.irreplaceable}</dt>
            <dd>
              <Said>{swap.irreplaceable}</Said>
            </dd>
          </div>
        )}
      </dl>
      {swap.criteria.length > 0 && (
        <>
          <h3>{T.criteria}</h3>
          <ul>
            {swap.criteria.map(({ name, weight, why }) => (
              <li key={name}>
                {termWords(name)}{' '}
                <small>
                  ({lowered(T.weight)} {upTo(weight, 3)})
                </small>{' '}
                – <Said>{why}</Said>
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  )
}
