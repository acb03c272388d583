import { useIngredientsOf } from '#web/client/use-preservation-spectra.ts'
import { SpectrumGrid } from '#web/charts/spectrum-grid.tsx'
import type { SpectrumRow } from '#web/charts/spectrum-grid.tsx'
import type { Agent, PreservationReply } from '#web/client/use-preservation.ts'
import { upTo } from '#web/format/number.ts'
import { working } from '#web/text/working.ts'
import { Findings } from './findings.tsx'
import { Said } from './spoken.tsx'

const T = working.preservation

interface Props {
  reply: PreservationReply
  labelOf: (id: string) => string
}

function Taken({ agent, labelOf }: { agent: Agent; labelOf: Props['labelOf'] }) {
  if (agent.takenBy.length === 0) return <>{T.nothing}</>
  return (
    <ul className="taken-by">
      {agent.takenBy.map(({ by, share_percent, ingredient }) => (
        <li key={`${by}${ingredient}`}>
          <svg width="52" height="10" aria-hidden="true">
            <rect className="bar-back" width="52" height="10" rx="2" />
            <rect className="bar" width={Math.max(1, (share_percent / 100) * 52)} height="10" rx="2" />
          </svg>{' '}
          {T.takenBy[by](upTo(share_percent, 1), ingredient === undefined ? '' : labelOf(ingredient))}
        </li>
      ))}
    </ul>
  )
}

function Agents({ reply, labelOf }: Props) {
  return (
    <div className="scroll" role="region" aria-label={T.caption} tabIndex={0}>
      <table className="agents">
        <caption className="hidden">{T.caption}</caption>
        <thead>
          <tr>
            {[T.agent, T.total, T.free, T.undissociated, T.window, T.taken].map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {reply.agents.map((agent) => (
            <tr key={`${agent.ingredient}${agent.partOf}`}>
              <th scope="row">
                {labelOf(agent.ingredient)}
                {agent.partOf !== undefined && <small> {T.partOf(labelOf(agent.partOf))}</small>}
              </th>
              <td data-head={T.total}>{upTo(agent.total_percent, 3)}</td>
              <td data-head={T.free}>{T.span(agent.free_percent)}</td>
              <td data-head={T.undissociated}>
                {agent.undissociated_percent === null ? T.noAcid : T.span(agent.undissociated_percent)}
              </td>
              <td data-head={T.window}>{T.windows[agent.window]}</td>
              <td data-head={T.taken}>
                <Taken agent={agent} labelOf={labelOf} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}

function Spectrum({ reply, labelOf }: Props) {
  const spectra = useIngredientsOf(reply.agents.map(({ ingredient }) => ingredient))
  const rows: SpectrumRow[] = reply.agents.map(({ ingredient }) => ({
    name: labelOf(ingredient),
    words: spectra.get(ingredient) ?? {},
  }))
  return (
    <>
      <h3>{T.covers}</h3>
      <p className="remark">{T.coversLead}</p>
      <SpectrumGrid rows={[...rows, { name: T.system, words: reply.covers, isSystem: true }]} />
    </>
  )
}

/** Is the preservative at work? In words, as a table, by germ; never that the product is protected. */
export function CalcPreservation({ reply, labelOf }: Props) {
  const { verdict, agents, hurdles, findings } = reply
  return (
    <>
      <p className="verdict" data-verdict={verdict} role="status">
        <strong>{T.verdict[verdict]}</strong>
      </p>
      <p>{T.explain[verdict]}</p>
      <p className="challenge">{T.challenge}</p>
      {agents.length === 0 ? <p>{T.none}</p> : <Agents reply={reply} labelOf={labelOf} />}
      <Spectrum reply={reply} labelOf={labelOf} />
      <h3>{T.hurdles}</h3>
      {hurdles.length === 0 ? (
        <p>{T.noHurdles}</p>
      ) : (
        <ul>
          {hurdles.map(({ kind, text }) => (
            <li key={`${kind}${text}`}>
              <Said>{text}</Said>
            </li>
          ))}
        </ul>
      )}
      {findings.length > 0 && (
        <>
          <h3>{T.findings}</h3>
          <Findings findings={findings} />
        </>
      )}
    </>
  )
}
