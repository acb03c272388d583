import { working } from '#web/text/working.ts'

const T = working.preservation
const GERMS = ['gramPositive', 'gramNegative', 'yeast', 'mould'] as const
export type Germ = (typeof GERMS)[number]

/** How much of a cell is filled: a full, a half, an empty ring, or a question mark. */
type Fill = 'full' | 'half' | 'empty' | 'unknown'
const FILLS: Readonly<Record<string, Fill>> = {
  covered: 'full',
  strong: 'full',
  moderate: 'half',
  weak: 'half',
  open: 'empty',
  none: 'empty',
}

export interface SpectrumRow {
  name: string
  /** word by germ; what is left out is not known */
  words: Partial<Record<Germ, string>>
  isSystem?: boolean
}

function Dot({ fill }: { fill: Fill }) {
  return (
    <svg className="spectrum-dot" viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">
      {fill === 'unknown' ? (
        <text x="10" y="15" textAnchor="middle">
          ?
        </text>
      ) : (
        <circle cx="10" cy="10" r="7.5" />
      )}
      {fill === 'full' && <circle className="filled" cx="10" cy="10" r="7.5" />}
      {fill === 'half' && <path className="filled" d="M2.5 10a7.5 7.5 0 0 0 15 0z" />}
    </svg>
  )
}

const wordOf = (word: string | undefined): string => {
  if (word === undefined) return T.cover['not-known']
  return T.strength[word] ?? T.cover[word as keyof typeof T.cover] ?? word
}

/** Preservatives against germs as a grid; each cell has a shape and its word, so the grid is its own table. */
export function SpectrumGrid({ rows }: { rows: readonly SpectrumRow[] }) {
  return (
    <div className="scroll" role="region" aria-label={T.covers} tabIndex={0}>
      <table className="spectrum">
        <caption className="hidden">{T.covers}</caption>
        <thead>
          <tr>
            <th scope="col">{T.agent}</th>
            {GERMS.map((germ) => (
              <th key={germ} scope="col">
                {T.germ[germ]}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ name, words, isSystem }) => (
            <tr key={name} data-system={isSystem || undefined}>
              <th scope="row">{name}</th>
              {GERMS.map((germ) => (
                <td key={germ}>
                  <Dot fill={FILLS[words[germ] ?? ''] ?? 'unknown'} /> {wordOf(words[germ])}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}
