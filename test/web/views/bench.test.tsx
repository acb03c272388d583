// @vitest-environment happy-dom
import { fireEvent, screen, waitFor, within } from '@testing-library/react'
import { describe, expect, test } from 'vitest'
import { fakeApi, makeCheck, makeSwaps } from './fake-api.ts'
import { show, startEmpty } from './show.tsx'

startEmpty()

const paste = (typed: string) => {
  fireEvent.change(screen.getByLabelText('Your recipe as text'), { target: { value: typed } })
  fireEvent.click(screen.getByRole('button', { name: 'Put on the bench' }))
}
const press = (name: string | RegExp) => fireEvent.click(screen.getByRole('button', { name }))
const share = (name: string) => screen.getByLabelText<HTMLInputElement>(`Share of ${name} in per cent`)
const bodiesOf = (asked: ReturnType<typeof fakeApi>, route: string) =>
  asked.filter((one) => one.route === route).map(({ body }) => body)

describe('the empty bench', () => {
  test('explains itself in three steps and offers demo recipes', () => {
    fakeApi()
    show()
    expect(screen.getByRole('heading', { level: 1 }).textContent).toContain('Something missing')
    expect(screen.getByText('Mark what is missing')).toBeTruthy()
    expect(
      within(screen.getByRole('region', { name: 'Open the demo recipes' })).getAllByRole('button').length,
    ).toBeGreaterThanOrEqual(5)
  })
  test('says so when nothing was typed', () => {
    fakeApi()
    show()
    press('Put on the bench')
    expect(screen.getByRole('alert').textContent).toBe('Type or paste at least one line.')
  })
  test('a demo recipe opens like pasted text', async () => {
    fakeApi()
    show()
    press(/Winter hand cream/)
    expect(await screen.findByLabelText('Share of Glycerin in per cent')).toBeTruthy()
    expect(screen.getByLabelText<HTMLInputElement>('pH').value).toBe('5.5')
  })
})

describe('names', () => {
  test('an ambiguous name is asked at its line and never guessed', async () => {
    const asked = fakeApi()
    show()
    paste('coco betaine 12\nwater to 100')
    const question = await screen.findByRole('group', { name: 'Choose what coco betaine is' })
    expect(screen.getByText('The check waits until every name is settled.')).toBeTruthy()
    fireEvent.click(within(question).getByRole('button', { name: /Cocamidopropyl betaine/ }))
    await waitFor(() => expect(bodiesOf(asked, 'POST /api/check')).toHaveLength(1))
    expect(bodiesOf(asked, 'POST /api/check')[0]).toMatchObject({
      formula: {
        lines: [
          { ingredient: 'cocamidopropyl-betaine', share_percent: 12 },
          { ingredient: 'aqua', fills: true },
        ],
      },
    })
  })
  test('an unknown name can be put aside', async () => {
    const asked = fakeApi()
    show()
    paste('blorp 10\nwater to 100')
    fireEvent.click(await screen.findByRole('button', { name: 'Check without it' }))
    expect(await screen.findByText(/Checked without the lines put aside \(10 %\)/)).toBeTruthy()
    expect(bodiesOf(asked, 'POST /api/check')[0]).toMatchObject({ formula: { lines: [{ ingredient: 'aqua' }] } })
  })
  test('a line that cannot be read stays and can be corrected', async () => {
    fakeApi()
    show()
    paste('???\nwater to 100')
    expect(screen.getByText(/could not be read as an ingredient/)).toBeTruthy()
    fireEvent.change(screen.getByDisplayValue('???'), { target: { value: 'glycerin 3,5' } })
    press('Read again')
    await waitFor(() => expect(share('Glycerin').value).toBe('3.5'))
  })
})

describe('the check', () => {
  const finding = {
    rule: 'ph-works',
    severity: 'warn' as const,
    about: ['glycerin'],
    message: 'Works at another pH',
    remedy: 'Lower the pH',
    because: [{ fact: 'works at pH 3 to 4', claim: 'glycerin#ph_effective/0' }],
    sources: ['S-1'],
  }
  test('clear is worded as no rule objecting, never as safe', async () => {
    fakeApi()
    const { container } = show()
    paste('glycerin 3\nwater to 100')
    expect(await screen.findByText('No rule objects')).toBeTruthy()
    expect(container.textContent).not.toMatch(/\bis safe\b|certified|compliant/i)
  })
  test('a finding stands at its line with remedy, reason and source', async () => {
    fakeApi({ 'POST /api/check': () => makeCheck({ verdict: 'attention', findings: [finding] }) })
    show()
    paste('glycerin 3\nwater to 100')
    expect(await screen.findByText('Works at another pH')).toBeTruthy()
    expect(screen.getByText('Lower the pH')).toBeTruthy()
    expect(screen.getByRole('link', { name: 'works at pH 3 to 4' }).getAttribute('href')).toBe(
      '/ingredient/glycerin#ph_effective/0',
    )
    expect(screen.getByText('Mind')).toBeTruthy()
  })
  test('a failure is said and can be asked again', async () => {
    fakeApi({ 'POST /api/check': () => new Error('lines: no room') })
    show()
    paste('glycerin 3\nwater to 100')
    expect((await screen.findByRole('alert')).textContent).toContain('lines: no room')
    expect(screen.getByRole('button', { name: 'Ask again' })).toBeTruthy()
  })
  test('shares that do not add up are said at the table, with a way out', async () => {
    fakeApi()
    show()
    paste('water 60\nglycerin 20')
    expect(screen.getByText('The shares add up to 80 %: 20 % is missing.')).toBeTruthy()
    fireEvent.click(await screen.findByRole('button', { name: 'Fill up with Aqua' }))
    expect(share('Aqua').placeholder).toBe('80')
    press('Undo')
    press('Scale all to 100 %')
    expect(share('Aqua').value).toBe('75')
  })
  test('a field takes a decimal comma and says what it cannot read', async () => {
    const asked = fakeApi()
    show()
    paste('glycerin 3\nwater to 100')
    await screen.findByText('No rule objects')
    fireEvent.change(screen.getByLabelText('pH'), { target: { value: '5,5' } })
    await waitFor(() => expect(bodiesOf(asked, 'POST /api/check').at(-1)).toMatchObject({ formula: { ph: 5.5 } }))
    fireEvent.change(screen.getByLabelText('pH'), { target: { value: 'sour' } })
    expect(screen.getByText(/^Give a figure from /)).toBeTruthy()
  })
})

