import { describe, expect, test } from 'vitest'
import { findSwaps } from '#engine/index.ts'
import { FORMULAS } from '../../formulas/read-formulas.ts'
import { makeFormula, realWorld } from '../../helpers.ts'

const world = realWorld()
const verdictOf = (formula: ReturnType<typeof makeFormula>, missing: string) =>
  findSwaps(world, { formula, missing: [missing], limit: 1 }).leaveOut.verdict

describe('left out', () => {
  test('the water of a cream cannot be', () => {
    const isWater = ({ ingredient }: { ingredient: string }) => world.find(ingredient)!.allRoles.has('water-phase')
    const isMostOfIt = ({ lines }: (typeof FORMULAS)[number]['formula']) =>
      lines.reduce((sum, line) => sum + (line.ingredient === 'aqua' ? 0 : (line.share_percent ?? 0)), 0) < 70
    const onlyWater = FORMULAS.filter(
      ({ formula }) => formula.lines.filter(isWater).length === 1 && isMostOfIt(formula),
    )
    expect(onlyWater.length).toBeGreaterThan(3)
    expect(onlyWater.filter(({ formula }) => verdictOf(formula, 'aqua') !== 'no').map(({ name }) => name)).toEqual([])
  })
  test('a flower water beside water can be: water fills up', () => {
    const toner = makeFormula({ 'rosa-damascena-flower-water': 40, glycerin: 3, 'sodium-benzoate': 0.5 }, { ph: 4.5 })
    expect(verdictOf(toner, 'rosa-damascena-flower-water')).not.toBe('no')
  })
})
