import { Value } from 'typebox/value'
import { describe, expect, test } from 'vitest'
import { CHECKS, faultsOf } from '#engine/index.ts'
import { Formula } from '#engine/model/formula.ts'
import { findingsOf, realRaw, realWorld } from '../helpers.ts'
import { KNOWN_GAPS } from './known-gaps.ts'

const { knowledge } = realWorld()
const rules = [...knowledge.rules.values()]

/** Only the first and last line of a formula name it well enough in a report. */
const title = (formula: Formula): string =>
  `${formula.lines.map(({ ingredient }) => ingredient).join(', ')} at pH ${formula.ph ?? 'unknown'}`

const gapAt = (rule: string, list: 'fires' | 'silent', at: number) =>
  KNOWN_GAPS.find((gap) => gap.rule === rule && gap.list === list && gap.at === at)

test('rule files and check functions match one to one', () => {
  expect(Object.keys(CHECKS).sort()).toEqual(rules.map(({ id }) => id).sort())
})

test('a rule file is named after its rule', () => {
  const wrong = realRaw().rules.filter(({ path, data }) => path !== `rules/${(data as { id: string }).id}.yaml`)
  expect(wrong).toEqual([])
})

test('a rule that costs rank says how much, one that refuses is never a mere note', () => {
  expect(rules.filter(({ swap, cost }) => swap === 'cost' && !(cost !== undefined && cost > 0 && cost < 0.5))).toEqual(
    [],
  )
  expect(rules.filter(({ swap, severity }) => swap === 'refuse' && severity === 'note')).toEqual([])
})

test('only a rule that refuses in a swap ever stops a formula', () => {
  const stopping = rules.filter(({ id, fires }) =>
    (fires as Formula[]).some((formula) => findingsOf(id, formula).some(({ severity }) => severity === 'stop')),
  )
  expect(stopping.length).toBeGreaterThan(1)
  expect(stopping.filter(({ swap }) => swap !== 'refuse')).toEqual([])
})

test('every excused case exists and gives its reason', () => {
  const missing = KNOWN_GAPS.filter(({ rule, list, at }) => !knowledge.rules.get(rule)?.[list][at])
  expect(missing).toEqual([])
  expect(KNOWN_GAPS.filter(({ reason }) => reason.length < 20)).toEqual([])
})

describe.each(rules)('$id', ({ id, fires, silent }) => {
  test('has at least two worked cases and two decoys', () => {
    expect(fires.length).toBeGreaterThanOrEqual(2)
    expect(silent.length).toBeGreaterThanOrEqual(2)
  })

  test('its cases are formulas that the program accepts', () => {
    for (const formula of [...fires, ...silent]) {
      expect([...Value.Errors(Formula, formula)]).toEqual([])
      expect(faultsOf(formula as Formula, realWorld())).toEqual([])
    }
  })

  ;(fires as Formula[]).forEach((formula, at) => {
    const run = gapAt(id, 'fires', at) ? test.fails : test
    run(`fires on ${title(formula)}`, () => expect(findingsOf(id, formula)).not.toEqual([]))
  })
  ;(silent as Formula[]).forEach((formula, at) => {
    const run = gapAt(id, 'silent', at) ? test.fails : test
    run(`is silent on ${title(formula)}`, () => expect(findingsOf(id, formula)).toEqual([]))
  })
})

test('what a rule finds names only lines of the formula and a source each', () => {
  for (const { id, fires } of rules) {
    for (const formula of fires as Formula[]) {
      const ids = new Set(
        formula.lines.flatMap(({ ingredient }) => {
          const subject = realWorld().find(ingredient)
          return [subject?.id ?? '', ...(subject?.parts.map((part) => part.subject.id) ?? [])]
        }),
      )
      for (const finding of findingsOf(id, formula)) {
        expect(finding.about.filter((one) => !ids.has(one))).toEqual([])
        expect(finding.because.length).toBeGreaterThan(0)
        expect(finding.message).not.toMatch(/undefined|NaN|\bsafe\b/)
      }
    }
  }
})
