import { describe, expect, test } from 'vitest'
import { checkFormula, faultsOf, findSwaps } from '#engine/index.ts'
import type { Finding } from '#engine/model/finding.ts'
import type { Formula } from '#engine/model/formula.ts'
import type { SwapsReply } from '#engine/model/swap.ts'
import { FORMULAS } from '../formulas/read-formulas.ts'
import { realWorld } from '../helpers.ts'

const world = realWorld()

interface Asked {
  name: string
  formula: Formula
  missing: string
  reply: SwapsReply
}

/** Every line of every formula missing in turn: a few hundred questions, asked once. */
const ASKED: Asked[] = FORMULAS.flatMap(({ name, formula }) =>
  formula.lines.map(({ ingredient }) => ({
    name: `${name} without ${ingredient}`,
    formula,
    missing: ingredient,
    reply: findSwaps(world, { formula, missing: [ingredient] }),
  })),
)
const OFFERS = ASKED.flatMap((asked) =>
  asked.reply.swaps.map((swap) => ({ ...asked, swap, name: `${asked.name}: ${swap.lines[0]?.ingredient}` })),
)
const failing = <T extends { name: string }>(list: readonly T[], holds: (one: T) => boolean): string[] =>
  list.filter((one) => !holds(one)).map(({ name }) => name)

const RANK = { note: 0, unknown: 1, warn: 2, stop: 3 }
const refuses = (rule: string): boolean => world.knowledge.rules.get(rule)?.swap === 'refuse'

describe('every offer', () => {
  test('there are offers to look at', () => expect(OFFERS.length).toBeGreaterThan(300))

  test('comes as a whole formula that the program accepts and whose shares add up to 100', () => {
    expect(
      failing(OFFERS, ({ swap }) => swap.formula !== undefined && faultsOf(swap.formula, world).length === 0),
    ).toEqual([])
    const sumOf = ({ lines }: Formula) => lines.reduce((sum, line) => sum + (line.share_percent ?? 0), 0)
    expect(failing(OFFERS, ({ swap }) => Math.abs(sumOf(swap.formula!) - 100) < 1e-6)).toEqual([])
  })

  test('leaves the missing one out', () =>
    expect(
      failing(OFFERS, ({ swap, missing }) => swap.formula!.lines.every((line) => line.ingredient !== missing)),
    ).toEqual([]))

  test('puts the stand-in in at the dose that it names', () =>
    expect(
      failing(OFFERS, ({ swap }) =>
        swap.lines.every((line) =>
          swap.formula!.lines.some(
            (other) => other.ingredient === line.ingredient && other.share_percent === line.share_percent,
          ),
        ),
      ),
    ).toEqual([]))

  test('carries no stop', () =>
    expect(failing(OFFERS, ({ swap }) => swap.findings.every(({ severity }) => severity !== 'stop'))).toEqual([]))

  test('keeps market, product, areas and the form that was stated', () => {
    const kept = ({ market, product, areas, form }: Formula) => JSON.stringify([market, product, areas, form])
    expect(failing(OFFERS, ({ swap, formula }) => kept(swap.formula!) === kept(formula))).toEqual([])
  })

  test('is no worse than before on the same subject, for rules that refuse', () => {
    const worse = ({ swap, formula, missing }: (typeof OFFERS)[number]): Finding[] => {
      const swapped = new Set([missing, ...swap.lines.map(({ ingredient }) => ingredient)])
      const key = ({ rule, about }: Finding) => `${rule} ${about.filter((id) => !swapped.has(id)).join(' ')}`
      const worst = new Map<string, number>()
      for (const finding of checkFormula(world, formula).findings)
        worst.set(key(finding), Math.max(worst.get(key(finding)) ?? -1, RANK[finding.severity]))
      return swap.findings.filter(
        (finding) =>
          finding.severity === 'warn' &&
          refuses(finding.rule) &&
          RANK[finding.severity] > (worst.get(key(finding)) ?? -1),
      )
    }
    expect(failing(OFFERS, (one) => worse(one).length === 0)).toEqual([])
  })

  test('gives its reasons: path from the missing one, change of dose, a rank between 0 and 1', () => {
    expect(failing(OFFERS, ({ swap, missing }) => swap.path[0]?.from === missing)).toEqual([])
    expect(failing(OFFERS, ({ swap }) => swap.changes.some(({ kind }) => kind === 'dose' || kind === 'label'))).toEqual(
      [],
    )
    expect(
      failing(OFFERS, ({ swap }) => Object.values(swap.scores).every((score) => score >= 0 && score <= 1)),
    ).toEqual([])
    expect(failing(OFFERS, ({ swap }) => !/undefined|NaN|\bsafe\b/.test(JSON.stringify(swap)))).toEqual([])
  })

  test('tells of the formula what a check of that formula tells', () => {
    const told = (findings: readonly Finding[]) =>
      findings.map(({ rule, severity, about }) => `${severity} ${rule} ${about.join(' ')}`).sort()
    const again = (formula: Formula, form: Formula['form']) =>
      checkFormula(world, form ? { ...formula, form } : formula).findings
    const differing = failing(OFFERS, ({ swap, formula }) => {
      const form = checkFormula(world, formula).form
      return JSON.stringify(told(swap.findings)) === JSON.stringify(told(again(swap.formula!, form)))
    })
    expect(differing).toEqual([])
  })
})

describe('every reply', () => {
  // A near relative of those already named comes a little later than its rank: at most this much.
  const VARIETY = 0.08 + 0.001
  test('offers the best first, and after it nothing that a later one clearly beats', () =>
    expect(
      failing(ASKED, ({ reply }) => {
        const ranks = reply.swaps.map(({ scores }) => scores['rank'] ?? 0)
        return ranks.every((rank, index) =>
          ranks.slice(index).every((later) => later <= rank + (index === 0 ? 0 : VARIETY)),
        )
      }),
    ).toEqual([]))

  test('never offers and refuses the same ingredient, nor one twice, nor the missing one', () => {
    const ids = (lists: readonly { lines: readonly { ingredient: string }[] }[]) =>
      lines(lists).map(({ ingredient }) => ingredient)
    const lines = (lists: readonly { lines: readonly { ingredient: string }[] }[]) => lists.flatMap((one) => one.lines)
    expect(
      failing(ASKED, ({ reply, missing }) => {
        const all = [...ids(reply.swaps), ...ids(reply.refused)]
        return new Set(all).size === all.length && !all.includes(missing)
      }),
    ).toEqual([])
  })

  test('says swaps exactly when there are some, and why when there are none', () => {
    expect(failing(ASKED, ({ reply }) => (reply.outcome === 'swaps') === reply.swaps.length > 0)).toEqual([])
    expect(failing(ASKED, ({ reply }) => reply.why.length > 20)).toEqual([])
  })

  test('refuses with a conflict that names a reason', () =>
    expect(
      failing(ASKED, ({ reply }) =>
        reply.refused.every(({ conflict, message }) => conflict.length > 0 && message !== ''),
      ),
    ).toEqual([]))

  test('leaves the formula that was asked about as it was', () => {
    // Formulas are deep-frozen: a write would have thrown before this line.
    expect(FORMULAS.every(({ formula }) => Object.isFrozen(formula.lines[0]))).toBe(true)
  })

  test('is the same when asked again', () => {
    for (const { formula, missing, reply } of ASKED.filter((_, index) => index % 9 === 0))
      expect(findSwaps(world, { formula, missing: [missing] })).toEqual(reply)
  })
})
