import { describe, expect, test } from 'vitest'
import { findSwaps } from '#engine/index.ts'
import { runRule } from '#engine/checks/run.ts'
import { buildContext } from '#engine/formula/build-context.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import type { Finding } from '#engine/model/finding.ts'
import type { Line } from '#engine/model/formula.ts'
import { minimalFinding, minimalLines } from '#engine/swap/conflict.ts'
import { lookBefore } from '#engine/swap/find-swaps.ts'
import { tryOut } from '#engine/swap/trial.ts'
import { FORMULAS } from '../../formulas/read-formulas.ts'
import { makeFormula, makeWorld, realWorld } from '../../helpers.ts'

/** Does the rule still object to the same subject when only these lines are left? */
function objects(finding: Finding, lines: readonly Line[], context: FormulaContext): boolean {
  if (lines.length === 0) return false
  const part = buildContext(
    { ...context.formula, form: context.form, lines: [...lines] },
    context.world,
    context.placedOn,
  )
  const about = new Set(finding.about)
  return runRule(finding.rule, part).some((one) => one.about.length === 0 || one.about.some((id) => about.has(id)))
}

/** Lines that could be taken away without silencing the rule. */
const idle = (finding: Finding, lines: readonly Line[], context: FormulaContext): Line[] =>
  lines.filter((line) =>
    objects(
      finding,
      lines.filter((other) => other !== line),
      context,
    ),
  )

describe('the smallest conflict in a world made by hand', () => {
  const ids = Array.from({ length: 16 }, (_, index) => `i${index}`)
  const world = makeWorld({
    rules: [{ id: 'charge-clash', severity: 'warn' }],
    classes: { plus: { group: 'charge' }, minus: { group: 'charge' } },
    clashes: [
      { id: 'c', between: ['class:plus', 'class:minus'], mechanism: 'charge', severity: 'breaks', says: 'clot' },
    ],
    ingredients: ids.map((id, index) => ({
      id,
      inci: id.toUpperCase(),
      roles: [],
      ...(index === 3 && { classes: ['plus'] }),
      ...(index === 12 && { classes: ['minus'] }),
    })),
  })
  const formula = makeFormula(Object.fromEntries(ids.map((id) => [id, 6.25])), { fill: null })
  const context = buildContext(formula, world)
  const [finding] = runRule('charge-clash', context)

  test('is the pair that clashes, wherever it stands', () => {
    expect(minimalLines(finding!, context).map(({ ingredient }) => ingredient)).toEqual(['i3', 'i12'])
    const turned = buildContext({ ...formula, lines: formula.lines.toReversed() }, world)
    expect(
      minimalLines(finding!, turned)
        .map(({ ingredient }) => ingredient)
        .sort(),
    ).toEqual(['i12', 'i3'])
  })

  test('is told with the shares, and the finding is otherwise unchanged', () => {
    const told = minimalFinding(finding!, context)
    expect(told.because.map(({ fact }) => fact)).toEqual(expect.arrayContaining(['I3 at 6.25 %', 'I12 at 6.25 %']))
    expect({ ...told, because: [] }).toEqual({ ...finding!, because: [] })
  })
})

describe('the smallest conflict behind refusals over the formulas', () => {
  const world = realWorld()
  const cases = FORMULAS.flatMap(({ name, formula }) => {
    const before = lookBefore(world, formula)
    return formula.lines.flatMap(({ ingredient }, index) => {
      if (index % 2 === 1) return []
      return findSwaps(world, { formula, missing: [ingredient], limit: 3 })
        .refused.slice(0, 3)
        .flatMap(({ lines: [line] }) => {
          const stand = line && world.find(line.ingredient)
          if (!line || !stand) return []
          const trial = tryOut(before, new Set([ingredient]), [{ stand, share_percent: line.share_percent }], {})
          return trial.conflict.map((finding) => ({
            name: `${name}: ${line.ingredient} for ${ingredient}, ${finding.rule}`,
            finding,
            after: trial.after,
            lines: minimalLines(finding, trial.after),
          }))
        })
    })
  })

  test('there are refusals to look at', () => expect(cases.length).toBeGreaterThan(30))

  test('still makes the rule fire', () =>
    expect(
      cases.filter(({ finding, lines, after }) => !objects(finding, lines, after)).map(({ name }) => name),
    ).toEqual([]))

  test('is silenced by taking any one line of it away', () =>
    expect(
      cases.filter(({ finding, lines, after }) => idle(finding, lines, after).length > 0).map(({ name }) => name),
    ).toEqual([]))
})
