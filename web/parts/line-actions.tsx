import type { BenchLine } from '#web/state/bench.ts'
import { toggleMissing } from '#web/state/edit.ts'
import type { BenchStore } from '#web/state/use-bench.ts'
import { text } from '#web/text/text.ts'
import type { LineActs } from './line-acts.ts'

interface Props {
  line: BenchLine
  name: string
  /** a line that is not known yet cannot be sought after */
  canMiss: boolean
  /** three are marked already */
  isFull: boolean
  isEditing: boolean
  acts: LineActs
  change: BenchStore['change']
  onEdit: (isEditing: boolean) => void
}

/** Missing, change, remove. */
export function LineActions({ line, name, canMiss, isFull, isEditing, acts, change, onEdit }: Props) {
  return (
    <td className="actions" role="cell">
      <button
        type="button"
        className="missing"
        aria-pressed={line.missing}
        aria-label={text.recipe.missingOf(name)}
        disabled={!canMiss || (isFull && !line.missing)}
        title={isFull && !line.missing ? text.recipe.missingFull : undefined}
        onClick={() => change((bench) => toggleMissing(bench, line.key))}
      >
        {text.recipe.missing}
      </button>
      <button
        type="button"
        className="quiet edit"
        aria-label={text.recipe.editOf(name)}
        aria-expanded={isEditing}
        onClick={() => onEdit(!isEditing)}
      >
        {text.recipe.edit}
      </button>
      <button type="button" className="quiet" aria-label={text.recipe.removeOf(name)} onClick={() => acts.remove()}>
        {text.recipe.remove}
      </button>
    </td>
  )
}
