import type { IngredientReply } from '#web/client/use-ingredient.ts'
import { claimAnchor, claimValue } from '#web/format/claim.ts'
import { sourceAnchor } from '#web/format/source.ts'
import { text } from '#web/text/en.ts'

type Claim = IngredientReply['claims'][number]

interface Props {
  claims: readonly Claim[]
  contested: readonly string[]
}

const T = text.ingredient
const HEADS = [T.property, T.value, T.unit, T.kind, T.source, T.locator, T.access, T.date]

export const propertyWords = (property: string): string => property.replaceAll(/[-_]/g, ' ')

function Sources({ ids }: { ids: string }) {
  return ids.split(/\s*;\s*/).map((id, at) => (
    <span key={id}>
      {at > 0 && '; '}
      <a href={`#${sourceAnchor(id)}`}>{id}</a>
    </span>
  ))
}

function Row({ claim, isContested }: { claim: Claim; isContested: boolean }) {
  return (
    <tr id={claimAnchor(claim.id)} data-used={claim.used || undefined}>
      <th scope="row">
        {propertyWords(claim.property)}
        {isContested && <small className="contested"> {T.contested}</small>}
        {isContested && claim.used && <small> ({T.used})</small>}
      </th>
      <td data-label={T.value}>
        {claimValue(claim)}
        {claim.conditions !== undefined && <small> {claim.conditions}</small>}
        {claim.note !== undefined && <small> {claim.note}</small>}
      </td>
      <td data-label={T.unit}>{claim.unit === '1' ? '' : claim.unit}</td>
      <td data-label={T.kind}>{T.kinds[claim.kind]}</td>
      <td data-label={T.source}>
        <Sources ids={claim.source} />
      </td>
      <td data-label={T.locator}>{claim.locator}</td>
      <td data-label={T.access}>{T.accesses[claim.access]}</td>
      <td data-label={T.date}>{claim.date}</td>
    </tr>
  )
}

/** Every statement about an ingredient with its source; each row can be linked to. */
export function ClaimsTable({ claims, contested }: Props) {
  if (claims.length === 0) return <p>{T.noClaims}</p>
  return (
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
  )
}
