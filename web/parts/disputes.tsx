import type { IngredientReply } from '#web/client/use-ingredient.ts'
import { claimText } from '#web/format/claim.ts'
import { termWords } from '#web/format/term.ts'
import { text } from '#web/text/text.ts'
import { Sourced, titlesOf } from './sourced.tsx'
import { Said } from './spoken.tsx'

const T = text.ingredient

type Decision = IngredientReply['decisions'][number]

function Dispute({ decision, record }: { decision: Decision; record: IngredientReply }) {
  const claims = record.claims.filter(({ property }) => property === decision.property)
  const titles = titlesOf(record)
  return (
    <div className="dispute">
      <h3>{termWords(decision.property)}</h3>
      <ul>
        {claims.map((claim) => (
          <li key={claim.id}>
            <Sourced claim={claim} titles={titles}>
              <b>{claimText(claim)}</b> ({T.accesses[claim.access]})
              {claim.id === decision.claim && <em> – {T.isUsed}</em>}
            </Sourced>
          </li>
        ))}
      </ul>
      <p>
        <b>{T.decided}:</b> <Said>{decision.why}</Said>
      </p>
    </div>
  )
}

/** What sources disagree about: every value with its origin, and which one the program goes by and why. */
export function Disputes({ record }: { record: IngredientReply }) {
  if (record.decisions.length === 0) return null
  return (
    <section className="card" aria-labelledby="disputes-title">
      <h2 id="disputes-title">{T.disputes}</h2>
      <p>{T.disputesLead}</p>
      {record.decisions.map((decision) => (
        <Dispute key={decision.property} decision={decision} record={record} />
      ))}
    </section>
  )
}
