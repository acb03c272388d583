import { letterOf } from '#web/state/teach-letters.ts'
import type { Marked, Tally } from '#web/state/teach-marks.ts'
import { teach } from '#web/text/teach.ts'
import { ShareCells } from './share-cell.tsx'
import { Said } from '#web/parts/spoken.tsx'

const T = teach.results

interface Props {
  questions: readonly Marked[]
  tallies: readonly Tally[]
  labelOf: (group: string) => string
}

/** How each question went in the whole class, in the order of the sheet. */
export function QuestionTable({ questions, tallies, labelOf }: Props) {
  const { number, question, key, right, share, open } = T.columns
  return (
    <section className="card teach-result">
      <table className="sheet-table teach-table">
        <caption>{T.questions}</caption>
        <thead>
          <tr>
            {[number, question, key, right, share, open].map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {questions.map((one, at) => {
            const tally = tallies[at] ?? { right: 0, open: 0, of: 0 }
            return (
              <tr key={at}>
                <td data-head={number}>{at + 1}</td>
                <th scope="row">
                  <Said>{one.question}</Said> <small>{labelOf(one.group)}</small>
                </th>
                <td data-head={key}>{one.key === null ? T.notKnown : letterOf(one.key)}</td>
                <ShareCells tally={tally} />
                <td data-head={open}>{tally.open}</td>
              </tr>
            )
          })}
        </tbody>
      </table>
    </section>
  )
}
