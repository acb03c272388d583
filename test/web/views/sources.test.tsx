// @vitest-environment happy-dom
import { fireEvent, screen, waitFor } from '@testing-library/react'
import { describe, expect, test } from 'vitest'
import { fakeApi } from './fake-api.ts'
import { show, startEmpty } from './show.tsx'

startEmpty()

const short = {
  id: 'S-1',
  title: 'A handbook of windows',
  kind: 'book',
  year: null,
  locator: 'doi.org/10.1000/1',
  link: 'https://doi.org/10.1000/1',
  grade: 'A',
  statements: 1,
}
const claim = {
  id: 'glycerin#ph_stability/0',
  property: 'ph_stability',
  min: 3,
  max: 9,
  unit: 'pH',
  used: true,
  kind: 'measured',
  source: 'S-1',
  locator: 'table 2',
  access: 'read',
  date: '2026-11-25',
  evidence: { code: 'ECO:0000269', label: 'experimental evidence used in manual assertion' },
}
const seen = { kind: 'measured', source: 'S-1', locator: 'table 2', access: 'read', date: '2026-11-25' }
const use = { ingredient: 'glycerin', label: 'GLYCERIN', on: 'fact', text: 'ph_stability', claim, ...seen }
const source = (change: object = {}) => ({
  ...short,
  note: '',
  licence: { title: '', text: 'Facts only, in own words.' },
  ingredients: 1,
  uses: [use],
  next: null,
  total: 1,
  singleOnly: false,
  graphVersion: 'test',
  ...change,
})

describe('the page of a source', () => {
  test('says what it is, and what is not stated is said to be so', async () => {
    fakeApi({ 'GET /api/sources/S-1': () => source() })
    show('/source/S-1')
    expect(await screen.findByRole('heading', { level: 1, name: 'A handbook of windows' })).toBeTruthy()
    expect(screen.getByText('not stated')).toBeTruthy()
    expect(screen.getByRole('link', { name: 'doi.org/10.1000/1' }).getAttribute('href')).toBe(
      'https://doi.org/10.1000/1',
    )
    expect(screen.getByText('Facts only, in own words.')).toBeTruthy()
  })
  test('each statement leads to its place in the record, with value, place, access and kind of evidence', async () => {
    fakeApi({ 'GET /api/sources/S-1': () => source() })
    show('/source/S-1')
    const link = await screen.findByRole('link', { name: 'Glycerin' })
    expect(link.getAttribute('href')).toBe('/ingredient/glycerin#ph_stability/0')
    const item = link.closest('li')?.textContent
    for (const part of ['3 to 9', 'table 2', 'read', '2026-11-25', 'ECO:0000269']) expect(item).toContain(part)
  })
  test('a value that may not stand in a list is left to its ingredient, and that is said', async () => {
    const { claim: _, ...bare } = use
    fakeApi({ 'GET /api/sources/S-1': () => source({ uses: [bare], singleOnly: true }) })
    show('/source/S-1')
    expect(await screen.findByText(/with their one ingredient only/)).toBeTruthy()
    expect(screen.getByRole('list', { name: 'Statements that rest on this source' }).textContent).not.toContain(
      '3 to 9',
    )
  })
  test('goes on page by page', async () => {
    const asked = fakeApi({ 'GET /api/sources/S-1': () => source({ total: 90, next: '50' }) })
    show('/source/S-1')
    fireEvent.click(await screen.findByRole('button', { name: 'Next page' }))
    await waitFor(() => expect(asked.at(-1)?.url.searchParams.get('after')).toBe('50'))
  })
})

test('the list of sources is narrowed by words and kind', async () => {
  const asked = fakeApi({
    'GET /api/sources': () => ({ sources: [short], next: null, total: 1, graphVersion: 'test' }),
  })
  show('/sources')
  expect((await screen.findByRole('link', { name: 'A handbook of windows' })).getAttribute('href')).toBe('/source/S-1')
  fireEvent.change(screen.getByLabelText('Kind'), { target: { value: 'book' } })
  await waitFor(() => expect(asked.at(-1)?.url.searchParams.get('kind')).toBe('book'))
  fireEvent.change(screen.getByLabelText('Words of title or place'), { target: { value: 'windows' } })
  await waitFor(() => expect(asked.at(-1)?.url.searchParams.get('text')).toBe('windows'))
})
