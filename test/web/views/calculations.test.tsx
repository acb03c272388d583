// @vitest-environment happy-dom
import { fireEvent, screen, waitFor, within } from '@testing-library/react'
import { describe, expect, test } from 'vitest'
import { calculateRoute, CALCULATION_NAMES } from '#contract/calculate.ts'
import { EXAMPLES } from '#web/calculations/examples.ts'
import { fakeApi } from './fake-api.ts'
import { show, startEmpty } from './show.tsx'

startEmpty()

const calculations = CALCULATION_NAMES.map((name) => ({
  name,
  title: `What is ${name}?`,
  input: calculateRoute(name).schema.body,
}))
const worked = (change: object = {}) => ({
  values: { lye_g: 71.7803830959183 },
  steps: [{ text: 'KOH that binds all of it', expression: '500 × 190 / 1000', value: 95, unit: 'g' }],
  range: 'Fats whose value is known.',
  sources: ['A', 'practice'],
  cited: [
    { id: 'A', title: 'A table of fats', locator: 'doi.org/10.1/x' },
    { id: 'practice', title: 'Rule of the trade', locator: '' },
  ],
  graphVersion: 'test',
  ...change,
})
const answers = (more: Record<string, (body: unknown) => unknown> = {}) =>
  fakeApi({
    'GET /api/calculate': () => ({ calculations, graphVersion: 'test' }),
    ...Object.fromEntries(CALCULATION_NAMES.map((name) => [`POST /api/calculate/${name}`, () => worked()])),
    ...more,
  })
const bodiesOf = (asked: ReturnType<typeof fakeApi>, name: string) =>
  asked.filter(({ route }) => route === `POST /api/calculate/${name}`).map(({ body }) => body)
const field = (label: string | RegExp) => screen.findByLabelText<HTMLInputElement>(label)
const type = async (label: string | RegExp, value: string) =>
  fireEvent.change(await field(label), { target: { value } })

test('the list has every calculation once, under a topic', async () => {
  answers()
  show('/calculations')
  const links = await screen.findAllByRole('link', { name: /^What is / })
  expect(links.map((link) => link.getAttribute('href')).sort()).toEqual(
    CALCULATION_NAMES.map((name) => `/calculation/${name}`).sort(),
  )
  expect(screen.queryByRole('heading', { name: 'More' })).toBeNull()
  expect(Object.keys(EXAMPLES).sort()).toEqual([...CALCULATION_NAMES].sort())
})

