// @vitest-environment happy-dom
import { fireEvent, screen, waitFor, within } from '@testing-library/react'
import { describe, expect, test, vi } from 'vitest'
import type { Api } from '#contract/api.ts'
import { benchFromText } from '#web/state/from-text.ts'
import { startHistory } from '#web/state/history.ts'
import { saveBench } from '#web/state/storage.ts'
import { fakeApi } from './fake-api.ts'
import { show, startEmpty } from './show.tsx'

startEmpty()

type Body = Api['POST /api/batch']['body']
type Reply = Api['POST /api/batch']['reply']

const line = (ingredient: string, weigh_g: number, phase: string, step: string): Reply['lines'][number] => ({
  ...{ line: ingredient, ingredient, inci: ingredient.toUpperCase(), share_percent: weigh_g, weigh_g, phase },
  ...{ portions: [{ step, weigh_g }], reasons: [{ fact: 'dissolves in water', claim: `${ingredient}#solubility/0` }] },
  cautions: [],
})

const step = (id: string, change: Partial<Reply['steps'][number]> = {}): Reply['steps'][number] => ({
  ...{
    id,
    title: `Do ${id}`,
    text: `How to ${id}.`,
    adds: [],
    uses: [],
    why: `Why ${id}`,
    because: [],
    sources: ['practice'],
  },
  cautions: [],
  ...change,
})

const makeReply = (body: Body, change: Partial<Reply> = {}): Reply => ({
  ...{ batch_g: body.batch_g, overage_percent: 0, weighed_g: body.batch_g, step_g: body.step_g ?? 0.1 },
  ...{ form: 'solution', formDerived: true, process: 'one-phase', date: body.date ?? null },
  batchCode: body.batchCode ?? null,
  lines: [line('aqua', 97, 'A', 'water'), line('glycerin', 3, 'A', 'water')],
  phases: [{ phase: 'A', title: 'Do water', step: 'water', lines: ['aqua', 'glycerin'], weigh_g: 100 }],
  steps: [
    step('clean', { cautions: ['Alcohol catches fire.'] }),
    step('cup'),
    step('water', {
      adds: ['aqua', 'glycerin'],
      temp_c: { min: 70, max: 75, because: [{ fact: 'wax melts', claim: 'cera-alba#melting_c/0' }] },
      time: { min: 5, max: 10, unit: 'minutes', because: [{ fact: 'usual practice: by eye', from: 'practice' }] },
      holds_g: 100,
    }),
  ],
  edges: [
    { from: 'clean', relation: 'before', to: 'cup' },
    { from: 'clean', relation: 'before', to: 'water' },
  ],
  order: ['clean', 'cup', 'water'],
  looks: [{ day: 1, look: 'cloud', ...(body.date !== undefined && { date: '2026-03-13' }) }],
  remarks: [],
  cost: null,
  verdict: 'clear',
  findings: [],
  graphVersion: 'test',
  ...change,
})

/** A recipe on the bench, and the sheet of it; gives what was asked of the server. */
function open(text = 'water 97\nglycerin 3\nMakes 100 g', change: Partial<Reply> = {}) {
  if (text !== '') saveBench(window.localStorage, startHistory({ ...benchFromText(text), title: 'Plain water' }))
  const asked = fakeApi({ 'POST /api/batch': (body) => makeReply(body as Body, change) })
  show('/batch')
  return () => asked.filter(({ route }) => route === 'POST /api/batch').map(({ body }) => body as Body)
}

const sheetIsThere = () => screen.findByRole('heading', { name: 'Order of work' })
const type = (label: string, value: string) => fireEvent.change(screen.getByLabelText(label), { target: { value } })

