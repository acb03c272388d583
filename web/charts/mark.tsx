/** Shapes tell series apart without colour; dashes do the same for lines. */
const SHAPES = [
  'M-5 0a5 5 0 1 0 10 0a5 5 0 1 0-10 0z',
  'M-4.5-4.5h9v9h-9z',
  'M0-6 5.6 4.2h-11.2z',
  'M0-6.2 6.2 0 0 6.2-6.2 0z',
  'M0 6-5.6-4.2h11.2z',
  'M-5.5-1.8h3.7v-3.7h3.6v3.7h3.7v3.6h-3.7v3.7h-3.6v-3.7h-3.7z',
]
const DASHES = ['', '9 4', '3 4', '12 4 3 4', '6 3 2 3 2 3', '1 4']

export const dashOf = (series: number): string | undefined => DASHES[series % DASHES.length] || undefined
export const letterOf = (series: number): string => String.fromCharCode(65 + (series % 26))

export function Mark({ series, x, y, large }: { series: number; x: number; y: number; large?: boolean }) {
  const d = SHAPES[series % SHAPES.length]
  return (
    <path
      className={`mark series-${series % 4}`}
      d={d}
      transform={`translate(${x} ${y}) scale(${large ? 1.5 : 0.8})`}
    />
  )
}
