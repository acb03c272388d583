import { describe, expect, test } from 'vitest'
import type { LearnItem } from '#web/client/use-learn.ts'
import { EMPTY } from '#web/state/bench.ts'
import { changedSince, newClass, openClass, printOf, withImported, withoutClass } from '#web/state/teach.ts'
import type { TeachClass } from '#web/state/teach.ts'
import { loadClasses, saveClasses } from '#web/state/teach-keep.ts'
import { classFile, readClass } from '#web/state/teach-read.ts'

const bare = (): TeachClass => newClass([], 'Evening group', '2026-11-27')
const full = (): TeachClass => ({
  ...bare(),
  roles: ['humectant'],
  recipes: [{ from: 'demo:lip-balm', bench: { ...EMPTY, title: 'Lip balm' } }],
  quizzes: [
    {
      id: 'q1',
      seed: 7,
      count: 4,
      kinds: ['what-if'],
      roles: ['humectant'],
      made: ['a-1'],
      students: [{ name: 'Ada', typed: 'ABCD' }],
    },
  ],
  progress: [
    { name: 'Bo', last: [{ id: 'i', question: 'Which?', kind: 'plays-role', role: 'humectant', right: false }] },
  ],
})
/** A store that holds what it is given. */
function storeOf(start: Record<string, string> = {}) {
  const held = new Map(Object.entries(start))
  return {
    held,
    getItem: (key: string) => held.get(key) ?? null,
    setItem: (key: string, value: string) => void held.set(key, value),
  }
}

describe('kept on this device', () => {
  test('classes come back as they were kept', () => {
    const store = storeOf()
    const all = { open: 'c1', classes: [full()] }
    expect(saveClasses(store, all)).toBe(true)
    expect(loadClasses(store)).toEqual(all)
  })
  test.each(['{', '[]', '{"version":2,"classes":[]}', '{"version":1,"classes":[{"id":"c1"}]}'])(
    'what cannot be read is put aside and not lost: %s',
    (text) => {
      const store = storeOf({ 'understudy-classes': text })
      expect(loadClasses(store).classes).toEqual([])
      expect(store.held.get('understudy-classes-unreadable')).toBe(text)
    },
  )
  test('one unreadable class leaves the others', () => {
    const text = JSON.stringify({ version: 1, open: 'c1', classes: [full(), { id: 'c2' }] })
    expect(loadClasses(storeOf({ 'understudy-classes': text })).classes).toEqual([full()])
  })
  test('a browser that refuses is said so', () => {
    const refuses = {
      getItem: () => null,
      setItem: () => {
        throw new Error('full')
      },
    }
    expect(saveClasses(refuses, { open: null, classes: [] })).toBe(false)
  })
})

describe('as a file', () => {
  test('a class goes out and comes in the same', () => {
    expect(readClass(classFile(full()))).toEqual({ taken: full() })
  })
  test('a class from a file stands beside one of the same id', () => {
    const all = withImported({ open: 'c1', classes: [full()] }, full())
    expect(all.classes.map(({ id }) => id)).toEqual(['c1', 'c2'])
    expect(openClass(all)?.id).toBe('c2')
  })
  const changed = (how: (one: Record<string, unknown>) => void): string => {
    const file = JSON.parse(classFile(full())) as Record<string, Record<string, unknown>>
    how(file['class'] ?? {})
    return JSON.stringify(file)
  }
  test.each([
    ['not JSON', 'nonsense', '', 'json'],
    ['a file of progress', '{"version":1,"items":{}}', '', 'class-file'],
    ['a newer version', classFile(bare()).replace('"version": 1', '"version": 2'), 'version', 'version'],
    ['a name that is a number', changed((one) => (one['name'] = 4)), 'class.name', 'text'],
    ['a date of words', changed((one) => (one['date'] = 'Monday')), 'class.date', 'day'],
    ['21 roles', changed((one) => (one['roles'] = Array(21).fill('x'))), 'class.roles', 'few-roles'],
    ['no list of recipes', changed((one) => (one['recipes'] = {})), 'class.recipes', 'list'],
    ['no recipe', changed((one) => (one['recipes'] = [{ from: 'x', bench: {} }])), 'class.recipes[0].bench', 'recipe'],
    [
      'a seed too large',
      changed((one) => (one['quizzes'] = [{ ...full().quizzes[0], seed: 2 ** 32 }])),
      'class.quizzes[0].seed',
      'seed',
    ],
    [
      'an unknown kind',
      changed((one) => (one['quizzes'] = [{ ...full().quizzes[0], kinds: ['riddle'] }])),
      'class.quizzes[0].kinds',
      'kinds',
    ],
    [
      'right as a word',
      changed((one) => (one['progress'] = [{ name: 'Bo', last: [{ ...full().progress[0]?.last[0], right: 'yes' }] }])),
      'class.progress[0].last[0].right',
      'yes-no',
    ],
  ])('%s is named with its place', (_, text, at, expected) => {
    expect(readClass(text)).toEqual({ fault: { at, expected } })
  })
  test('what the format does not know stays outside', () => {
    expect(readClass(changed((one) => (one['more'] = 1)))).toEqual({ taken: full() })
  })
})

test('a removed class leaves the next one open', () => {
  const two = { ...bare(), id: 'c2' }
  expect(withoutClass({ open: 'c1', classes: [bare(), two] }, 'c1')).toEqual({ open: 'c2', classes: [two] })
})

describe('a sheet against the questions made now', () => {
  const item = (id: string, ...choices: string[]): LearnItem => ({
    id,
    ref: { kind: 'what-if', seed: 1 },
    kind: 'what-if',
    difficulty: 1,
    question: 'What?',
    choices: choices.map((one) => ({ id: one, text: one })),
  })
  const made = [item('i', 'a', 'b'), item('j', 'a', 'b')].map(printOf)
  test('the same questions are as printed', () => {
    expect(changedSince(made, [item('i', 'a', 'b'), item('j', 'a', 'b')])).toEqual([])
  })
  test('another order of choices, another question or one that is gone is not', () => {
    expect(changedSince(made, [item('i', 'b', 'a'), item('k', 'a', 'b')])).toEqual([0, 1])
    expect(changedSince(made, [item('i', 'a', 'b')])).toEqual([1])
  })
})
