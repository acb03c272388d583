// @vitest-environment happy-dom
import { fireEvent, screen, waitFor } from '@testing-library/react'
import { describe, expect, test } from 'vitest'
import type { Api } from '#contract/api.ts'
import { fakeApi, makeSwaps } from './fake-api.ts'
import { show, startEmpty } from './show.tsx'

startEmpty()

const seen = { kind: 'measured', source: 'S-1', locator: 'table 2', access: 'secondary', date: '2026-11-25' } as const
const claim = {
  id: 'glycerin#ph_stability/0',
  property: 'ph_stability',
  min: 3,
  max: 9,
  unit: 'pH',
  used: true,
  evidence: { code: 'ECO:0000304', label: 'author statement' },
  ...seen,
}
const record: Api['GET /api/ingredients/:id']['reply'] = {
  id: 'glycerin',
  inci: 'GLYCERIN',
  tier: 'full',
  cas: ['56-81-5'],
  names: { exact: ['glycerol'], foreign: ['Glyzerin (de)'] },
  roles: [
    {
      role: 'humectant',
      label: 'Humectant',
      level_percent: { min: 1, max: 20, typical: 4 },
      evidence: { code: 'ECO:0000304', label: 'author statement' },
      ...seen,
    },
  ],
  classes: [{ id: 'polyol', label: 'polyol', group: 'chemistry', says: 'Glycerol and sugar alcohols' }],
  madeOf: [],
  windows: { ph_stability: { min: 3, max: 9 }, heat_max_c: 150 },
  claims: [claim, { ...claim, id: 'glycerin#ph_stability/1', max: 8, used: false, access: 'memory' }],
  contested: ['ph_stability'],
  decisions: [{ property: 'ph_stability', claim: 'glycerin#ph_stability/0', why: 'Put first in the record.' }],
  neighbours: [
    { relation: 'stands-in-for', direction: 'out', node: 'sorbitol', label: 'SORBITOL', says: 'polyol of like feel' },
    { relation: 'stands-in-for', direction: 'in', node: 'propanediol', label: 'PROPANEDIOL' },
  ],
  limits: [],
  cautions: ['sticky above 10 %'],
  sources: [{ id: 'S-1', title: 'A handbook', locator: 'library' }],
  graphVersion: 'test',
}
const short = { id: 'glycerin', inci: 'GLYCERIN', tier: 'full', names: ['glycerol'], roles: ['humectant'], classes: [] }

describe('the page of an ingredient', () => {
  const answers = {
    'GET /api/ingredients/glycerin': () => record,
    'GET /api/ingredients/glycerin/stand-ins': () => makeSwaps({ outcome: 'not-known', why: 'Too little is known.' }),
  }
  test('says of every value where it comes from and how it was seen', async () => {
    fakeApi(answers)
    const { container } = show('/ingredient/glycerin')
    expect(await screen.findByRole('heading', { level: 1, name: 'Glycerin' })).toBeTruthy()
    const rows = [...container.querySelectorAll('.claims tbody tr')]
    expect(rows[0]?.textContent).toContain('3 to 9')
    expect(rows[0]?.textContent).toContain('seen quoted')
    expect(rows[1]?.textContent).toContain('from memory')
    expect(rows[0]?.id).toBe('ph_stability/0')
    expect(screen.getAllByText('Sources disagree')).toHaveLength(2)
  })
  test('a dispute shows every value, which one counts and why; a figure opens where it comes from', async () => {
    fakeApi(answers)
    show('/ingredient/glycerin')
    const dispute = (await screen.findByRole('region', { name: 'Where sources disagree' })).textContent
    for (const part of ['3 to 9', '3 to 8', 'this one counts here', 'Put first in the record.', 'ECO:0000304'])
      expect(dispute).toContain(part)
    const level = screen.getByText(/1 to 20 %, often 4 %/).closest('details')
    for (const part of ['S-1', 'A handbook', 'table 2', 'seen quoted', '2026-11-25', 'ECO:0000304'])
      expect(level?.textContent).toContain(part)
  })
  test('shows cautions, neighbours by relation and stand-ins in general', async () => {
    fakeApi(answers)
    show('/ingredient/glycerin')
    expect(await screen.findByText('sticky above 10 %')).toBeTruthy()
    expect(screen.getByText(/Can stand in for \(1\)/)).toBeTruthy()
    expect(screen.getByRole('link', { name: 'Sorbitol' }).getAttribute('href')).toBe('/ingredient/sorbitol')
    expect(await screen.findByText('Too little is known.')).toBeTruthy()
  })
  test('waits in words and says when it fails', async () => {
    fakeApi({ 'GET /api/ingredients/nothing': () => new Error('no such thing') })
    show('/ingredient/nothing')
    expect(screen.getAllByRole('status').map(({ textContent }) => textContent)).toContain('Fetching the record…')
    expect((await screen.findByRole('alert')).textContent).toContain('no such thing')
  })
})

describe('search', () => {
  const page = (change: object = {}) => ({
    ingredients: [short],
    next: 'glycerin',
    total: 2,
    graphVersion: 'test',
    ...change,
  })
  test('asks by text, role and kind, page by page', async () => {
    const asked = fakeApi({ 'GET /api/ingredients': () => page() })
    show('/ingredients?class=polyol')
    expect(await screen.findByRole('link', { name: 'Glycerin' })).toBeTruthy()
    fireEvent.click(screen.getByRole('button', { name: 'Next page' }))
    await waitFor(() => expect(asked.at(-1)?.url.searchParams.get('after')).toBe('glycerin'))
    expect(asked.at(-1)?.url.searchParams.get('class')).toBe('polyol')
    fireEvent.change(screen.getByLabelText('Name or part of it'), { target: { value: 'gly' } })
    await waitFor(() => expect(asked.at(-1)?.url.searchParams.get('text')).toBe('gly'))
    expect(asked.at(-1)?.url.searchParams.get('after')).toBeNull()
  })
  test('says when nothing fits', async () => {
    fakeApi({ 'GET /api/ingredients': () => page({ ingredients: [], next: null, total: 0 }) })
    show('/ingredients?text=zzz')
    expect(await screen.findByText(/Nothing fits/)).toBeTruthy()
  })
})

describe('roles', () => {
  const role = {
    id: 'humectant',
    label: 'Humectant',
    says: 'Binds water',
    phase: 'water',
    confusedWith: [],
    players: 1,
  }
  test('stand as a tree', async () => {
    const narrower = { ...role, id: 'sugar', label: 'Sugar humectant', broader: 'humectant' }
    fakeApi({ 'GET /api/roles': () => ({ roles: [role, narrower], graphVersion: 'test' }) })
    show('/roles')
    expect(await screen.findByRole('link', { name: 'Sugar humectant' })).toBeTruthy()
  })
  test('say how a stand-in is sought and who plays them', async () => {
    const swap = { scope: 'humectant', dose: 'own-level', lost: 'workable', must: ['dissolves in water'], criteria: [] }
    fakeApi({
      'GET /api/roles/humectant': () => ({ ...role, narrower: [], playedBy: [short], swap, graphVersion: 'test' }),
    })
    show('/role/humectant')
    expect(await screen.findByText('dissolves in water')).toBeTruthy()
    expect(screen.getByText('its own usual level')).toBeTruthy()
    expect(screen.getByRole('link', { name: 'Glycerin' })).toBeTruthy()
  })
})

test('an unknown address leads back to the bench', () => {
  fakeApi()
  show('/nowhere')
  expect(screen.getByRole('link', { name: 'Back to the bench' }).getAttribute('href')).toBe('/')
})
