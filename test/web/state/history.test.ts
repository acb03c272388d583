import { describe, expect, test } from 'vitest'
import { record, redo, startHistory, undo } from '#web/state/history.ts'

describe('history of states', () => {
  test('undo brings back the state before, redo the one after', () => {
    const two = record(record(startHistory('a'), 'b'), 'c')
    expect(undo(two).present).toBe('b')
    expect(undo(undo(two)).present).toBe('a')
    expect(redo(undo(two))).toEqual({ ...two, tag: null })
  })
  test('undo and redo at the ends change nothing', () => {
    const one = startHistory('a')
    expect(undo(one)).toBe(one)
    expect(redo(one)).toBe(one)
  })
  test('a new state after undo forgets what was undone', () =>
    expect(record(undo(record(startHistory('a'), 'b')), 'c')).toMatchObject({ past: ['a'], present: 'c', future: [] }))
  test('typing into one field is one step', () => {
    const typed = ['1', '12', '12.5'].reduce((history, next) => record(history, next, 'share l1'), startHistory(''))
    expect(undo(typed).present).toBe('')
  })
  test('another field is another step', () => {
    const typed = record(record(startHistory('a'), 'b', 'ph'), 'c', 'batch')
    expect(undo(typed).present).toBe('b')
  })
  test('the same state again is no step', () => {
    const one = startHistory('a')
    expect(record(one, 'a')).toBe(one)
  })
})
