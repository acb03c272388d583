import { useId } from 'react'
import type { WishList } from '#web/state/bench.ts'
import { setWishes } from '#web/state/edit.ts'
import type { BenchStore } from '#web/state/use-bench.ts'
import type { Shelf } from '#web/state/shelf.ts'
import { text } from '#web/text/text.ts'
import { Ticks } from './ticks.tsx'

interface Props {
  wishes: WishList
  shelf: Shelf
  change: BenchStore['change']
}

function ShelfField({ wishes, shelf, change }: Props) {
  const id = useId()
  return (
    <div className="field">
      <label htmlFor={id}>{text.wishes.shelf}</label>
      <textarea
        id={id}
        rows={4}
        spellCheck={false}
        value={wishes.shelf}
        aria-describedby={`${id}-hint`}
        onChange={(event) => change((bench) => setWishes(bench, { shelf: event.target.value }), 'shelf')}
      />
      <small id={`${id}-hint`}>{text.wishes.shelfHint}</small>
      <p role="status" className="remark">
        {shelf.ids.length === 0 ? text.wishes.shelfEmpty : text.wishes.shelfKnown(shelf.ids.length)}
        {shelf.unknown.length > 0 && `. ${text.wishes.shelfUnknown(shelf.unknown.join(', '))}`}
      </p>
    </div>
  )
}

/** What the stand-in should be, beside that it works. */
export function WishForm({ wishes, shelf, change }: Props) {
  const tick = (key: 'cold' | 'keepPh' | 'onlyShelf' | 'alsoInventory', label: string) => (
    <label className="tick">
      <input
        type="checkbox"
        checked={wishes[key] ?? false}
        onChange={(event) => change((bench) => setWishes(bench, { [key]: event.target.checked }))}
      />
      {label}
    </label>
  )
  const active = wishes.without.length + [wishes.cold, wishes.keepPh, wishes.onlyShelf].filter(Boolean).length
  return (
    <details className="wishes">
      <summary>
        {text.wishes.title}
        {active > 0 && <small> {text.wishes.active(active)}</small>}
      </summary>
      <Ticks
        legend={text.wishes.without}
        chosen={wishes.without}
        choices={text.wishes.classes}
        onChange={(without) => change((bench) => setWishes(bench, { without }))}
      />
      <div className="ticks">
        {tick('cold', text.wishes.cold)}
        {tick('keepPh', text.wishes.keepPh)}
        {tick('onlyShelf', text.wishes.onlyShelf)}
        {tick('alsoInventory', text.swaps.inventory)}
      </div>
      {wishes.onlyShelf && <ShelfField wishes={wishes} shelf={shelf} change={change} />}
    </details>
  )
}
