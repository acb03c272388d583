// @vitest-environment happy-dom
import { fireEvent, screen, waitFor, within } from '@testing-library/react'
import { expect, test } from 'vitest'
import type { LearnItem } from '#web/client/use-learn.ts'
import { newClass } from '#web/state/teach.ts'
import type { TeachClass } from '#web/state/teach.ts'
import { classFile } from '#web/state/teach-read.ts'
import { fakeApi, makeCheck } from './fake-api.ts'
import { show, startEmpty } from './show.tsx'

startEmpty()

const item = (n: number): LearnItem => ({
  id: `item-${n}`,
  ref: { kind: 'plays-role', seed: n, role: 'humectant' },
  kind: 'plays-role',
  difficulty: 1,
  question: `Which holds water, ${n}?`,
  choices: ['urea', 'beeswax', 'talc'].map((id) => ({ id, text: id })),
})
const role = (id: string, label: string, broader?: string) => ({
  ...{ id, label, says: '', phase: 'water', confusedWith: [], players: 3 },
  ...(broader !== undefined && { broader }),
})
const answers = (more = {}) =>
  fakeApi({
    'GET /api/roles': () => ({
      roles: [role('moisture', 'Moisture'), role('humectant', 'Humectant', 'moisture')],
      graphVersion: 'v1',
    }),
    'POST /api/learn/items': () => ({ items: [item(1), item(2)], graphVersion: 'v1' }),
    'POST /api/learn/answers': (body) => ({
      right: false,
      key: (body as { id: string }).id === 'item-1' ? 'beeswax' : 'urea',
      because: 'The record says so.',
      sources: ['A', 'practice'],
      cited: [{ id: 'A', title: 'A handbook', locator: 'p. 4' }],
      about: { role: 'humectant', ingredients: [] },
      graphVersion: 'v1',
    }),
    ...more,
  })
const keep = (...classes: TeachClass[]) =>
  window.localStorage.setItem('understudy-classes', JSON.stringify({ version: 1, open: classes[0]?.id, classes }))
const withQuiz = (change: Partial<TeachClass['quizzes'][number]> = {}): TeachClass => ({
  ...newClass([], 'Evening group', '2026-11-27'),
  quizzes: [{ id: 'q1', seed: 7, count: 2, kinds: [], roles: [], made: null, students: [], ...change }],
})
const rowsOf = (name: string) =>
  within(screen.getByRole('table', { name }))
    .getAllByRole('row')
    .slice(1)
    .map((row) => [...row.children].map(({ textContent }) => textContent))
const choose = (label: string, file: File) => {
  const input = screen.getByLabelText(label)
  Object.defineProperty(input, 'files', { value: [file], configurable: true })
  fireEvent.change(input)
}

test('a class has a name, a date, roles and recipes, and is there after a reload', async () => {
  answers()
  const first = show('/teach')
  fireEvent.click(await screen.findByRole('button', { name: 'New class' }))
  fireEvent.change(screen.getByLabelText('Name of the class'), { target: { value: 'Evening group' } })
  fireEvent.change(screen.getByLabelText('Date of the class'), { target: { value: '2026-12-01' } })
  fireEvent.click(await screen.findByLabelText('Humectant'))
  fireEvent.click(screen.getByLabelText('Plain lip balm (example)'))
  first.unmount()
  show('/teach')
  expect(await screen.findByRole('option', { name: 'Evening group, 2026-12-01' })).toBeTruthy()
  expect((await screen.findByLabelText<HTMLInputElement>('Humectant')).checked).toBe(true)
  expect(screen.getByLabelText<HTMLInputElement>('Moisture').checked).toBe(false)
  expect(screen.getByLabelText<HTMLInputElement>('Plain lip balm (example)').checked).toBe(true)
})

test('a removed class can be put back', async () => {
  answers()
  keep(withQuiz())
  show('/teach')
  fireEvent.click(await screen.findByRole('button', { name: 'Remove this class' }))
  expect(screen.getByText('There is no class yet.')).toBeTruthy()
  fireEvent.click(screen.getByRole('button', { name: 'Put it back' }))
  expect(await screen.findByRole('option', { name: 'Evening group, 2026-11-27' })).toBeTruthy()
})

test('a file that is no class says what is wrong and changes nothing; a sound one is added beside the others', async () => {
  answers()
  keep(withQuiz())
  show('/teach')
  await screen.findByLabelText('Add a class from a file')
  const before = window.localStorage.getItem('understudy-classes')
  choose('Add a class from a file', new File([classFile(withQuiz({ seed: -1 }))], 'mine.json'))
  expect((await screen.findByRole('alert')).textContent).toBe(
    'mine.json was not taken in: class.quizzes[0].seed: expected a whole number from 0 to 4294967295. Nothing here was changed.',
  )
  expect(window.localStorage.getItem('understudy-classes')).toBe(before)
  choose('Add a class from a file', new File([classFile({ ...withQuiz(), name: 'Other' })], 'mine.json'))
  await screen.findByText('Other was added beside the others.')
  expect(screen.getAllByRole('option', { name: /2026-11-27/ })).toHaveLength(2)
})

