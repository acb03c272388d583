import { readable } from '#web/client/use-labels.ts'
import type { NameSuggestion } from '#web/client/use-names.ts'
import { combobox as T } from '#web/text/combobox.ts'

interface Props {
  id: string
  options: string
  isOpen: boolean
  names: readonly NameSuggestion[]
  active: number
  /** names of an earlier text: the new ones are on their way */
  isOld: boolean
  onTake: (name: NameSuggestion) => void
}

function Option({
  id,
  name,
  isActive,
  onTake,
}: { id: string; name: NameSuggestion; isActive: boolean } & Pick<Props, 'onTake'>) {
  return (
    <li
      id={id}
      role="option"
      aria-selected={isActive}
      data-tier={name.tier}
      // The field keeps the focus; a finger that scrolls the list takes nothing.
      onMouseDown={(event) => event.preventDefault()}
      onClick={() => onTake(name)}
      ref={(element) => {
        if (isActive) element?.scrollIntoView({ block: 'nearest' })
      }}
    >
      <span className="option-name">
        <b>{readable(name.inci)}</b>
        {name.name !== undefined && <span> {T.known(name.name)}</span>}
      </span>
      <small>{[...name.roles, T.tiers[name.tier]].join(' · ')}</small>
    </li>
  )
}

/** The list below the field; in the tree while it is closed too, so that the field always controls something. */
export function ComboboxList({ id, options, isOpen, names, active, isOld, onTake }: Props) {
  return (
    <ul id={options} role="listbox" aria-label={T.list} aria-busy={isOld} hidden={!isOpen || names.length === 0}>
      {isOpen &&
        names.map((name, at) => (
          <Option key={name.ingredient} id={`${id}-${at}`} name={name} isActive={at === active} onTake={onTake} />
        ))}
    </ul>
  )
}
