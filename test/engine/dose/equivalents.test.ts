import { describe, expect, test } from 'vitest'
import { bufferingAt, equivalentsAt } from '#engine/dose/equivalents.ts'
import { findSwaps } from '#engine/index.ts'
import { makeFormula, realWorld } from '../../helpers.ts'

const world = realWorld()
const { acids } = world.knowledge
const at = (id: string, ph: number | null) => equivalentsAt(world.find(id)!, ph, acids)!

describe('protons that a mole gives off', () => {
  // The constants of the acids: pKa 3.13, 4.76, 6.40 of citric and 3.04, 4.37 of tartaric acid (CRC Handbook).
  test('grow with the pH and end at the number of its steps', () => {
    expect(at('citric-acid', 3.13)).toBeCloseTo(0.5, 1)
    expect(at('citric-acid', 8)).toBeCloseTo(3, 1)
    expect(at('tartaric-acid', 8)).toBeCloseTo(2, 1)
  })
  test('of a salt are those that it still has', () => {
    expect(at('potassium-bitartrate', 8)).toBeCloseTo(1, 1)
  })
  test('of a strong base are its hydroxide, at every pH', () => {
    expect(at('sodium-hydroxide', 4)).toBeCloseTo(1, 3)
    expect(at('sodium-hydroxide', 9)).toBeCloseTo(1, 3)
  })
  test('are those on record where no constants are known', () => {
    const bare = { ...world.find('citric-acid')!, id: 'nobody' }
    expect(equivalentsAt(bare, 8, acids)).toBe(1.66)
  })
})

test('a fizz ends near neutral: it takes more tartaric than citric acid by mass', () => {
  // 192.1 g over 3 protons are 64 g, 150.1 g over 2 are 75 g for each mole of bicarbonate.
  const bomb = makeFormula(
    { 'sodium-bicarbonate': 50, 'citric-acid': 25, 'zea-mays-starch': 20, 'cocos-nucifera-oil': 5 },
    { fill: null, ph: null, hottest_c: null, product: 'rinse-off', form: 'powder' },
  )
  const [about] = findSwaps(world, { formula: bomb, missing: ['citric-acid'], about: ['tartaric-acid'] }).about!
  const dose = about!.swap!.lines[0]!.share_percent
  expect(dose / 25).toBeGreaterThan(1.1)
  expect(dose / 25).toBeLessThan(1.25)
})

describe('a buffer', () => {
  const lotion = makeFormula(
    { 'sodium-lactate': 2, 'lactic-acid': 1, glycerin: 3, phenoxyethanol: 0.9, ethylhexylglycerin: 0.1 },
    { ph: 4.8, hottest_c: 40 },
  )
  test('works near its constants: bicarbonate (6.35) not at 4.8, lactate (3.86) and citrate (4.76) do', () => {
    const at48 = (id: string) => bufferingAt(world.find(id)!, 4.8, acids)!
    expect(at48('sodium-bicarbonate')).toBeLessThan(0.05)
    expect(at48('sodium-lactate')).toBeGreaterThan(0.05)
    expect(at48('sodium-citrate')).toBeGreaterThan(0.2)
  })
  test('that is too far from its constants here is refused and says so', () => {
    const { swaps, about } = findSwaps(world, {
      formula: lotion,
      missing: ['sodium-lactate'],
      about: ['sodium-bicarbonate'],
    })
    expect(swaps.flatMap(({ lines }) => lines.map(({ ingredient }) => ingredient))).toContain('sodium-citrate')
    expect(about![0]!.refusal?.message).toMatch(/hardly buffers/)
  })
})
