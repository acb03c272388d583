import { useId } from 'react'

interface Props {
  label: string
  value: number
  from: number
  to: number
  step: number
  onChange: (value: number) => void
}

/** One figure to move between two ends. */
export function Slider({ label, value, from, to, step, onChange }: Props) {
  const id = useId()
  return (
    <p className="lesson-slider">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="range"
        min={from}
        max={to}
        step={step}
        value={value}
        onChange={(event) => onChange(Number(event.target.value))}
      />
    </p>
  )
}
