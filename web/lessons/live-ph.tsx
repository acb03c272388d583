import { useState } from 'react'
import { useCalculate } from '#web/client/use-calculate.ts'
import type { IngredientReply } from '#web/client/use-ingredient.ts'
import { useIngredient } from '#web/client/use-ingredient.ts'
import { readable } from '#web/client/use-labels.ts'
import type { LessonReply, Live } from '#web/client/use-lessons.ts'
import { rangeText, upTo } from '#web/format/number.ts'
import { Failed, Loading } from '#web/parts/states.tsx'
import { lessons } from '#web/text/lessons.ts'
import { CheckedRecipe } from './checked-recipe.tsx'
import { Slider } from './slider.tsx'

const T = lessons.live
const STEP = 0.1

type Claim = IngredientReply['claims'][number]
const usedOf = ({ claims }: IngredientReply, property: string): Claim | undefined =>
  claims.find((claim) => claim.used && claim.property === property)

/** The ends that are known. */
function spanOf({ value, min = value, max = value }: Claim): { min?: number; max?: number } {
  return { ...(min !== undefined && { min }), ...(max !== undefined && { max }) }
}

function Window({ claim, ph, words }: { claim: Claim; ph: number; words: (range: string) => string }) {
  const { min = -Infinity, max = Infinity } = spanOf(claim)
  const isIn = ph >= min && ph <= max
  return (
    <li data-in={isIn}>
      <strong>{isIn ? T.in : T.out}</strong>: {words(rangeText(spanOf(claim)))}
    </li>
  )
}

/** How much of an acid is undissociated, as a figure and a bar. */
function Whole({ pka, ph }: { pka: number; ph: number }) {
  const answer = useCalculate('undissociated-share', { ph, pka })
  if (answer.state !== 'ready') return null
  const percent = 100 * (answer.data.values['share'] ?? 0)
  return (
    <li>
      <meter min={0} max={100} value={percent} aria-hidden="true" /> {T.whole(upTo(percent, percent < 1 ? 2 : 0))}
    </li>
  )
}

function One({ id, ph }: { id: string; ph: number }) {
  const reply = useIngredient(id)
  if (reply.state === 'failed') return <Failed failure={reply} />
  if (reply.state !== 'ready') return <Loading>{lessons.loadingOne}</Loading>
  const [works, keeps] = [usedOf(reply.data, 'ph_effective'), usedOf(reply.data, 'ph_stability')]
  const pka = usedOf(reply.data, 'acid_pka')?.value
  return (
    <div>
      <h3>{readable(reply.data.inci)}</h3>
      <ul className="lesson-windows">
        {works && <Window claim={works} ph={ph} words={T.works} />}
        {keeps && <Window claim={keeps} ph={ph} words={T.keeps} />}
        {!works && !keeps && <li>{T.notKnown}</li>}
        {pka !== undefined && <Whole pka={pka} ph={ph} />}
      </ul>
    </div>
  )
}

/** A pH to move: who works and keeps at it, and what the check says of a recipe. */
export function PhSlider({ live, recipe }: { live: Live<'ph-slider'>; recipe: LessonReply['recipe'] }) {
  const [ph, setPh] = useState(live.start)
  return (
    <>
      <Slider label={T.atPh(upTo(ph, 1))} value={ph} from={live.from} to={live.to} step={STEP} onChange={setPh} />
      <div className="lesson-columns">
        {live.ingredients.map((id) => (
          <One key={id} id={id} ph={ph} />
        ))}
      </div>
      {recipe && <CheckedRecipe title={recipe.title} formula={{ ...recipe.before, ph }} names={recipe.names} />}
    </>
  )
}
