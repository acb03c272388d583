import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, test } from 'vitest'
import { DOUBT_LINTS, FAULT_LINTS } from '#engine/knowledge/lints/index.ts'
import { INGREDIENT, LIMIT } from '#engine/knowledge/lints/keys.ts'
import { expandProperties } from '#engine/knowledge/expand-vocabulary.ts'
import { realRaw } from '../helpers.ts'

const FOLDER = fileURLToPath(new URL('../../graph-data', import.meta.url))
const TEXT = readFileSync(`${FOLDER}/README.md`, 'utf8')

/** Rows of all tables as cells, marks of code taken off. */
const ROWS = TEXT.split('\n')
  .filter((line) => line.startsWith('| '))
  .map((line) =>
    line
      .split('|')
      .slice(1, -1)
      .map((cell) => cell.trim().replaceAll('`', '')),
  )

describe('the guide to the data', () => {
  test('names every lint with its weight, and none that does not exist', () => {
    const told = ROWS.filter(([, weight]) => weight === 'fault' || weight === 'doubt').map(
      ([id, weight]) => `${id} ${weight}`,
    )
    const real = [
      ...Object.keys(FAULT_LINTS).map((id) => `${id} fault`),
      ...Object.keys(DOUBT_LINTS).map((id) => `${id} doubt`),
    ]
    expect(told.sort()).toEqual(real.sort())
  })

  test('says of every lint what it is against', () => {
    expect(
      ROWS.filter(([, weight, says]) => (weight === 'fault' || weight === 'doubt') && (says?.length ?? 0) < 20),
    ).toEqual([])
  })

  test('describes every property with its unit and plausible range', () => {
    for (const { id, unit, plausible } of expandProperties(realRaw().properties).values()) {
      const row = ROWS.findLast((cells) => cells[0] === id && cells.length === 4)
      expect([id, row?.[2]?.includes(unit)]).toEqual([id, true])
      if (plausible) expect([id, row?.[3]]).toEqual([id, `${plausible.min} to ${plausible.max}`])
    }
  })

  test('describes every field of an ingredient and of a legal entry', () => {
    const fields = ROWS.flatMap(([first]) => first?.split(', ') ?? [])
    expect(Object.keys(INGREDIENT).filter((field) => !fields.includes(field))).toEqual([])
    expect(Object.keys(LIMIT).filter((field) => !fields.includes(field))).toEqual([])
  })

  test('names every file and folder of the data', () => {
    const names = ROWS.flatMap(([first]) => first?.split(', ') ?? []).map((name) => name.replace(/\/$/, ''))
    const here = readdirSync(FOLDER).filter((name) => !name.endsWith('.md'))
    expect(here.filter((name) => !names.includes(name))).toEqual([])
  })

  test('guards a field only by lints that exist', () => {
    const lints = new Set([...Object.keys(FAULT_LINTS), ...Object.keys(DOUBT_LINTS)])
    const guards = ROWS.flatMap((cells) => cells.at(-1)?.match(/\b[a-z]+(-[a-z]+)+\b/g) ?? [])
    const named = guards.filter((word) =>
      /-(is|has|are|fits|states|names|shows|adds|suits|meets|near|shares|gives|passes)-/.test(word),
    )
    expect(named.length).toBeGreaterThan(30)
    expect(named.filter((word) => !lints.has(word))).toEqual([])
  })
})
