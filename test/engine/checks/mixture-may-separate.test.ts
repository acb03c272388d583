import { describe, expect, test } from 'vitest'
import { checkFormula } from '#engine/index.ts'
import { buildContext } from '#engine/formula/build-context.ts'
import { mixtureHere } from '#engine/checks/mixture-here.ts'
import { mixtureDataOf } from '#engine/knowledge/mixture-data.ts'
import { findingsOf, makeFormula, realWorld } from '../../helpers.ts'
import { auc, precision } from '../../score/mixtures/metrics.ts'

const world = realWorld()
const rule = 'mixture-may-separate'
const wash = (shares: Record<string, number>) => makeFormula(shares, { product: 'rinse-off', ph: 5.5, hottest_c: 25 })
const outsideOf = (shares: Record<string, number>) => mixtureHere(buildContext(wash(shares), world))?.outside ?? null

const HOLDS = { 'coco-glucoside': 10, 'decyl-glucoside': 10, 'polyquaternium-16': 1.5, 'laureth-2': 1.5 }
const DROPS = { 'sodium-cocoyl-glutamate': 10, 'decyl-glucoside': 10, 'polyquaternium-6': 2, 'laureth-2': 4 }

const THICKENER_ID = {
  'short-ethoxylate': 'laureth-2',
  'peg-ester': 'peg-ppg-120-10-trimethylolpropane-trioleate-and-laureth-2',
} as const

describe('every measured mixture, written as a formula', () => {
  const { measured } = mixtureDataOf(world.knowledge)
  const replies = measured.map((one) => {
    const shares = {
      ...Object.fromEntries(one.surfactants.map(({ share_percent }, at) => [one.names[at]!, share_percent])),
      [one.polymer]: one.polymer_percent,
      [THICKENER_ID[one.thickener]]: one.thickener_percent,
    }
    const { wash: found, findings } = checkFormula(world, wash(shares))
    return { one, separation: found?.separation, finding: findings.find((finding) => finding.rule === rule) }
  })

  test('lies inside the range and has a rate', () => {
    expect(replies.filter(({ separation }) => separation?.outside.length !== 0 || !separation.rate)).toEqual([])
  })

  test('is warned of only where nearly all separate, and passed over only where most hold', () => {
    const rows = replies.map(({ one, separation }) => ({
      pair: one.names.join(' '),
      rate: separation?.rate?.rate ?? NaN,
      separated: !one.held,
    }))
    expect(auc(rows)).toBeGreaterThan(0.85)
    expect(precision(rows, 0.8)).toBeGreaterThan(0.9)
    const heldWhere = (severity: string | undefined) => {
      const of = replies.filter(({ finding }) => finding?.severity === severity)
      return of.filter(({ one }) => one.held).length / of.length
    }
    expect(heldWhere('warn')).toBeLessThan(0.1)
    expect(heldWhere(undefined)).toBeGreaterThan(0.75)
  })
})

describe('what the finding says', () => {
  const [finding] = findingsOf(rule, wash(DROPS))

  test('rate, interval, number of measured mixtures of the kind, what they were, a way out and the source', () => {
    expect(finding?.severity).toBe('warn')
    // Table of measured mixtures: glucoside with a mild anionic beside polyquaternium-6, all nine separated.
    expect(finding?.message).toMatch(
      /^About 9\d % .*95 % interval \d+ to \d+ %, fitted to 440 measured mixtures; of 9 .* 9 separated/,
    )
    expect(finding?.because[0]?.fact).toMatch(/Decyl glucoside/)
    expect(finding?.remedy).toMatch(/with polyquaternium-7 instead of polyquaternium-6 about \d+ %/)
    expect(finding?.remedy).toMatch(/let it stand/)
    expect(finding?.sources).toEqual(['CHITRE2024'])
    expect(finding?.about).toEqual(Object.keys(DROPS).sort())
  })

  test('a surfactant that was itself never measured is named', () => {
    const [other] = findingsOf(rule, wash({ ...DROPS, 'decyl-glucoside': 0.3, 'lauryl-glucoside': 10 }))
    expect(other?.because.map(({ fact }) => fact)).toContain(
      'Lauryl glucoside itself was not measured, others of its kind were',
    )
  })

  test('the order of the lines changes nothing', () => {
    const reversed = Object.fromEntries(Object.entries(DROPS).reverse())
    expect(findingsOf(rule, wash(reversed))).toEqual(findingsOf(rule, wash(DROPS)))
  })

  test('a mixture of which most hold is passed over', () => expect(findingsOf(rule, wash(HOLDS))).toEqual([]))
})

