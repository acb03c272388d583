import { fileURLToPath } from 'node:url'
import { describe, expect, test } from 'vitest'
import { buildKnowledge, buildWorld, resolveNames } from '#engine/index.ts'
import { loadRaw } from '#load/load-raw.ts'
import { readTable } from '#load/read-table.ts'
import { idsBehind, passes, pickedDanger } from '../../score/name-case.ts'

const root = fileURLToPath(new URL('../../..', import.meta.url))
const world = buildWorld(buildKnowledge(loadRaw(`${root}/graph-data`)))
const one = (typed: string) => resolveNames(world, [typed])[0]!

/** Share of the worked cases that must go on passing. */
const LEAST_PASSED = 0.95

test('worked cases: most pass, and no danger is picked silently', () => {
  const cases = readTable(`${root}/test/reference/resolve-cases.csv`)
  const same = (inci: string) => idsBehind(world, inci)
  const results = cases.map((row) => ({ row, result: one(row['typed']!) }))
  expect(results.filter(({ row, result }) => pickedDanger(row, result, same)).map(({ row }) => row['typed'])).toEqual(
    [],
  )
  const passed = results.filter(({ row, result }) => passes(row, result, same)).length
  expect(passed / cases.length).toBeGreaterThanOrEqual(LEAST_PASSED)
})

describe('a whole reply', () => {
  test('of a known name', () => {
    expect(one('Glycerine')).toEqual({
      typed: 'Glycerine',
      status: 'found',
      ingredient: 'glycerin',
      inci: 'GLYCERIN',
      tier: 'full',
      choices: [],
    })
  })

  test('of nothing', () => {
    const nothing = { status: 'unknown', ingredient: null, inci: null, tier: null, choices: [] }
    expect(one('')).toEqual({ typed: '', ...nothing })
    expect(one('???')).toEqual({ typed: '???', ...nothing })
  })
})

describe('found', () => {
  test.each([
    ['BUTYROSPERMUM PARKII BUTTER', 'butyrospermum-parkii-butter'],
    ['CETEARYL ALCOHOL + CETEARETH-20', 'cetearyl-alcohol-and-ceteareth-20'],
    ['ceteareth-20 & cetearyl alcohol', 'cetearyl-alcohol-and-ceteareth-20'],
    ['PHENOXYETHANOL + ETHYLHEXYLGLYCERIN', 'phenoxyethanol-and-ethylhexylglycerin'],
    ['lactic acid sodium salt', 'sodium-lactate'],
    ['alcohol, cetyl', 'cetyl-alcohol'],
    ['Traubenkernöl', 'vitis-vinifera-seed-oil'],
    ['sal de Epsom', 'magnesium-sulfate'],
    ['E 415', 'xanthan-gum'],
    ['56-81-5', 'glycerin'],
    ['colour index 77891', 'ci-77891'],
    ['potasium sorbate', 'potassium-sorbate'],
    ['zan than gum', 'xanthan-gum'],
    ['Mentha spicata oil', 'mentha-viridis-leaf-oil'],
  ])('%s is %s', (typed, id) => {
    expect(one(typed).ingredient).toBe(id)
  })

  test('keeps what is said of strength', () => {
    expect(one('lactic acid 80%')).toMatchObject({ ingredient: 'lactic-acid', note: expect.stringContaining('80 %') })
  })

  test('says how a misspelt name was read', () => {
    expect(one('xantan gum').note).toBe('read as xanthan gum')
  })
})

describe('never picked silently', () => {
  test.each([
    'sodium sulfte',
    'sodium clorite',
    'potassium chlorat',
    'methol',
    'retinl',
    'polysorbate 79',
    'vitamin E',
  ])('%s', (typed) => {
    expect(one(typed)).toMatchObject({ status: 'ask', ingredient: null })
  })

  test.each(['insulin', 'hydrofluoric acid', 'CI 99999', '50-00-1', 'E999', 'toluol oil fizz'])('%s', (typed) => {
    expect(one(typed).ingredient).toBeNull()
  })
})

test('every inventory name is found as itself or is a question about an everyday word', () => {
  const rows = [...world.knowledge.inventory.values()]
  const results = resolveNames(
    world,
    rows.map((row) => row.inci),
  )
  const lost = results.filter((result, index) => {
    const id = rows[index]!.id
    const own = world.find(id)!.id
    return result.status === 'unknown' || (result.status === 'found' && world.find(result.ingredient!)!.id !== own)
  })
  // Second inventory names of a substance lead to its record.
  expect(lost.filter((result) => result.status === 'unknown').map((result) => result.typed)).toEqual([])
  expect(lost.length).toBeLessThan(150)
  expect(results.filter((result) => result.status === 'ask').length).toBeLessThan(120)
})

test('names.yaml speaks of ingredients and roles that exist', () => {
  const { words, roles } = world.knowledge
  const ids = [
    ...[...words.ask.values()].flatMap((word) => word.choices),
    ...[...words.means.values()].map((meant) => meant.take),
    ...words.names.keys(),
  ]
  expect(ids.filter((id) => world.find(id) === null)).toEqual([])
  expect([...words.ask.values()].flatMap((word) => word.role ?? []).filter((role) => !roles.has(role))).toEqual([])
})
