import { upTo } from '#web/format/number.ts'
import type { Phase } from '#web/recipe/types.ts'
import type { BenchLine } from '#web/state/bench.ts'
import { editLine, letFill, setGrams, setShare } from '#web/state/edit.ts'
import { gramsOf } from '#web/state/shares.ts'
import type { BenchStore } from '#web/state/use-bench.ts'
import { text } from '#web/text/text.ts'
import { NumberField } from './number-field.tsx'

interface Props {
  line: BenchLine
  name: string
  change: BenchStore['change']
}

type CellProps = Props & { share_percent: number | null }

/** Digits of a gram that are shown: a tenth of a milligram. */
const DIGITS = 4

const PHASES = Object.entries(text.recipe.phases) as [Phase, string][]

/** Share as a field. The line that fills up shows what it comes to until a figure is typed. */
export function ShareCell({ line, name, share_percent, change }: CellProps) {
  return (
    <td className="share" role="cell" data-label={text.recipe.share}>
      <NumberField
        label={text.recipe.shareOf(name)}
        hideLabel
        value={line.fills ? null : line.share_percent}
        placeholder={line.fills && share_percent !== null ? upTo(share_percent, 3) : ''}
        min={0}
        over
        max={100}
        onChange={(next) => {
          if (next !== null || !line.fills) change((bench) => setShare(bench, line.key, next), `share ${line.key}`)
        }}
      />
      {line.fills ? (
        <small>{text.recipe.fills}</small>
      ) : (
        line.share_percent === null && (
          <button
            type="button"
            className="quiet"
            aria-label={text.recipe.letFillOf(name)}
            onClick={() => change((bench) => letFill(bench, line.key, null))}
          >
            {text.recipe.letFill}
          </button>
        )
      )}
    </td>
  )
}

/** Mass in the batch as a field: grams and per cent follow each other. Nothing is shown without a batch size. */
export function MassCell({ line, name, share_percent, batch_g, change }: CellProps & { batch_g: number | null }) {
  const mass_g = gramsOf(share_percent, batch_g)
  const shown_g = mass_g === null ? null : Number(mass_g.toFixed(DIGITS))
  return (
    <td className="mass" role="cell" data-label={text.recipe.grams}>
      {batch_g !== null && (
        <NumberField
          label={text.recipe.gramsOf(name)}
          hideLabel
          value={line.fills ? null : shown_g}
          placeholder={line.fills && shown_g !== null ? upTo(shown_g, 3) : ''}
          min={0}
          over
          max={batch_g}
          onChange={(next) => {
            if (next !== null || !line.fills) change((bench) => setGrams(bench, line.key, next), `grams ${line.key}`)
          }}
        />
      )}
    </td>
  )
}

export function PhaseCell({ line, name, change }: Props) {
  return (
    <td className="phase" role="cell" data-label={text.recipe.phase}>
      <select
        aria-label={text.recipe.phaseOf(name)}
        value={line.phase ?? ''}
        onChange={(event) => {
          const phase = PHASES.find(([one]) => one === event.target.value)?.[0] ?? null
          change((bench) => editLine(bench, line.key, { phase }))
        }}
      >
        <option value="">{text.recipe.phaseOpen}</option>
        {PHASES.map(([phase, label]) => (
          <option key={phase} value={phase}>
            {label}
          </option>
        ))}
      </select>
    </td>
  )
}
