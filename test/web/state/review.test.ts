import fc from 'fast-check'
import { createEmptyCard, fsrs, Rating } from 'ts-fsrs'
import { describe, expect, test } from 'vitest'
import type { LearnItem } from '#web/client/use-learn.ts'
import {
  dueOf,
  EMPTY_PROGRESS,
  loadProgress,
  readProgress,
  saveProgress,
  together,
  withAnswer,
  withoutItem,
} from '#web/state/review.ts'
import type { Progress } from '#web/state/review.ts'

const item = (id: string): LearnItem => ({
  id,
  ref: { kind: 'active-matter', seed: 1 },
  kind: 'active-matter',
  difficulty: 1,
  question: 'How much?',
  choices: [
    { id: '1', text: '1 %' },
    { id: '2', text: '2 %' },
  ],
})
const START = new Date('2026-03-02T09:00:00')
const after = (from: Date, minutes: number) => new Date(from.getTime() + minutes * 60_000)
const answer = (progress: Progress, id: string, isRight: boolean, now = START) =>
  withAnswer(progress, item(id), isRight, now)

/** A history: whether each answer was right, and the minutes that passed before it, up to three months. */
const history = fc.array(fc.tuple(fc.boolean(), fc.integer({ min: 1, max: 130_000 })), { minLength: 1, maxLength: 12 })

test('the kept schedule is that of the scheduler itself, through storage and back after every answer', () => {
  fc.assert(
    fc.property(history, (answers) => {
      const scheduler = fsrs({ enable_fuzz: false })
      let now = START
      let card = createEmptyCard(after(START, answers[0]![1]))
      let progress: Progress = EMPTY_PROGRESS
      for (const [isRight, minutes] of answers) {
        now = after(now, minutes)
        card = scheduler.next(card, now, isRight ? Rating.Good : Rating.Again).card
        progress = readProgress(JSON.stringify(answer(progress, 'a', isRight, now)))!
      }
      expect(progress.items['a']?.card).toEqual(JSON.parse(JSON.stringify(card)))
    }),
    { numRuns: 3000 },
  )
})

describe('the queue of the day', () => {
  test('holds what is due, the longest due first, and counts what comes later', () => {
    const early = answer(EMPTY_PROGRESS, 'b', true)
    const both = answer(early, 'a', false)
    expect(dueOf(both, START)).toEqual({ now: [], laterToday: 2 })
    expect(dueOf(both, after(START, 5)).now.map(({ id }) => id)).toEqual(['a'])
    expect(dueOf(both, after(START, 30)).now.map(({ id }) => id)).toEqual(['a', 'b'])
  })
  test('leaves out what is known for days', () => {
    const once = answer(EMPTY_PROGRESS, 'a', true)
    const twice = answer(once, 'a', true, after(START, 15))
    expect(dueOf(twice, after(START, 60))).toEqual({ now: [], laterToday: 0 })
    expect(dueOf(twice, after(START, 60 * 24 * 30)).now).toHaveLength(1)
  })
})

describe('progress from outside', () => {
  const whole = answer(answer(EMPTY_PROGRESS, 'a', true), 'b', false)
  test('is read as it was written', () => {
    expect(readProgress(JSON.stringify(whole))).toEqual(whole)
  })
  test.each([
    ['no JSON', '{'],
    ['another version', JSON.stringify({ ...whole, version: 2 })],
    ['no items', JSON.stringify({ version: 1 })],
    ['a card without a date', JSON.stringify(whole).replace(/"due":"[^"]*"/, '"due":"soon"')],
    ['a card without figures', JSON.stringify(whole).replace(/"stability":[\d.]+/, '"stability":null')],
    ['an item under another id', JSON.stringify(whole).replace('"a":{"item"', '"c":{"item"')],
    ['choices that are none', JSON.stringify(whole).replace(/"choices":\[[^\]]*\]/, '"choices":[1]')],
  ])('%s is refused', (_what, text) => {
    expect(readProgress(text)).toBeNull()
  })
  test('is put together with what is here; what was answered last counts', () => {
    const later = answer(whole, 'a', false, after(START, 600))
    const other = answer(EMPTY_PROGRESS, 'c', true)
    expect(together(whole, later).items['a']).toEqual(later.items['a'])
    expect(together(later, whole).items['a']).toEqual(later.items['a'])
    expect(Object.keys(together(whole, other).items).sort()).toEqual(['a', 'b', 'c'])
  })
  test('an item that is gone is taken out alone', () => {
    expect(Object.keys(withoutItem(whole, 'a').items)).toEqual(['b'])
  })
})

describe('storage', () => {
  const store = (kept: Record<string, string> = {}) => ({
    kept,
    getItem: (key: string) => kept[key] ?? null,
    setItem: (key: string, text: string) => void (kept[key] = text),
  })
  test('gives back what was saved', () => {
    const here = store()
    const progress = answer(EMPTY_PROGRESS, 'a', true)
    expect(saveProgress(here, progress)).toBe(true)
    expect(loadProgress(here)).toEqual(progress)
  })
  test('puts aside what it cannot read', () => {
    const here = store({ 'understudy-learn': 'broken' })
    expect(loadProgress(here)).toEqual(EMPTY_PROGRESS)
    expect(here.kept['understudy-learn-unreadable']).toBe('broken')
  })
  test('says so when the browser refuses', () => {
    const refuses = () => {
      throw new Error('full')
    }
    expect(saveProgress({ getItem: () => null, setItem: refuses }, EMPTY_PROGRESS)).toBe(false)
    expect(loadProgress({ getItem: refuses, setItem: refuses })).toEqual(EMPTY_PROGRESS)
  })
})
