import { createEmptyCard, fsrs, Rating } from 'ts-fsrs'
import type { Card } from 'ts-fsrs'
import { expect, test } from 'vitest'
import type { LearnItem } from '#web/client/use-learn.ts'
import { EMPTY_PROGRESS, withAnswer } from '#web/state/review.ts'
import type { Progress } from '#web/state/review.ts'
import { random } from '../../bench/random.ts'

const HISTORIES = 100_000
const MOST_ANSWERS = 6
const HOUR_MS = 3_600_000
const FIRST = Date.UTC(2026, 0, 5, 9)

const ITEM = {
  id: 'one',
  ref: { kind: 'what-if', seed: 1 },
  kind: 'what-if',
  question: '',
  choices: [],
} as unknown as LearnItem

/** Right or wrong, and the hours after which the next answer comes: minutes to half a year. */
function historyOf(rnd: () => number): { isRight: boolean; after_ms: number }[] {
  const length = 1 + Math.floor(rnd() * MOST_ANSWERS)
  return Array.from({ length }, () => ({ isRight: rnd() < 0.75, after_ms: Math.round(rnd() ** 4 * 4400 * HOUR_MS) }))
}

/** The library alone, its cards handed on as they are, never written down. */
const library = fsrs({ enable_fuzz: false })

test('a schedule that goes through storage at every answer is that of the library, in 100,000 histories', () => {
  const rnd = random(31)
  let differing = 0
  for (let n = 0; n < HISTORIES; n++) {
    let progress: Progress = EMPTY_PROGRESS
    let card: Card | null = null
    let now = FIRST
    for (const { isRight, after_ms } of historyOf(rnd)) {
      const at = new Date(now)
      card = library.next(card ?? createEmptyCard(at), at, isRight ? Rating.Good : Rating.Again).card
      const kept = withAnswer(progress, ITEM, isRight, at)
      progress = { ...kept, items: { one: { item: ITEM, card: JSON.parse(JSON.stringify(kept.items['one']!.card)) } } }
      now += after_ms
    }
    if (!same(progress, card!)) differing += 1
  }
  expect(differing).toBe(0)
}, 300_000)

/** Keys in any order, dates as texts. */
function same(progress: Progress, card: Card): boolean {
  const plain = JSON.parse(JSON.stringify(card)) as Record<string, unknown>
  const kept = progress.items['one']!.card as unknown as Record<string, unknown>
  const keys = [...new Set([...Object.keys(plain), ...Object.keys(kept)])]
  return keys.every((key) => plain[key] === kept[key])
}