describe('a calculation', () => {
  test('starts from an example and shows result, steps, range and sources', async () => {
    const asked = answers()
    show('/calculation/lye-for-soap')
    expect((await screen.findByText('71.78')).parentElement?.textContent).toBe('71.78 g')
    expect(bodiesOf(asked, 'lye-for-soap')).toEqual([
      {
        fats: [
          { ingredient: 'olive-oil', share_percent: 70 },
          { ingredient: 'coconut-oil', share_percent: 30 },
        ],
        fats_g: 400,
        superfat_percent: 7,
        lye: 'naoh',
        purity_percent: 98,
      },
    ])
    expect(screen.getByText('Read as Coconut oil')).toBeTruthy()
    expect(screen.getByText('500 × 190 / 1000')).toBeTruthy()
    expect(screen.getByText('Fats whose value is known.')).toBeTruthy()
    expect(screen.getByRole('link', { name: 'A table of fats' }).getAttribute('href')).toBe('https://doi.org/10.1/x')
    expect(screen.getByText(/no source/)).toBeTruthy()
  })
  test('of lye says what lye does before anything else', async () => {
    answers()
    show('/calculation/lye-for-soap')
    expect((await screen.findByRole('region', { name: 'Caution: lye' })).textContent).toMatch(/goggles/i)
  })
  test('reads the figures of its address, also with a decimal comma, and writes them back', async () => {
    const asked = answers()
    show('/calculation/undissociated-share?ph=5,5&pka=4.76')
    await waitFor(() => expect(bodiesOf(asked, 'undissociated-share')).toEqual([{ ph: 5.5, pka: 4.76 }]))
    await type('pH', '4,5')
    await waitFor(() => expect(bodiesOf(asked, 'undissociated-share').at(-1)).toEqual({ ph: 4.5, pka: 4.76 }))
    await waitFor(() => expect(window.location.search).toBe('?ph=4%2C5&pka=4.76'))
  })
  test('does not ask while a figure cannot be, and says why at the field', async () => {
    const asked = answers()
    show('/calculation/undissociated-share?ph=15&pka=4')
    expect((await field('pH')).getAttribute('aria-invalid')).toBe('true')
    expect(screen.getByText('At most 14.')).toBeTruthy()
    await type('pH', 'sour')
    expect(screen.getByText(/^This is not a figure/)).toBeTruthy()
    await type('pH', '')
    expect(screen.getByText('This is needed.')).toBeTruthy()
    expect(bodiesOf(asked, 'undissociated-share')).toEqual([])
  })
  test('shows what the server refuses at the field that it names, and takes a near name over', async () => {
    const asked = answers({
      'POST /api/calculate/iodine-value': (body) =>
        (body as { ingredient: string }).ingredient === 'olive-oil'
          ? worked({ values: { iodine_value: 83 } })
          : new Error('ingredient: no ingredient has the id olve-oil; nearest: olive-oil, clove-oil'),
    })
    show('/calculation/iodine-value?ingredient=olve+oil')
    expect(await screen.findByText('no ingredient has the id olve-oil')).toBeTruthy()
    fireEvent.click(screen.getByRole('button', { name: 'olive oil' }))
    expect(await screen.findByText('83')).toBeTruthy()
    expect(bodiesOf(asked, 'iodine-value').at(-1)).toEqual({ ingredient: 'olive-oil' })
  })
  test('asks which record a name means before it works anything out', async () => {
    const asked = answers()
    show('/calculation/iodine-value?ingredient=coco+betaine')
    expect(await screen.findByText(/can mean several things/)).toBeTruthy()
    expect(bodiesOf(asked, 'iodine-value')).toEqual([])
    fireEvent.click(screen.getByRole('button', { name: 'coco betaine' }))
  })
  test('adds and takes out rows', async () => {
    const asked = answers()
    show('/calculation/blend-hlb?emulsifiers.0.share_percent=3&emulsifiers.0.hlb=15')
    await waitFor(() =>
      expect(bodiesOf(asked, 'blend-hlb')).toEqual([{ emulsifiers: [{ share_percent: 3, hlb: 15 }] }]),
    )
    expect(screen.queryByRole('button', { name: /Take out/ })).toBeNull()
    fireEvent.click(screen.getByRole('button', { name: 'Add a row: Emulsifiers' }))
    const second = within(screen.getByRole('group', { name: 'Emulsifiers, row 2' }))
    fireEvent.change(second.getByLabelText('Share, %'), { target: { value: '1' } })
    fireEvent.change(second.getByLabelText('HLB'), { target: { value: '4' } })
    await waitFor(() => expect(bodiesOf(asked, 'blend-hlb').at(-1)).toMatchObject({ emulsifiers: { length: 2 } }))
    fireEvent.click(screen.getByRole('button', { name: 'Take out: Emulsifiers, row 1' }))
    await waitFor(() =>
      expect(bodiesOf(asked, 'blend-hlb').at(-1)).toEqual({ emulsifiers: [{ share_percent: 1, hlb: 4 }] }),
    )
  })
  test('keeps an empty list in the address, and words as rows', async () => {
    const asked = answers()
    show('/calculation/buffer-ph?systems.0.acid=lactic+acid&systems.0.mol_per_l=0.1&ions=&temp_c=20')
    const systems = [{ acid: 'lactic acid', mol_per_l: 0.1 }]
    await waitFor(() => expect(bodiesOf(asked, 'buffer-ph')).toEqual([{ systems, ions: [], temp_c: 20 }]))
  })
  test('that does not exist is said', async () => {
    answers()
    show('/calculation/nothing')
    expect(await screen.findByRole('heading', { name: 'There is no such calculation.' })).toBeTruthy()
  })
})
