import { readable } from '#web/client/use-labels.ts'
import type { PhWindowReply, WindowEnd } from '#web/client/use-ph-window.ts'
import { rangeText, upTo } from '#web/format/number.ts'
import { isNoSource, sourceWords } from '#web/format/source.ts'
import { Link } from 'wouter'
import { claimHref } from '#web/format/claim.ts'
import { working } from '#web/text/working.ts'

const T = working.window

function End({ title, end }: { title: string; end: WindowEnd }) {
  return (
    <div>
      <dt>{title}</dt>
      {end === null ? (
        <dd>{T.nobody}</dd>
      ) : (
        <dd>
          {T.setBy(end.ph)}
          <ul>
            {end.setBy.map(({ ingredient, inci, kind, window, claim }) => {
              const href = claimHref(claim.id, ingredient)
              const words = T.lineWindow(T.kind[kind], rangeText(window))
              return (
                <li key={`${ingredient}${kind}`}>
                  {readable(inci)}: {href === null ? words : <Link href={href}>{words}</Link>}{' '}
                  <small>({isNoSource(claim.source) ? sourceWords(claim.source) : claim.source})</small>
                </li>
              )
            })}
          </ul>
        </dd>
      )}
    </div>
  )
}

/** Which pH suits every line and who sets its ends; who objects to the pH as it is. */
export function CalcPhWindow({ reply, labelOf }: { reply: PhWindowReply; labelOf: (id: string) => string }) {
  const { window, low, high, excludes, unknown, ph } = reply
  const words = window === null ? null : rangeText(window)
  return (
    <>
      <p className="verdict">
        <strong>{words === null ? T.none : words === '' ? T.open : T.common(words)}</strong>
      </p>
      <p>{ph.value === null ? T.noPh : `${T.now(ph.value)}: ${T.verdict[ph.verdict]}.`}</p>
      {ph.objections.length > 0 && (
        <ul>
          {ph.objections.map(({ ingredient, inci, kind, window: own, distance_ph }) => (
            <li key={`${ingredient}${kind}`}>
              {T.objects(readable(inci), T.kind[kind], rangeText(own), upTo(distance_ph, 2))}
            </li>
          ))}
        </ul>
      )}
      {excludes.length > 0 && (
        <ul>
          {excludes.map(({ lower, upper, gap }) => (
            <li key={`${lower.ingredient}${upper.ingredient}${gap.min}`}>
              {T.gap(readable(lower.inci), readable(upper.inci), rangeText(gap))}
            </li>
          ))}
        </ul>
      )}
      <dl className="ends">
        <End title={T.low} end={low} />
        <End title={T.high} end={high} />
      </dl>
      {unknown.length > 0 && (
        <p>
          {T.unknown(unknown.length)} {unknown.map(labelOf).join(', ')}.
        </p>
      )}
      <p className="remark">{T.rest}</p>
    </>
  )
}
