import { useState } from 'react'
import { Link } from 'wouter'
import { useCalculate } from '#web/client/use-calculate.ts'
import type { Live } from '#web/client/use-lessons.ts'
import { upTo } from '#web/format/number.ts'
import { CalcAnswer } from '#web/parts/calc-answer.tsx'
import { Failed, Loading } from '#web/parts/states.tsx'
import { lessons } from '#web/text/lessons.ts'
import '#web/styles/calculations.css'
import { Slider } from './slider.tsx'
import { Spoken } from '#web/parts/spoken.tsx'

/** A calculation with its figures filled in, one of them to move. */
export function Calculate({ live: { name, inputs, vary } }: { live: Live<'calculate'> }) {
  const first = vary ? Number(inputs[vary.input]) : 0
  const [value, setValue] = useState(first)
  const answer = useCalculate(name, vary ? { ...inputs, [vary.input]: value } : inputs)
  return (
    <>
      {vary && (
        <Slider
          label={`${vary.says}: ${upTo(value, 4)}`}
          value={value}
          from={vary.from}
          to={vary.to}
          step={vary.step}
          onChange={setValue}
        />
      )}
      {answer.state === 'failed' && <Failed failure={answer} />}
      {answer.state === 'loading' && <Loading>{lessons.live.checking}</Loading>}
      {answer.state === 'ready' && (
        <Spoken by="POST /api/calculate/:name">
          <CalcAnswer name={name} reply={answer.data} old={answer.old} />
        </Spoken>
      )}
      <p>
        <Link href={`/calculation/${name}`}>{lessons.live.calculation}</Link>
      </p>
    </>
  )
}