test('a sheet asks for the roles of the class, has letters, and its key comes after it with reason and source', async () => {
  const asked = answers()
  keep({ ...newClass([], 'Evening group', ''), roles: ['humectant'] })
  show('/teach?part=quiz')
  fireEvent.change(await screen.findByLabelText('How many questions'), { target: { value: '2' } })
  fireEvent.change(screen.getByLabelText('Seed'), { target: { value: '7' } })
  fireEvent.click(screen.getByLabelText('Who plays a role'))
  fireEvent.click(screen.getByRole('button', { name: 'Make the sheet' }))
  await screen.findByText('The key is complete.')
  expect(asked.find(({ route }) => route.endsWith('/items'))?.body).toEqual({
    ...{ seed: 7, count: 2, kinds: ['plays-role'], roles: ['humectant'] },
  })
  expect(screen.getByRole('listitem', { name: 'Question 1' }).textContent).toBe(
    '1. Which holds water, 1?A ureaB beeswaxC talcAnswer ',
  )
  expect(
    screen.getAllByText(/Seed 7 · 2 questions · kinds: Who plays a role · roles: humectant · data v1/),
  ).toHaveLength(2)
  const key = screen.getByRole('region', { name: 'Key: Evening group' })
  expect(within(key).getByRole('table').textContent).toBe('Question12LetterBA')
  expect(
    within(key)
      .getAllByRole('listitem')
      .map(({ textContent }) => textContent),
  ).toEqual([
    'B: beeswax The record says so. Sources: A handbook, p. 4; usual practice, no source',
    'A: urea The record says so. Sources: A handbook, p. 4; usual practice, no source',
  ])
})

test('letters are marked by student, by question and by role', async () => {
  answers()
  keep(
    withQuiz({
      students: [
        { name: 'Ada', typed: 'BA' },
        { name: 'Bo', typed: 'B-' },
      ],
    }),
  )
  show('/teach?part=results')
  await waitFor(() =>
    expect(rowsOf('By student').map((row) => row.slice(2, 4))).toEqual([
      ['2 of 2', '100'],
      ['1 of 2', '50'],
    ]),
  )
  expect(rowsOf('By question')).toEqual([
    ['1', 'Which holds water, 1? Humectant', 'B', '2 of 2', '100', '0'],
    ['2', 'Which holds water, 2? Humectant', 'A', '1 of 2', '50', '1'],
  ])
  expect(rowsOf('By role or kind, the hardest first')).toEqual([['Humectant', '3 of 4', '75', '1']])
})

test('letters that do not fit the sheet stay where they were typed, with the reason', async () => {
  answers()
  keep(withQuiz())
  show('/teach?part=results')
  fireEvent.change(await screen.findByLabelText('Name or number'), { target: { value: 'Ada' } })
  fireEvent.change(screen.getByLabelText('Letters, one a question'), { target: { value: 'BX' } })
  fireEvent.click(screen.getByRole('button', { name: 'Add' }))
  expect((await screen.findByRole('alert')).textContent).toBe('question 2 has no choice X; its choices go from A to C')
  expect(screen.getByLabelText<HTMLInputElement>('Letters, one a question').value).toBe('BX')
  expect(screen.queryByRole('table', { name: 'By student' })).toBeNull()
})

test('a question that is no longer as printed is said and not marked', async () => {
  answers()
  keep(withQuiz({ made: ['item-1-other', 'item-2-other'], students: [{ name: 'Ada', typed: 'BA' }] }))
  show('/teach?part=results')
  expect((await screen.findByRole('alert')).textContent).toContain('No longer as printed: question 1, 2.')
  await waitFor(() => expect(rowsOf('By student')[0]?.slice(2, 4)).toEqual(['', 'not known']))
})

test('progress files that cannot be read are named one by one', async () => {
  answers()
  keep(withQuiz())
  show('/teach?part=results')
  fireEvent.click(await screen.findByLabelText('Progress files'))
  choose('Add progress files of students', new File(['nonsense'], 'ada.json'))
  expect(await screen.findByText('ada.json: this is no JSON')).toBeTruthy()
})

test('a hand-out has blanks, then the key; cautions of the recipe stand on both pages', async () => {
  const caution = {
    rule: 'handle-with-care',
    severity: 'note' as const,
    about: ['beeswax'],
    message: 'Sodium hydroxide burns skin and eyes as supplied',
    remedy: 'Gloves and goggles',
    because: [],
    sources: [],
  }
  answers({
    'POST /api/check': () => makeCheck({ findings: [caution] }),
    'POST /api/swap-sheet': (body: unknown) => ({
      lines: (body as { lines: string[] }).lines.map((ingredient) => ({
        ...{ ingredient, inci: ingredient.toUpperCase(), share_percent: 1, roles: [], outcome: 'no-safe-swap' },
        ...{ why: '', standIns: [], leaveOut: { verdict: 'no', why: 'It carries.' }, irreplaceable: true },
      })),
      graphVersion: 'v1',
    }),
  })
  keep(newClass([], 'Evening group', ''))
  show('/teach')
  fireEvent.click(await screen.findByLabelText('Plain lip balm (example)'))
  fireEvent.click(screen.getByRole('button', { name: 'Hand-out' }))
  await screen.findByText('The key is worked out for all 5 lines.', {}, { timeout: 10_000 })
  const blanks = screen.getByRole('region', { name: 'What could stand in? Plain lip balm' })
  const key = screen.getByRole('region', { name: 'Key: Plain lip balm' })
  expect(within(blanks).getAllByRole('row')).toHaveLength(6)
  expect(within(blanks).getByRole('row', { name: /Beeswax/ }).textContent).not.toContain('carries')
  for (const page of [blanks, key]) {
    expect(page.textContent).toContain('Sodium hydroxide burns skin and eyes as supplied. Gloves and goggles.')
  }
  expect(key.className).toContain('new-page')
  expect(screen.getByRole<HTMLButtonElement>('button', { name: 'Print' }).disabled).toBe(false)
})
