import { describe, expect, test } from 'vitest'
import { checkFormula, findSwaps } from '#engine/index.ts'
import { jobOf } from '#engine/swap/job.ts'
import { jointSwaps, searchTogether } from '#engine/swap/joint.ts'
import { lookBefore } from '#engine/swap/find-swaps.ts'
import { FORMULAS } from '../../formulas/read-formulas.ts'
import { realWorld } from '../../helpers.ts'

const world = realWorld()
const cream = FORMULAS.find(({ name }) => name === 'light-face-cream')!.formula
const ASKED = FORMULAS.flatMap(({ name, formula }) =>
  formula.lines.map(({ ingredient }) => ({
    name: `${name} without ${ingredient}`,
    reply: findSwaps(world, { formula, missing: [ingredient] }),
  })),
)

describe('what would have to be otherwise for a refused stand-in', () => {
  const ways = ASKED.flatMap(({ name, reply }) =>
    reply.refused.flatMap(({ lines, wouldWork = [] }) =>
      wouldWork.map((way) => ({ name: `${name}: ${lines[0]?.ingredient} ${way.text}`, way, lines })),
    ),
  )
  test('is said of some', () => expect(ways.length).toBeGreaterThan(20))
  test('leaves no stop when it is done', () =>
    expect(
      ways.filter(({ way }) => checkFormula(world, way.formula).verdict === 'stop').map(({ name }) => name),
    ).toEqual([]))
  test('keeps the stand-in in the formula', () =>
    expect(
      ways
        .filter(({ way, lines }) => !way.formula.lines.some(({ ingredient }) => ingredient === lines[0]?.ingredient))
        .map(({ name }) => name),
    ).toEqual([]))
})

describe('a job that a stand-in leaves open', () => {
  const offers = ASKED.flatMap(({ name, reply }) => reply.swaps.map((swap) => ({ name, swap })))
  const companions = offers.flatMap(({ name, swap }) => swap.companions.map((one) => ({ name, swap, one })))
  test('gets a companion in some formulas', () => expect(companions.length).toBeGreaterThan(5))
  test('is covered by a companion that plays it and that the stand-in does not play', () =>
    expect(
      companions
        .filter(
          ({ swap, one }) =>
            !world.find(one.ingredient)!.allRoles.has(one.role) ||
            world.find(swap.lines[0]!.ingredient)!.allRoles.has(one.role),
        )
        .map(({ name, one }) => `${name}: ${one.ingredient}`),
    ).toEqual([]))
  test('leaves no stop with its companion', () =>
    expect(
      companions.filter(({ one }) => checkFormula(world, one.formula).verdict === 'stop').map(({ name }) => name),
    ).toEqual([]))
})

describe('wishes that exclude everything', () => {
  const gel = FORMULAS.find(({ name }) => name === 'carbomer-gel')!.formula
  const ask = (wishes: Parameters<typeof findSwaps>[1]['wishes']) =>
    findSwaps(world, { formula: gel, missing: ['carbomer'], ...(wishes && { wishes }) })
  test('are answered with the one wish to give up', () => {
    const reply = ask({ only: ['kaolin'], without: ['silicone'] })
    expect(reply.outcome).toBe('no-safe-swap')
    expect(reply.giveUp?.map(({ wishes }) => wishes)).toEqual([['only']])
    expect(reply.giveUp?.[0]?.allows).toEqual(
      ask({ without: ['silicone'] })
        .swaps.slice(0, 5)
        .flatMap(({ lines }) => lines.map(({ ingredient }) => ingredient)),
    )
  })
  test('name nothing to give up where a stand-in fulfils them all', () =>
    expect(ask({ without: ['silicone'] }).giveUp).toBeUndefined())
})

describe('weights that a person moves', () => {
  const order = (weights?: Record<string, number>) =>
    findSwaps(world, {
      formula: cream,
      missing: ['cetearyl-alcohol'],
      ...(weights && { wishes: { weights } }),
    }).swaps
  test('change the rank', () => {
    const ids = (swaps: ReturnType<typeof order>) => swaps.map(({ lines }) => lines[0]!.ingredient)
    expect(ids(order({ usual: 0 }))).not.toEqual(ids(order()))
    expect(ids(order({ usual: 1 }))).toEqual(ids(order()))
  })
  test('add up to the whole comparison', () => {
    for (const { criteria } of order()) expect(criteria.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 2)
  })
})

describe('two missing at once', () => {
  const pairs = FORMULAS.flatMap(({ formula }) => {
    const ids = [...new Set(formula.lines.map(({ ingredient }) => ingredient))].filter((id) => id !== 'aqua')
    return ids.slice(1, 4).map((id) => ({ formula, missing: [ids[0]!, id] }))
  })
  const questionOf = ({ formula, missing }: (typeof pairs)[number]) => {
    const before = lookBefore(world, formula)
    const jobs = missing.flatMap((id) => jobOf(before.context, world.find(id)!) ?? [])
    return jobs.length === 2 ? { jobs, before, wishes: {}, limit: 3 } : null
  }
  test('no better pair is passed over: the same three as when far more are tried', () => {
    for (const pair of pairs.slice(0, 24)) {
      const question = questionOf(pair)
      if (!question) continue
      const found = searchTogether(question)
      const all = searchTogether({ ...question, limit: 40 }, 1500).held.slice(0, 3)
      const ranks = (held: typeof all) => held.map(({ rank }) => Number(rank.toFixed(9)))
      if (found.complete) expect(ranks(found.held), pair.missing.join()).toEqual(ranks(all))
    }
  })
  test('are answered with one formula that holds both and carries no stop', () => {
    for (const pair of pairs) {
      const question = questionOf(pair)
      const [best] = question ? jointSwaps(question).swaps : []
      if (!best?.formula) continue
      const ids = best.formula.lines.map(({ ingredient }) => ingredient)
      expect(pair.missing.some((id) => ids.includes(id))).toBe(false)
      expect(best.lines).toHaveLength(2)
      expect(checkFormula(world, best.formula).verdict).not.toBe('stop')
    }
  })
})
