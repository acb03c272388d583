import type { FormulaContext } from '#engine/formula/context.ts'
import { nameOf } from '#engine/formula/say.ts'
import type { Told } from './told.ts'

/** Above this pH water splits parabens within the life of a product. */
const SLOW_ABOVE_PH = 7

/** Parabens that water splits on the shelf. */
export function parabenLoss({ ph, water_percent, lines, world: { say } }: FormulaContext): Told[] {
  if (ph === null || ph <= SLOW_ABOVE_PH || water_percent < 1) return []
  return lines
    .filter(({ subject }) => subject.classes.has('paraben'))
    .map(({ subject }) => ({
      about: [subject.id],
      message: say`At pH ${say.short(ph)} water splits ${nameOf(subject)} on the shelf: about a quarter of methylparaben was gone from a solution of pH 7.0 to 7.5 after a year at room temperature`,
      remedy: say`Bring the pH to ${SLOW_ABOVE_PH} or below, or give the product a shorter life`,
      because: [
        { fact: say`about 25 % lost in 12 months at pH 7.0 to 7.5 (PRACTPHARM, secondary)` },
        { fact: say`half-life at 70 C falls from 1673 h at pH 5.5 to 39 h at pH 8.2 (PARAKIN1974, read)` },
        { fact: say`pH ${say.short(ph)}` },
      ],
      sources: ['PARAKIN1974', 'PRACTPHARM'],
    }))
}
