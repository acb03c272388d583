import { expect, test } from 'vitest'
import { FaultyData, openWorld } from '#api/open-world.ts'
import { rawData } from './small-world.ts'

test('data without fault open', () => {
  expect(openWorld(rawData()).subjects).toHaveLength(5)
})

test('faulty data do not open, and every fault is named with its file', () => {
  const raw = rawData()
  const bad = { id: 'urea', inci: 'UREA', roles: [{ role: 'zzz' }], classes: ['yyy'] }
  const faulty = { ...raw, ingredients: [...raw.ingredients, { path: 'ingredients/urea.yaml', data: bad }] }
  expect(() => openWorld(faulty)).toThrow(FaultyData)
  expect(() => openWorld(faulty)).toThrow(/2 faults.*\n.*urea\.yaml\/classes: .*yyy.*\n.*urea\.yaml\/roles: .*zzz/)
})
