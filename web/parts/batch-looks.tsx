import type { BatchReply } from '#web/client/use-batch.ts'
import { text } from '#web/text/text.ts'
import { dayText } from '#web/format/day.ts'
import { Said } from './spoken.tsx'

/** Days on which the product is looked at, with room to write. */
/** Blanks that only a product with a pH has. */
const OF_PH = ['ph', 'acid']

/** Days on which the product is looked at, with room to write. */
export function BatchLooks({ looks, hasPh }: { looks: BatchReply['looks']; hasPh: boolean }) {
  const words = text.batch.looks
  const blanks = Object.entries(text.batch.written).filter(([key]) => hasPh || !OF_PH.includes(key))
  return (
    <section className="card batch-looks" aria-labelledby="batch-looks-title">
      <h2 id="batch-looks-title">{words.title}</h2>
      <p className="remark">
        <Said>{looks[0]?.look}</Said>
      </p>
      <table className="looks">
        <caption className="hidden">{words.caption}</caption>
        <thead>
          <tr>
            <th scope="col">{words.day}</th>
            <th scope="col">{words.date}</th>
            <th scope="col" className="seen">
              {words.seen}
            </th>
          </tr>
        </thead>
        <tbody>
          {looks.map(({ day, date }) => (
            <tr key={day}>
              <th scope="row">
                <span className="day-word print-only">{words.day} </span>
                {day}
              </th>
              <td>{date ? dayText(date) : '…………'}</td>
              <td className="seen" />
            </tr>
          ))}
        </tbody>
      </table>
      <p className="written print-only">
        {blanks.map(([, word]) => (
          <span key={word}>{word}</span>
        ))}
      </p>
    </section>
  )
}
