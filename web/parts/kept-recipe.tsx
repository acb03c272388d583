import { useId, useState } from 'react'
import { whenText } from '#web/format/when.ts'
import type { KeptRecipe } from '#web/state/recipes.ts'
import { recipes as T } from '#web/text/recipes.ts'
import { focusSoon } from './focus-soon.ts'
import '#web/styles/compare.css'

interface Props {
  recipe: KeptRecipe
  title: string
  isOpen: boolean
  onOpen: () => void
  onCopy: () => void
  onRename: (title: string) => void
  onRemove: () => void
}

function Rename({ title, onRename, onDone }: { title: string; onRename: Props['onRename']; onDone: () => void }) {
  const id = useId()
  const [typed, setTyped] = useState(title)
  return (
    <form
      className="row"
      onSubmit={(event) => {
        event.preventDefault()
        if (typed.trim() !== '') onRename(typed.trim())
        onDone()
      }}
      onKeyDown={(event) => {
        if (event.key === 'Escape') onDone()
      }}
    >
      <div className="field">
        <label htmlFor={id}>{T.newName}</label>
        <input id={id} autoFocus value={typed} maxLength={200} onChange={(event) => setTyped(event.target.value)} />
      </div>
      <button type="submit">{T.keep}</button>
    </form>
  )
}

/** One recipe of the list with what can be done with it. */
export function KeptRecipeItem({ recipe, title, isOpen, onOpen, onCopy, onRename, onRemove }: Props) {
  const [isRenaming, setRenaming] = useState(false)
  const { bench, changed, id } = recipe
  const done = () => {
    setRenaming(false)
    focusSoon(`[data-recipe="${id}"] .rename`)
  }
  return (
    <li data-recipe={id}>
      <div>
        <strong>{title}</strong> {isOpen && <em>({T.isOpen})</em>}
        <br />
        <small>
          {T.size(bench.lines.length, bench.settings.batch_g)} · {T.changed(whenText(changed))}
        </small>
        {isRenaming && <Rename title={title} onRename={onRename} onDone={done} />}
      </div>
      <div className="row">
        <button type="button" aria-label={T.openOf(title)} onClick={onOpen}>
          {T.open}
        </button>
        <button type="button" className="quiet" aria-label={T.copyOf(title)} onClick={onCopy}>
          {T.copy}
        </button>
        <button
          type="button"
          className="quiet rename"
          aria-label={T.renameOf(title)}
          aria-expanded={isRenaming}
          onClick={() => setRenaming(!isRenaming)}
        >
          {T.rename}
        </button>
        <button type="button" className="quiet" aria-label={T.removeOf(title)} onClick={onRemove}>
          {T.remove}
        </button>
      </div>
    </li>
  )
}
