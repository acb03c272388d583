import { useState } from 'react'
import { Link, useSearchParams } from 'wouter'
import { useLearnItems } from '#web/client/use-learn.ts'
import type { LearnItem, LearnKind } from '#web/client/use-learn.ts'
import { useLearnProgress } from '#web/client/use-learn-progress.ts'
import { useRoleLabels } from '#web/client/use-role-labels.ts'
import { useTitle } from '#web/client/use-title.ts'
import { LessonList } from '#web/lessons/lesson-list.tsx'
import { Choice } from '#web/parts/choice.tsx'
import { LearnReview } from '#web/parts/learn-review.tsx'
import { LearnSet } from '#web/parts/learn-set.tsx'
import { Failed, Loading } from '#web/parts/states.tsx'
import { dueOf } from '#web/state/review.ts'
import { learn as T } from '#web/text/learn.ts'
import { teach } from '#web/text/teach.ts'
import '#web/styles/learn.css'
import { InEnglish, Spoken } from '#web/parts/spoken.tsx'

const SEEDS = 2 ** 32 - 1
const drawSeed = (): number => Math.floor(Math.random() * SEEDS)

const isKind = (word: string): word is LearnKind | 'all' => Object.hasOwn(T.kinds, word)

/** What is asked about stands in the address: a lesson leads to questions of its own kind and roles. */
function useAsked() {
  const [params, setParams] = useSearchParams()
  const word = params.get('kind') ?? 'all'
  const roles = (params.get('roles') ?? '').split(',').filter(Boolean)
  return {
    kind: isKind(word) ? word : 'all',
    roles,
    isAsked: params.has('roles'),
    setKind: (kind: LearnKind | 'all') => setParams({ kind }, { replace: true }),
  } as const
}

/** Lessons, then questions to practise on, new ones and those that come up again. */
export function LearnPage() {
  useTitle(T.title)
  const store = useLearnProgress()
  const labelOfRole = useRoleLabels()
  const { kind, roles, isAsked, setKind } = useAsked()
  const [seed, setSeed] = useState(drawSeed)
  /** questions that were due when the round began; null: new questions */
  const [round, setRound] = useState<LearnItem[] | null>(null)
  const reply = useLearnItems({ kind, roles, seed, when: round === null })
  return (
    <div className="page">
      <h1>{T.title}</h1>
      {/* above what is fetched, so that it does not move away under a finger */}
      <p>
        <Link href="/teach">{teach.link}</Link>
      </p>
      {!isAsked && <LessonList />}
      <h2 id="practise">{T.practise}</h2>
      <p className="lead">{T.lead}</p>
      {roles.length > 0 && <p>{T.about(roles.map(labelOfRole).join(', '))}</p>}
      {round ? (
        <Spoken by="POST /api/learn/items">
          <InEnglish by="POST /api/learn/items" />
          <LearnSet items={round} change={store.change} after={T.finish} onEnd={() => setRound(null)} />
        </Spoken>
      ) : (
        <>
          <Choice legend={T.kind} name="kind" value={kind} choices={T.kinds} onChange={setKind} />
          {reply.state === 'failed' && <Failed failure={reply} />}
          {reply.state === 'loading' && <Loading>{T.loading}</Loading>}
          {reply.state === 'ready' && reply.data.items.length === 0 && <p>{T.none}</p>}
          {reply.state === 'ready' && reply.data.items.length > 0 && (
            <Spoken by="POST /api/learn/items">
              <InEnglish by="POST /api/learn/items" />
              <LearnSet
                key={`${kind} ${roles.join()} ${seed}`}
                items={reply.data.items}
                change={store.change}
                after={T.more}
                onEnd={() => setSeed(drawSeed())}
              />
            </Spoken>
          )}
        </>
      )}
      {round === null && <LearnReview store={store} onStart={() => setRound(dueOf(store.progress, new Date()).now)} />}
      {isAsked && <LessonList />}
    </div>
  )
}
