import { describe, expect, test } from 'vitest'
import { bannedUses, faultOfUse } from '../../score/law-banned-uses.ts'
import { faultOfDay, judgeRow } from '../../score/law-judged.ts'
import { NOT_CHECKABLE } from '../../score/law-not-checkable.ts'
import { lawRows } from '../../score/law-rows.ts'
import { realWorld } from '../../helpers.ts'

/** Rows of the Commission's exports (Annex V; Annexes II, III, VI) and of US law as compiled on 2026-11-25. */
const rows = lawRows()
const world = realWorld()
const judged = rows.map((row) => judgeRow(world, row))

describe('rows of the law', () => {
  test('are all judged right inside and outside, or told, or excused', () =>
    expect(judged.filter(({ faults }) => faults.length > 0).map(({ row, faults }) => [row.fact, ...faults])).toEqual(
      [],
    ))

  test('nine in ten of those that set something are enforced or told', () => {
    const setting = judged.filter(({ outcome }) => outcome !== 'nothing')
    const excused = setting.filter(({ outcome }) => outcome === 'not-checkable')
    expect(excused.length / setting.length).toBeLessThan(0.12)
  })

  test('a use that a row bans is stopped, asked or told', () => {
    const uses = judged
      .filter(({ outcome }) => outcome === 'figure' || outcome === 'use')
      .flatMap(({ row }) => bannedUses(row))
    expect(uses.length).toBeGreaterThan(90)
    expect(
      uses.flatMap((use) => {
        const fault = faultOfUse(world, use)
        return fault === null ? [] : [[use.row.fact, use.use, fault]]
      }),
    ).toEqual([])
  })

  test('a row binds from its day on and is announced before', () => {
    const coming = judged.filter(
      ({ row, outcome }) => (outcome === 'figure' || outcome === 'use') && row.applies_from > '2026-12-31',
    )
    expect(coming.length).toBeGreaterThan(25)
    expect(
      coming.flatMap(({ row }) => {
        const fault = faultOfDay(world, row, row.applies_from > '2027-01-01' ? '2026-11-25' : '2026-12-31')
        return fault === null ? [] : [[row.fact, fault]]
      }),
    ).toEqual([])
  })
})

describe('the list of what a formula cannot be judged by', () => {
  const excused = NOT_CHECKABLE.flatMap(({ facts }) => facts)
  test('names rows that exist, each once', () => {
    const known = new Set(rows.map(({ fact }) => fact))
    expect(excused.filter((fact) => !known.has(fact))).toEqual([])
    expect(new Set(excused).size).toBe(excused.length)
  })
  test('only shrinks', () => expect(excused.length).toBeLessThanOrEqual(52))
})