describe('a clash of charges that was counted over mixtures', () => {
  const clash = (shares: Record<string, number>) =>
    findingsOf('charge-clash', wash(shares)).map(({ severity }) => severity)
  const quat = { 'cetrimonium-chloride': 9, 'sodium-cocoyl-glutamate': 9, 'polyquaternium-7': 2 }

  test('gives way to a middling rate of the whole mixture', () =>
    expect(clash({ ...quat, 'laureth-2': 1.2 })).toEqual(['note']))
  test('stands where the whole mixture separates nearly always', () =>
    expect(clash({ ...quat, [THICKENER_ID['peg-ester']]: 5 })).toEqual(['warn']))
  test('stands where no such mixture was measured', () => expect(clash(quat)).toEqual(['warn']))
})

describe('outside of what was measured', () => {
  test.each([
    [{ ...HOLDS, 'sodium-laureth-sulfate': 8 }, /no mixture with Sodium laureth sulfate/],
    [{ ...HOLDS, 'polyquaternium-10': 0.3 }, /no mixture with Polyquaternium-10/],
    [{ ...HOLDS, 'polyquaternium-7': 1 }, /one cationic polymer/],
    [{ 'coco-glucoside': 10, 'decyl-glucoside': 10, 'polyquaternium-16': 1.5 }, /nonionic thickener/],
    [{ ...HOLDS, 'decyl-glucoside': 30 }, /surfactants together: 40 % here/],
    [{ ...HOLDS, 'polyquaternium-16': 0.2 }, /the polymer: 0.2 % here/],
    [{ ...HOLDS, 'laureth-2': 9 }, /the thickener: 9 % here/],
  ])('%j: it says why', (shares, why) => {
    expect(outsideOf(shares)?.join('; ')).toMatch(why)
    expect(checkFormula(world, wash(shares)).wash?.separation?.rate).toBeNull()
  })

  test('materials that were measured in other amounts give a note with their counts, never a warning', () => {
    const [finding] = findingsOf(rule, wash({ ...DROPS, 'laureth-2': 9 }))
    expect(finding?.severity).toBe('note')
    expect(finding?.message).toMatch(/was not measured \(the thickener: 9 % here, measured .*of 9 measured mixtures/)
  })

  test.each([
    [{ 'sodium-laureth-sulfate': 30, 'cocamidopropyl-betaine': 8, 'polyquaternium-7': 3, 'laureth-2': 2 }],
    [{ 'sodium-laureth-sulfate': 30, 'cocamidopropyl-betaine': 8, 'guar-hydroxypropyltrimonium-chloride': 0.3 }],
  ])('%j: a usual conditioning shampoo of unmeasured materials is no clash and no finding', (shares) => {
    expect(findingsOf(rule, wash(shares))).toEqual([])
    expect(findingsOf('charge-clash', wash(shares))).toEqual([])
  })

  test('one surfactant, or none of the polymers, is no such mixture', () => {
    expect(outsideOf({ 'decyl-glucoside': 20, 'polyquaternium-7': 2 })).toBeNull()
    expect(outsideOf({ 'decyl-glucoside': 10, 'cocamidopropyl-betaine': 10 })).toBeNull()
  })
})
