import { Link } from 'wouter'
import type { IngredientReply } from '#web/client/use-ingredient.ts'
import { readable } from '#web/client/use-labels.ts'
import { rangeText, shareText } from '#web/format/number.ts'
import { text } from '#web/text/text.ts'
import { Sourced, titlesOf } from './sourced.tsx'
import { Said } from './spoken.tsx'

const T = text.ingredient

export function Names({ record }: { record: IngredientReply }) {
  const kinds = Object.entries(T.nameKinds).flatMap(([kind, label]) => {
    const names = record.names[kind] ?? []
    return names.length > 0 ? [{ label, names }] : []
  })
  if (kinds.length === 0 && record.cas.length === 0) return null
  return (
    <section className="card">
      <h2>{T.names}</h2>
      <dl>
        {kinds.map(({ label, names }) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{names.join(', ')}</dd>
          </div>
        ))}
        {record.cas.length > 0 && (
          <div>
            <dt>{T.cas}</dt>
            <dd>{record.cas.join(', ')}</dd>
          </div>
        )}
      </dl>
    </section>
  )
}

/** "1 to 20 %, often 4 %"; nothing where no level is on record. */
const levelWords = ({ level_percent }: IngredientReply['roles'][number]): string => {
  const range = level_percent ? rangeText(level_percent) : ''
  return [
    range === '' ? '' : T.level(range),
    level_percent?.typical === undefined ? '' : T.typical(level_percent.typical),
  ]
    .filter((part) => part !== '')
    .join(', ')
}

export function Roles({ record }: { record: IngredientReply }) {
  return (
    <section className="card">
      <h2>{T.roles}</h2>
      <ul>
        {record.roles.map((claim, at) => (
          <li key={`${claim.role}${at}`}>
            <Link href={`/role/${claim.role}`}>
              <Said>{claim.label}</Said>
            </Link>
            {claim.when !== undefined && (
              <>
                {' '}
                – <Said>{claim.when}</Said>
              </>
            )}{' '}
            <Sourced claim={claim} titles={titlesOf(record)}>
              {levelWords(claim)} <small>({T.accesses[claim.access]})</small>
            </Sourced>
          </li>
        ))}
      </ul>
      {record.classes.length > 0 && (
        <>
          <h3>{T.classes}</h3>
          <ul className="chips">
            {record.classes.map(({ id, label, says }) => (
              <li key={id}>
                <Link href={`/ingredients?class=${id}`} title={says}>
                  <Said>{label}</Said>
                </Link>
              </li>
            ))}
          </ul>
        </>
      )}
      {record.madeOf.length > 0 && (
        <>
          <h3>{T.madeOf}</h3>
          <ul>
            {record.madeOf.map(({ ingredient, inci, share_percent }) => (
              <li key={ingredient}>
                <Link href={`/ingredient/${ingredient}`}>{readable(inci)}</Link> {shareText(share_percent)}
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  )
}

export function Windows({ record }: { record: IngredientReply }) {
  const { ph_stability, ph_effective, heat_max_c } = record.windows
  const rows = [
    { property: 'ph_stability', label: T.keeps, value: ph_stability && rangeText(ph_stability) },
    { property: 'ph_effective', label: T.works, value: ph_effective && rangeText(ph_effective) },
    { property: 'heat_max_c', label: T.heat, value: heat_max_c === undefined ? undefined : T.celsius(heat_max_c) },
  ].filter(({ value }) => value)
  const titles = titlesOf(record)
  return (
    <section className="card">
      <h2>{T.windows}</h2>
      {rows.length === 0 && <p>{T.noWindows}</p>}
      <dl>
        {rows.map(({ property, label, value }) => (
          <div key={property}>
            <dt>{label}</dt>
            <dd>
              <Sourced claim={record.claims.find((one) => one.property === property && one.used)} titles={titles}>
                {value}
              </Sourced>
            </dd>
          </div>
        ))}
      </dl>
    </section>
  )
}

export function LimitsAndCautions({ record }: { record: IngredientReply }) {
  return (
    <section className="card">
      {record.cautions.length > 0 && (
        <>
          <h2>{T.cautions}</h2>
          <ul className="cautions">
            {record.cautions.map((caution) => (
              <li key={caution}>
                <Said>{caution}</Said>
              </li>
            ))}
          </ul>
        </>
      )}
      <h2>{T.limits}</h2>
      {record.limits.length === 0 && <p>{T.noLimits}</p>}
      {record.limits.map(({ id, market, title, text: rows }) => (
        <div key={id}>
          <h3>
            {T.markets[market]}: <Said>{title}</Said>
          </h3>
          <ul>
            {rows.map((row) => (
              <li key={row}>
                <Said>{row}</Said>
              </li>
            ))}
          </ul>
        </div>
      ))}
    </section>
  )
}
