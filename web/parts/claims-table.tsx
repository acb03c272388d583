import type { IngredientReply } from '#web/client/use-ingredient.ts'
import { claimAnchor, claimText } from '#web/format/claim.ts'
import { isNoSource } from '#web/format/source.ts'
import { termWords } from '#web/format/term.ts'
import { text } from '#web/text/text.ts'
import { SourceLinks } from './source-links.tsx'
import { dayText } from '#web/format/day.ts'
import { Said } from './spoken.tsx'

type Claim = IngredientReply['claims'][number]

interface Props {
  claims: readonly Claim[]
  contested: readonly string[]
}

const T = text.ingredient
const HEADS = [T.property, T.value, T.kind, T.source, T.locator, T.access, T.date, T.evidence]

function Row({ claim, isContested }: { claim: Claim; isContested: boolean }) {
  return (
    <tr id={claimAnchor(claim.id)} data-used={claim.used || undefined}>
      <th scope="row">
        {termWords(claim.property)}
        {isContested && <small className="contested"> {T.contested}</small>}
        {isContested && claim.used && <small> ({T.used})</small>}
      </th>
      <td>
        <Said>
          {claimText(claim)}
          {claim.conditions !== undefined && <small> {claim.conditions}</small>}
          {claim.note !== undefined && <small> {claim.note}</small>}
        </Said>
      </td>
      <td>{T.kinds[claim.kind]}</td>
      <td>
        <SourceLinks ids={claim.source} />
      </td>
      <td>{isNoSource(claim.source) ? '' : <Said>{claim.locator}</Said>}</td>
      <td>{T.accesses[claim.access]}</td>
      <td>{dayText(claim.date)}</td>
      <td>{claim.evidence.code}</td>
    </tr>
  )
}

/** What the codes of evidence stand for, each once. */
function Codes({ claims }: Pick<Props, 'claims'>) {
  const labels = new Map(claims.map(({ evidence }) => [evidence.code, evidence.label]))
  return (
    <p className="remark">
      {T.evidence}:{' '}
      {[...labels]
        .sort(([a], [b]) => (a < b ? -1 : 1))
        .map(([code, label]) => `${code} ${label}`)
        .join('; ')}
      .
    </p>
  )
}

/** Every statement about an ingredient with its source; each row can be linked to. */
export function ClaimsTable({ claims, contested }: Props) {
  if (claims.length === 0) return <p>{T.noClaims}</p>
  return (
    <>
      <div className="scroll" tabIndex={0} role="region" aria-label={T.claimsCaption}>
        <table className="claims">
          <caption className="hidden">{T.claimsCaption}</caption>
          <thead>
            <tr>
              {HEADS.map((head) => (
                <th key={head} scope="col">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {claims.map((claim) => (
              <Row key={claim.id} claim={claim} isContested={contested.includes(claim.property)} />
            ))}
          </tbody>
        </table>
      </div>
      <Codes claims={claims} />
    </>
  )
}