describe('the sheet', () => {
  test('is asked for the recipe on the bench, with the batch size of its text', async () => {
    const bodies = open()
    await sheetIsThere()
    expect(bodies().at(-1)).toMatchObject({
      formula: { lines: [{ ingredient: 'aqua' }, { ingredient: 'glycerin' }] },
      batch_g: 100,
      step_g: 0.1,
    })
    expect(screen.getByRole('heading', { level: 1 }).textContent).toBe('Batch sheet: Plain water')
  })
  test('shows a weight with the decimals of the scale, and the sum', async () => {
    open()
    await sheetIsThere()
    const row = screen.getByRole('row', { name: /Glycerin/ })
    expect(within(row).getByText('3.0')).toBeTruthy()
    expect(within(screen.getByRole('row', { name: /^Sum/ })).getByText('100.0')).toBeTruthy()
  })
  test('says of a figure whether it is on record or usual practice', async () => {
    open()
    await sheetIsThere()
    const item = screen.getByRole('heading', { name: /Do water/ }).closest('li')!
    expect(item.textContent).toMatch(/70 to 75 °C on record/)
    expect(item.textContent).toMatch(/5 to 10 min usual practice/)
    expect(within(item).getByRole('link', { name: 'wax melts', hidden: true }).getAttribute('href')).toBe(
      '/ingredient/cera-alba#melting_c/0',
    )
  })
  test('says which step can start earlier, and only there', async () => {
    open()
    await sheetIsThere()
    expect(screen.getByRole('heading', { name: /Do water/ }).closest('li')!.textContent).toMatch(
      /can start after step 1/,
    )
    expect(screen.getByRole('heading', { name: /Do cup/ }).closest('li')!.textContent).not.toMatch(/can start/)
  })
  test('never folds a caution away', async () => {
    open()
    await sheetIsThere()
    expect(screen.getByText('Alcohol catches fire.').closest('details')).toBeNull()
  })
  test('has a fault said and asked again', async () => {
    saveBench(window.localStorage, startHistory(benchFromText('water 97\nglycerin 3\nMakes 100 g')))
    fakeApi({ 'POST /api/batch': () => new Error('batch_g: too little') })
    show('/batch')
    expect((await screen.findByRole('alert')).textContent).toMatch(/batch_g: too little/)
    expect(screen.getByRole('button', { name: 'Ask again' })).toBeTruthy()
  })
  test('waits where the recipe is not clear, and says for what', async () => {
    const bodies = open('water 60\nglycerin 3\nMakes 100 g')
    expect(await screen.findByText(/waits until the shares add up to 100 %/)).toBeTruthy()
    expect(bodies()).toEqual([])
  })
  test('without a recipe says so', async () => {
    open('')
    expect(await screen.findByText('There is no recipe on the bench yet.')).toBeTruthy()
  })
  test('gives an unsaid batch size a visible start', async () => {
    open('water 97\nglycerin 3')
    await sheetIsThere()
    expect(screen.getByLabelText<HTMLInputElement>('Batch, g').value).toBe('100')
  })
})

describe('the inputs', () => {
  test('take a decimal comma', async () => {
    const bodies = open()
    await sheetIsThere()
    type('Batch, g', '250,5')
    type('On top, %', '2,5')
    await waitFor(() => expect(bodies().at(-1)).toMatchObject({ batch_g: 250.5, overage_percent: 2.5 }))
  })
  test('of scale, day and code go to the server', async () => {
    const bodies = open()
    await sheetIsThere()
    type('Scale shows, g', '0.01')
    type('Made on', '2026-03-12')
    type('Batch code', ' T-1 ')
    await waitFor(() => expect(bodies().at(-1)).toMatchObject({ step_g: 0.01, date: '2026-03-12', batchCode: 'T-1' }))
  })
  test('of prices go out for lines of this recipe only, and come back as cost with what is missing', async () => {
    window.localStorage.setItem('understudy-batch', JSON.stringify({ prices: { retinol: 900 }, currency: 'EUR' }))
    const bodies = open(undefined, {
      cost: { currency: 'EUR', known: 0.024, total: null, per_100_g: null, missing: ['aqua'], unused: [] },
    })
    await sheetIsThere()
    expect(bodies().at(-1)).not.toHaveProperty('prices_per_kg')
    type('Price of one kilogram of Glycerin', '8,5')
    await waitFor(() => expect(bodies().at(-1)).toMatchObject({ prices_per_kg: { glycerin: 8.5 }, currency: 'EUR' }))
    expect(await screen.findByText(/0.024 EUR for the lines with a price. No price: Aqua/)).toBeTruthy()
    expect(JSON.parse(window.localStorage.getItem('understudy-batch')!)).toMatchObject({
      prices: { retinol: 900, glycerin: 8.5 },
    })
  })
  test('that are no figure stay in the field and are said', async () => {
    const bodies = open()
    await sheetIsThere()
    const before = bodies().length
    type('On top, %', '250')
    expect(screen.getByText('Give a figure from 0 to 100')).toBeTruthy()
    expect(bodies()).toHaveLength(before)
  })
})

describe('ticks', () => {
  test('stay when the page is opened again, and are gone on another sheet', async () => {
    open()
    await sheetIsThere()
    fireEvent.click(screen.getByRole('checkbox', { name: 'Glycerin is weighed' }))
    fireEvent.click(screen.getByRole('checkbox', { name: 'Done: Do clean' }))
    document.body.replaceChildren()
    show('/batch')
    await sheetIsThere()
    expect(screen.getByRole<HTMLInputElement>('checkbox', { name: 'Glycerin is weighed' }).checked).toBe(true)
    expect(screen.getByRole<HTMLInputElement>('checkbox', { name: 'Aqua is weighed' }).checked).toBe(false)
    fireEvent.click(screen.getByRole('button', { name: 'Take all ticks off' }))
    expect(screen.getByRole<HTMLInputElement>('checkbox', { name: 'Done: Do clean' }).checked).toBe(false)
  })
})

test('the sheet is one press away from the bench, and prints', async () => {
  open('')
  const print = vi.fn()
  vi.stubGlobal('print', print)
  window.print = print
  document.body.replaceChildren()
  saveBench(window.localStorage, startHistory(benchFromText('water 97\nglycerin 3\nMakes 100 g')))
  show('/')
  fireEvent.click(await screen.findByRole('link', { name: 'Batch sheet' }))
  await sheetIsThere()
  fireEvent.click(screen.getByRole('button', { name: 'Print this sheet' }))
  expect(print).toHaveBeenCalledOnce()
})
