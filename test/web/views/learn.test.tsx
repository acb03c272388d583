// @vitest-environment happy-dom
import { fireEvent, screen, within } from '@testing-library/react'
import { expect, test } from 'vitest'
import type { LearnItem } from '#web/client/use-learn.ts'
import { fakeApi } from './fake-api.ts'
import { show, startEmpty } from './show.tsx'

startEmpty()

const item = (seed: number): LearnItem => ({
  id: `item-${seed}`,
  ref: { kind: 'what-if', seed },
  kind: 'what-if',
  difficulty: 2,
  question: `What happens in case ${seed}?`,
  recipe: {
    title: 'Toner',
    cautions: ['Urea dust: do not breathe it in.'],
    names: { aqua: 'Aqua', urea: 'Urea' },
    formula: {
      market: 'eu',
      product: 'leave-on',
      ph: 5,
      hottest_c: 25,
      lines: [
        { ingredient: 'aqua', fills: true },
        { ingredient: 'urea', share_percent: 5 },
      ],
    },
  },
  choices: [
    { id: 'too-hot', text: 'Too hot' },
    { id: 'nothing-new', text: 'Nothing new' },
  ],
})
const answers = (more = {}) =>
  fakeApi({
    'POST /api/learn/items': () => ({ items: [item(1), item(2)], graphVersion: 'test' }),
    'POST /api/learn/answers': (body) => ({
      right: (body as { choice: string }).choice === 'too-hot',
      key: 'too-hot',
      because: 'It bears up to 40 °C.',
      sources: ['A', 'practice'],
      cited: [{ id: 'A', title: 'A handbook', locator: 'doi.org/10.1/x' }],
      about: { ingredients: [] },
      graphVersion: 'test',
    }),
    ...more,
  })
const choose = async (question: RegExp, choice: string) => {
  await screen.findByRole('heading', { name: question })
  fireEvent.click(screen.getByRole('radio', { name: choice }))
  fireEvent.click(screen.getByRole('button', { name: 'Answer' }))
}

test('a question is answered, explained with its sources, and counted at the end of the set', async () => {
  const asked = answers()
  show('/learn')
  await choose(/case 1/, 'Nothing new')
  await screen.findByText('No. It is: Too hot')
  expect(screen.getByText('It bears up to 40 °C.')).toBeTruthy()
  const sources = within(screen.getByRole('list', { name: 'Sources' }))
  expect(sources.getByRole('link', { name: 'A handbook' }).getAttribute('href')).toBe('https://doi.org/10.1/x')
  expect(document.activeElement).toBe(screen.getByRole('button', { name: 'Next question' }))
  fireEvent.click(screen.getByRole('button', { name: 'Next question' }))
  await choose(/case 2/, 'Too hot')
  await screen.findByText('Right.')
  fireEvent.click(screen.getByRole('button', { name: 'Next question' }))
  expect(await screen.findByText('1 of 2 right in this set.')).toBeTruthy()
  expect(screen.getByText(/2 questions answered so far/)).toBeTruthy()
  expect(asked.filter(({ route }) => route.endsWith('/answers')).map(({ body }) => body)).toEqual([
    { item: item(1).ref, id: 'item-1', choice: 'nothing-new' },
    { item: item(2).ref, id: 'item-2', choice: 'too-hot' },
  ])
})

test('the recipe stands beside its question', async () => {
  answers()
  show('/learn')
  const table = await screen.findByRole('table', { name: /Recipe: Toner/ })
  expect(
    within(table)
      .getAllByRole('row')
      .map(({ textContent }) => textContent),
  ).toEqual(['IngredientShare, %', 'Aquato 100', 'Urea5'])
})

test('what is dangerous to handle in the recipe is said beside it', async () => {
  answers()
  show('/learn')
  const cautions = await screen.findByRole('list', { name: 'Cautions' })
  expect(cautions.textContent).toBe('Urea dust: do not breathe it in.')
})

test('what was answered is there after a reload, and comes up again when it is due', async () => {
  answers()
  const first = show('/learn')
  await choose(/case 1/, 'Too hot')
  await screen.findByText('Right.')
  first.unmount()
  const kept = window.localStorage.getItem('understudy-learn') ?? ''
  window.localStorage.setItem('understudy-learn', kept.replace(/"due":"[^"]*"/, '"due":"2020-01-01T00:00:00.000Z"'))
  show('/learn')
  await screen.findByText(/1 question due now, 0 later today/)
  fireEvent.click(screen.getByRole('button', { name: 'Go through what is due' }))
  expect(await screen.findByText(/Question 1 of 1/)).toBeTruthy()
})

test('only the chosen kind is asked for', async () => {
  const asked = answers()
  show('/learn')
  fireEvent.click(await screen.findByRole('radio', { name: 'What happens if' }))
  await screen.findByRole('heading', { name: /case 1/ })
  const bodies = asked.filter(({ route }) => route.endsWith('/items')).map(({ body }) => body)
  expect(bodies.at(-1)).toMatchObject({ kinds: ['what-if'], count: 6 })
})

test('a failure is said and can be asked again', async () => {
  answers({ 'POST /api/learn/items': () => new Error('no seed') })
  show('/learn')
  expect((await screen.findByRole('alert')).textContent).toContain('no seed')
})
