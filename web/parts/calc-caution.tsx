import { calculations as T } from '#web/text/calculations.ts'

const CAUTIONS: Readonly<Record<string, 'lye' | 'acid' | 'preservation'>> = {
  'lye-for-soap': 'lye',
  'acid-dose': 'acid',
  'two-phase-partition': 'preservation',
  'partition-with-micelles': 'preservation',
  'acid-in-emulsion': 'preservation',
  'log-reduction': 'preservation',
  'd-value': 'preservation',
}
const TITLES = { lye: T.lyeTitle, acid: T.acidTitle, preservation: T.preservationTitle }

/** What can hurt, above the form and not below the answer. */
export function CalcCaution({ name }: { name: string }) {
  const caution = CAUTIONS[name]
  if (caution === undefined) return null
  return (
    <section className="caution" aria-labelledby="caution-title">
      <h2 id="caution-title">{TITLES[caution]}</h2>
      <p>{T[caution]}</p>
    </section>
  )
}
