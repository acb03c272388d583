import { describe, expect, test } from 'vitest'
import { EMPTY } from '#web/state/bench.ts'
import { benchFromText } from '#web/state/from-text.ts'
import { record, startHistory } from '#web/state/history.ts'
import { loadBench, saveBench } from '#web/state/storage.ts'

function makeStore(start: Record<string, string> = {}) {
  const kept = new Map(Object.entries(start))
  return {
    kept,
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
  }
}

describe('the kept bench', () => {
  test('comes back with its history', () => {
    const store = makeStore()
    const history = record(startHistory(EMPTY), benchFromText('Glycerin 3\nWater to 100'))
    expect(saveBench(store, history)).toBe(true)
    expect(loadBench(store)).toEqual(history)
  })
  test('is empty at the first visit', () => expect(loadBench(makeStore())).toEqual(startHistory(EMPTY)))
  test.each(['not json', '{"version":99,"history":{}}', '{"version":1,"history":{"present":{}}}', 'null'])(
    'puts %s aside instead of throwing it away',
    (text) => {
      const store = makeStore({ 'understudy-bench': text })
      expect(loadBench(store)).toEqual(startHistory(EMPTY))
      expect(store.kept.get('understudy-bench-unreadable')).toBe(text)
    },
  )
  test('says so when the browser refuses to keep it', () => {
    const full = {
      getItem: () => null,
      setItem: () => {
        throw new Error('quota')
      },
    }
    expect(saveBench(full, startHistory(EMPTY))).toBe(false)
  })
})
