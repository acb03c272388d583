import { useState } from 'react'
import type { IngredientReply } from '#web/client/use-ingredient.ts'
import { useStandIns } from '#web/client/use-stand-ins.ts'
import { text } from '#web/text/text.ts'
import { Failed, Loading } from './states.tsx'
import { SwapsReplyView } from './swaps-reply.tsx'
import { Spoken } from './spoken.tsx'

/** What can stand in for an ingredient in general. */
export function GeneralStandIns({ record }: { record: IngredientReply }) {
  const [role, setRole] = useState('')
  const [product, setProduct] = useState<'leave-on' | 'rinse-off' | ''>('')
  const reply = useStandIns({ id: record.id, role, product, market: '' })
  const roles = new Map(record.roles.map(({ role: id, label }) => [id, label]))
  return (
    <section className="card" aria-labelledby="general-title">
      <h2 id="general-title">{text.ingredient.standIns}</h2>
      <p>{text.ingredient.standInsLead}</p>
      <div className="row">
        {roles.size > 1 && (
          <label className="field">
            <span>{text.ingredient.asRole}</span>
            <select value={role} onChange={(event) => setRole(event.target.value)}>
              <option value="">{text.ingredient.anyRole}</option>
              {[...roles].map(([id, label]) => (
                <option key={id} value={id}>
                  {label}
                </option>
              ))}
            </select>
          </label>
        )}
        <label className="field">
          <span>{text.settings.product}</span>
          <select value={product} onChange={(event) => setProduct(event.target.value as typeof product)}>
            <option value="">{text.ingredient.anyUse}</option>
            <option value="leave-on">{text.settings.products['leave-on']}</option>
            <option value="rinse-off">{text.settings.products['rinse-off']}</option>
          </select>
        </label>
      </div>
      {reply.state === 'failed' && <Failed failure={reply} />}
      {(reply.state === 'loading' || reply.state === 'idle') && <Loading>{text.swaps.loading}</Loading>}
      {reply.state === 'ready' && (
        <Spoken by="GET /api/ingredients/:id/stand-ins">
          <SwapsReplyView reply={reply.data} before={null} known={new Map([[record.id, record.inci]])} />
        </Spoken>
      )}
    </section>
  )
}
