import type { LearnAnswer, LearnItem } from '#web/client/use-learn.ts'
import { isNoSource, sourceWords } from '#web/format/source.ts'
import { letterOf } from '#web/state/teach-letters.ts'
import type { Quiz, TeachClass } from '#web/state/teach.ts'
import { learn } from '#web/text/learn.ts'
import { teach } from '#web/text/teach.ts'
import { classTitle } from './class-title.ts'
import { MadeOf } from './quiz-sheet.tsx'
import type { QuizKey } from './use-quiz.ts'
import { rangeText } from '#web/format/number.ts'
import { Said } from '#web/parts/spoken.tsx'

const T = teach.quiz
const IN_A_ROW = 10 // as many letters as a narrow screen holds

interface Props {
  of: TeachClass
  quiz: Quiz
  items: readonly LearnItem[]
  quizKey: QuizKey
  graphVersion: string
}

const keyLetter = ({ choices }: LearnItem, answer: LearnAnswer | null): string => {
  const place = choices.findIndex(({ id }) => id === answer?.key)
  return place < 0 ? '?' : letterOf(place)
}

function Letters({ letters, first }: { letters: readonly string[]; first: number }) {
  return (
    <table
      className="teach-letters"
      aria-label={`${T.keyTable}, ${rangeText({ min: first + 1, max: first + letters.length })}`}
    >
      <tbody>
        <tr>
          <th scope="row">{T.number}</th>
          {letters.map((_, at) => (
            <th key={at} scope="col">
              {first + at + 1}
            </th>
          ))}
        </tr>
        <tr>
          <th scope="row">{T.letter}</th>
          {letters.map((letter, at) => (
            <td key={at}>{letter}</td>
          ))}
        </tr>
      </tbody>
    </table>
  )
}

function sourceText({ cited }: LearnAnswer, id: string): string {
  const work = cited.find((one) => one.id === id)
  if (isNoSource(id) || !work) return sourceWords(id)
  return [work.title, work.locator].filter((one) => one !== '').join(', ')
}

function Reason({ item, answer, failed }: { item: LearnItem; answer: LearnAnswer | null; failed: boolean }) {
  if (!answer) return <li>{failed ? T.failed : learn.judging}</li>
  return (
    <li className="keep">
      <strong>
        {keyLetter(item, answer)}: <Said>{item.choices.find(({ id }) => id === answer.key)?.text}</Said>
      </strong>{' '}
      <Said>{answer.because}</Said>
      <small>
        {' '}
        {learn.sources}: {answer.sources.map((id) => sourceText(answer, id)).join('; ')}
      </small>
    </li>
  )
}

/** The key on a page of its own: letters at a glance, then the reasons with their sources. */
export function QuizKeyPage({ of, quiz, items, quizKey, graphVersion }: Props) {
  const letters = items.map((item, at) => keyLetter(item, quizKey.answers[at] ?? null))
  const rows = Array.from({ length: Math.ceil(letters.length / IN_A_ROW) }, (_, row) => row * IN_A_ROW)
  return (
    <section className="card teach-page new-page" aria-labelledby="key-title">
      <h2 id="key-title">{T.keyTitle(classTitle(of))}</h2>
      <MadeOf quiz={quiz} graphVersion={graphVersion} />
      {rows.map((first) => (
        <Letters key={first} first={first} letters={letters.slice(first, first + IN_A_ROW)} />
      ))}
      <h3>{T.reasons}</h3>
      <ol className="teach-reasons">
        {items.map((item, at) => (
          <Reason key={item.id} item={item} answer={quizKey.answers[at] ?? null} failed={quizKey.failed[at] === true} />
        ))}
      </ol>
      <p className="remark">{T.caution}</p>
    </section>
  )
}
