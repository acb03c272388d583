import { useRoleLabels } from '#web/client/use-role-labels.ts'
import type { LearnItem } from '#web/client/use-learn.ts'
import { LearnRecipe } from '#web/parts/learn-recipe.tsx'
import { letterOf } from '#web/state/teach-letters.ts'
import type { Quiz, TeachClass } from '#web/state/teach.ts'
import { learn } from '#web/text/learn.ts'
import { teach } from '#web/text/teach.ts'
import { classTitle } from './class-title.ts'
import { NameLines } from './name-lines.tsx'
import '#web/styles/learn.css'
import { lowered } from '#web/format/lower.ts'
import { Said } from '#web/parts/spoken.tsx'

const T = teach.quiz

interface Props {
  of: TeachClass
  quiz: Quiz
  items: readonly LearnItem[]
  graphVersion: string
}

/** What the sheet was made of, so that it can be made again. */
export function MadeOf({ quiz: { seed, count, kinds, roles }, graphVersion }: Pick<Props, 'quiz' | 'graphVersion'>) {
  const labelOfRole = useRoleLabels()
  const asked = kinds.length === 0 ? T.all : kinds.map((kind) => learn.kinds[kind]).join(', ')
  const about = roles.length === 0 ? T.all : roles.map((role) => lowered(labelOfRole(role))).join(', ')
  return (
    <p className="remark">
      {T.made(seed, count, asked, about)} · {T.data(graphVersion)}
    </p>
  )
}

function Item({ item, at }: { item: LearnItem; at: number }) {
  return (
    <li className="keep" aria-label={T.question(at + 1)}>
      <p>
        <strong>
          {at + 1}. <Said>{item.question}</Said>
        </strong>
      </p>
      {item.recipe && <LearnRecipe recipe={item.recipe} />}
      <ul className="teach-choices">
        {item.choices.map(({ id, text }, place) => (
          <li key={id}>
            <b>{letterOf(place)}</b> <Said>{text}</Said>
          </li>
        ))}
      </ul>
      <p className="teach-answer">
        {T.answer} <span className="write short" />
      </p>
    </li>
  )
}

/** The questions, numbered, with lettered choices and lines to write on. */
export function QuizSheet({ of, quiz, items, graphVersion }: Props) {
  return (
    <section className="card teach-page" aria-labelledby="sheet-title">
      <h2 id="sheet-title">{T.title(classTitle(of))}</h2>
      <NameLines />
      <p>{T.task}</p>
      <ol className="teach-items">
        {items.map((item, at) => (
          <Item key={item.id} item={item} at={at} />
        ))}
      </ol>
      <MadeOf quiz={quiz} graphVersion={graphVersion} />
    </section>
  )
}
