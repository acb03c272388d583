interface Props<T extends string> {
  legend: string
  name: string
  value: T
  choices: Record<T, string>
  onChange: (value: T) => void
}

/** One of a few, as radio buttons. */
export function Choice<T extends string>({ legend, name, value, choices, onChange }: Props<T>) {
  return (
    <fieldset className="choice">
      <legend>{legend}</legend>
      {(Object.keys(choices) as T[]).map((one) => (
        <label key={one} className="tick">
          <input type="radio" name={name} value={one} checked={value === one} onChange={() => onChange(one)} />
          {choices[one]}
        </label>
      ))}
    </fieldset>
  )
}
