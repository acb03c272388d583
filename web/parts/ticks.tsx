interface Props<T extends string> {
  legend: string
  chosen: readonly T[]
  choices: readonly (readonly [T, string])[]
  onChange: (chosen: T[]) => void
}

/** Any of several, as check boxes. */
export function Ticks<T extends string>({ legend, chosen, choices, onChange }: Props<T>) {
  const toggle = (one: T) => onChange(chosen.includes(one) ? chosen.filter((other) => other !== one) : [...chosen, one])
  return (
    <fieldset className="ticks">
      <legend>{legend}</legend>
      {choices.map(([one, label]) => (
        <label key={one} className="tick">
          <input type="checkbox" checked={chosen.includes(one)} onChange={() => toggle(one)} />
          {label}
        </label>
      ))}
    </fieldset>
  )
}