describe('stand-ins', () => {
  const formula = {
    market: 'eu' as const,
    product: 'leave-on' as const,
    ph: null,
    hottest_c: null,
    lines: [
      { ingredient: 'sorbitol', share_percent: 4 },
      { ingredient: 'aqua', share_percent: 96 },
    ],
  }
  const swap = {
    grade: 'good' as const,
    replaces: ['glycerin'],
    role: 'humectant',
    lines: [{ ingredient: 'sorbitol', share_percent: 4 }],
    why: 'A polyol like it.',
    changes: [{ kind: 'dose' as const, text: 'A little more', from: 3, to: 4, unit: '%' }],
    formula,
    findings: [],
    path: [{ from: 'sorbitol', relation: 'stands-in-for', to: 'glycerin' }],
    scores: { chemistry: 0.9 },
    criteria: [],
    open: [],
    companions: [],
    unknown: ['boiling_c'],
    evidence: 'practice' as const,
    sources: ['S-1'],
  }
  const refused = { lines: [{ ingredient: 'alcohol', share_percent: 3 }], conflict: [], message: 'It dries out.' }

  test('show dose, reason, change, evidence and what was refused; the recipe takes one over and gives it back', async () => {
    const asked = fakeApi({
      'POST /api/swaps': () => makeSwaps({ outcome: 'swaps', swaps: [swap], refused: [refused] }),
    })
    show()
    paste('glycerin 3\nwater to 100')
    await screen.findByText('No rule objects')
    press('Glycerin is missing')
    expect(await screen.findByText('A polyol like it.')).toBeTruthy()
    expect(screen.getByText('usual practice')).toBeTruthy()
    expect(screen.getByText('It dries out.')).toBeTruthy()
    expect(bodiesOf(asked, 'POST /api/swaps')[0]).toMatchObject({ missing: ['glycerin'] })
    press('Use Sorbitol')
    expect(share('Sorbitol').value).toBe('4')
    expect(screen.queryByLabelText('Share of Glycerin in per cent')).toBeNull()
    fireEvent.keyDown(document.body, { key: 'z', ctrlKey: true })
    expect(share('Glycerin').value).toBe('3')
    fireEvent.keyDown(document.body, { key: 'z', ctrlKey: true, shiftKey: true })
    expect(share('Sorbitol').value).toBe('4')
  })
  test('no safe swap is an answer with its reason', async () => {
    fakeApi({ 'POST /api/swaps': () => makeSwaps({ why: 'The gel hangs on it alone.' }) })
    show()
    paste('glycerin 3\nwater to 100')
    await screen.findByText('No rule objects')
    press('Glycerin is missing')
    expect(await screen.findByText('The gel hangs on it alone.')).toBeTruthy()
    expect(screen.getAllByText(/No safe swap/).length).toBeGreaterThan(0)
    expect(screen.getByText('Cannot be left out.')).toBeTruthy()
  })
  test('wishes go along with the question', async () => {
    const asked = fakeApi()
    show()
    paste('glycerin 3\nwater to 100')
    await screen.findByText('No rule objects')
    press('Glycerin is missing')
    fireEvent.click(screen.getByLabelText('Palm'))
    fireEvent.click(screen.getByLabelText(/Cold process/))
    fireEvent.click(screen.getByLabelText('Only what is on my shelf'))
    fireEvent.change(screen.getByLabelText('What is on my shelf'), { target: { value: 'sorbitol\nblorp' } })
    await waitFor(() =>
      expect(bodiesOf(asked, 'POST /api/swaps').at(-1)).toMatchObject({
        wishes: { without: ['palm-linked'], hottest_c: 40, only: ['sorbitol'] },
      }),
    )
    expect(screen.getByText(/Not recognised: blorp/)).toBeTruthy()
  })
})

test('the bench outlives a reload', () => {
  fakeApi()
  const { unmount } = show()
  paste('glycerin 3\nwater to 100\n// check the scale')
  unmount()
  show()
  expect(share('glycerin').value).toBe('3')
  expect(screen.getByDisplayValue('// check the scale')).toBeTruthy()
})
