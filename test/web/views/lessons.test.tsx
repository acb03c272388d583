// @vitest-environment happy-dom
import { fireEvent, screen, within } from '@testing-library/react'
import { expect, test } from 'vitest'
import type { LessonReply } from '#web/client/use-lessons.ts'
import { fakeApi, makeCheck } from './fake-api.ts'
import { show, startEmpty } from './show.tsx'

startEmpty()

const formula = (ingredient: string): NonNullable<LessonReply['recipe']>['before'] => ({
  market: 'eu',
  product: 'leave-on',
  ph: 5,
  hottest_c: 25,
  lines: [
    { ingredient: 'aqua', fills: true },
    { ingredient, share_percent: 5 },
  ],
})
const short = (id: string, kind: 'idea' | 'role', title: string) => ({ id, title, about: { kind, id }, minutes: 3 })
const LESSONS = [
  short('charge', 'idea', 'Charge'),
  short('humectant', 'role', 'Humectant'),
  short('moistener', 'role', 'Moistener'),
]
const role = (id: string, broader?: string) => ({
  id,
  label: id,
  says: '',
  phase: 'water',
  confusedWith: [],
  players: 1,
  ...(broader !== undefined && { broader }),
})
const LESSON: LessonReply = {
  ...short('humectant', 'role', 'Humectant'),
  question: 'What holds water?',
  parts: [{ text: 'It holds water.' }, { heading: 'Who', text: 'Glycerin does.' }],
  seen: { source: 'practice', locator: 'usual', access: 'common-practice', date: '2026-11-27' },
  cautions: ['Urea stings.'],
  sources: [{ id: 'A', title: 'A handbook', address: 'doi.org/10.1/x', locator: 'p. 3', access: 'read' }],
  states: [{ says: 'Glycerin is a humectant.', checkedBy: 'records' }],
  live: {
    kind: 'break-and-mend',
    says: 'Break it, then mend it.',
    recipe: 'gel',
    breaks: { says: 'A salt comes in.', change: { ph: 5 } },
    brings: 'electrolyte-load',
    mends: { says: 'Glycerin comes back.', change: { ph: 5 } },
  },
  recipe: {
    title: 'Clear gel',
    before: formula('glycerin'),
    broken: formula('sodium-lactate'),
    mended: formula('glycerin'),
    names: { aqua: 'Aqua', glycerin: 'Glycerin', 'sodium-lactate': 'Sodium lactate' },
  },
  practise: { kinds: ['plays-role'], roles: ['humectant'] },
  next: [short('charge', 'idea', 'Charge')],
  graphVersion: 'test',
}
const answers = () =>
  fakeApi({
    'GET /api/learn/lessons': () => ({ lessons: LESSONS, graphVersion: 'test' }),
    'GET /api/learn/lessons/humectant': () => LESSON,
    'GET /api/roles': () => ({ roles: [role('humectant'), role('moistener', 'humectant')], graphVersion: 'test' }),
    'POST /api/learn/items': () => ({ items: [], graphVersion: 'test' }),
    'POST /api/check': (body) =>
      makeCheck(
        JSON.stringify(body).includes('sodium-lactate')
          ? {
              verdict: 'attention',
              findings: [
                {
                  rule: 'electrolyte-load',
                  severity: 'warn',
                  about: [],
                  message: 'Too salty',
                  because: [],
                  sources: [],
                },
              ],
            }
          : {},
      ),
  })

test('lessons stand by ideas first, then by the tree of roles', async () => {
  answers()
  show('/learn')
  const ideas = (await screen.findByRole('heading', { name: 'The great ideas' })).parentElement!
  expect(within(ideas).getByRole('link', { name: 'Charge' }).getAttribute('href')).toBe('/lesson/charge')
  const group = await screen.findByText('humectant', { selector: 'summary' })
  const links = within(group.parentElement!).getAllByRole('link')
  expect(links.map((link) => link.textContent)).toEqual(['Humectant', 'Moistener'])
})

test('a lesson shows its text, cautions and opened sources, and leads to questions about its role', async () => {
  answers()
  show('/lesson/humectant')
  await screen.findByText('It holds water.')
  expect(screen.getByText('Urea stings.')).toBeTruthy()
  expect(screen.getByRole('link', { name: 'A handbook' }).getAttribute('href')).toBe('https://doi.org/10.1/x')
  expect(screen.getByText('Glycerin is a humectant.')).toBeTruthy()
  expect(screen.getByRole('link', { name: 'Practise' }).getAttribute('href')).toBe(
    '/learn?kind=plays-role&roles=humectant#practise',
  )
})

test('breaking the recipe brings the finding, mending takes it away', async () => {
  answers()
  show('/lesson/humectant')
  fireEvent.click(await screen.findByRole('radio', { name: /Broken: A salt comes in/ }))
  await screen.findByText('Too salty')
  expect(screen.getByRole('rowheader', { name: 'Sodium lactate' })).toBeTruthy()
  fireEvent.click(screen.getByRole('radio', { name: /Mended: Glycerin comes back/ }))
  await screen.findByText(/No rule objects to this recipe/)
  expect(screen.queryByText('Too salty')).toBeNull()
})

test('questions asked for by a lesson are about its roles, and another kind asks about all', async () => {
  const asked = answers()
  show('/learn?kind=plays-role&roles=humectant')
  await screen.findByText(/Only about: Humectant/)
  fireEvent.click(screen.getByRole('radio', { name: 'Doses by active matter' }))
  await screen.findByText('No questions of this kind can be made.')
  const bodies = asked.filter(({ route }) => route.endsWith('/items')).map(({ body }) => body)
  expect(bodies[0]).toMatchObject({ kinds: ['plays-role'], roles: ['humectant'] })
  expect(bodies.at(-1)).not.toHaveProperty('roles')
})

test('a lesson that cannot be had is said so', async () => {
  answers()
  show('/lesson/moonstone')
  await screen.findByRole('alert')
})

const LIVE: [RegExp, LessonReply['live']][] = [
  [
    /Glycerin: 5 %/,
    {
      kind: 'level-slider',
      says: 'More or less of it.',
      recipe: 'gel',
      ingredient: 'glycerin',
      from_percent: 1,
      to_percent: 9,
      step_percent: 1,
    },
  ],
  [/pH: 5/, { kind: 'who-plays', says: 'Who holds here?', role: 'humectant', ph: 5 }],
  [
    /Fatty acids of Olive and Linseed/,
    { kind: 'compare-oils', says: 'Compare the two.', from: 'olive', to: 'linseed' },
  ],
  [/Gram-negative/i, { kind: 'spectrum', says: 'What is open?', ingredients: ['olive', 'linseed'] }],
]
test.each(LIVE)('%s: the live example is drawn', async (words, live) => {
  const record = (inci: string) => ({
    id: inci.toLowerCase(),
    inci,
    claims: [
      { property: 'fatty_acids', used: true, shares: { 'C18:1': 70 } },
      { property: 'spectrum', used: true, spectrum: { yeast: 'strong' } },
    ],
  })
  fakeApi({
    'GET /api/learn/lessons/humectant': () => ({ ...LESSON, live }),
    'GET /api/ingredients': () => ({ ingredients: [], next: null, total: 3, graphVersion: 'test' }),
    'GET /api/ingredients/olive': () => record('OLIVE'),
    'GET /api/ingredients/linseed': () => record('LINSEED'),
  })
  show('/lesson/humectant')
  expect((await screen.findAllByText(words)).length).toBeGreaterThan(0)
})
