import { wordOf } from '#engine/graph/subject.ts'
import type { World } from '#engine/graph/world.ts'
import type { Form } from '#engine/model/formula.ts'
import type { FormulaLine } from './context.ts'
import { mainlyPlays, oilPercent, sharePlaying, surfactantPercent, waterPercent } from './totals.ts'

const shareOfForm = (lines: readonly FormulaLine[], form: string): number =>
  lines.reduce((sum, line) => sum + (wordOf(line.subject, 'form') === form ? line.share_percent : 0), 0)

function withoutWater(lines: readonly FormulaLine[], world: World): Form {
  const solids = lines.filter(
    (line) => mainlyPlays(line, 'surfactant', world) && wordOf(line.subject, 'form') !== 'liquid',
  )
  if (solids.reduce((sum, line) => sum + line.share_percent, 0) >= 30) return 'bar'
  return shareOfForm(lines, 'powder') >= 50 ? 'powder' : 'anhydrous'
}

/** Which phase is outside: decided by the emulsifiers, where they disagree by the larger share. */
function emulsionOf(lines: readonly FormulaLine[], oil_percent: number, water_percent: number): Form {
  const oilInWater = sharePlaying(lines, 'oil-in-water-emulsifier') + sharePlaying(lines, 'cationic-conditioner')
  const waterInOil = sharePlaying(
    lines.filter((line) => !line.subject.allRoles.has('oil-in-water-emulsifier')),
    'water-in-oil-emulsifier',
  )
  if (oilInWater === 0 && waterInOil === 0) {
    return oil_percent > 45 && oil_percent > water_percent ? 'water-in-oil' : 'oil-in-water'
  }
  return waterInOil > 1.5 * oilInWater ? 'water-in-oil' : 'oil-in-water'
}

/** What kind of product a formula is, worked out from its lines. */
export function formOf(lines: readonly FormulaLine[], world: World): Form {
  const water_percent = waterPercent(lines, world)
  const oil_percent = oilPercent(lines)
  const surfactant_percent = surfactantPercent(lines, world)
  const saponified = sharePlaying(lines, 'lye') >= 2 && oil_percent >= 40
  if (saponified) return 'bar'
  if (water_percent < 3) return withoutWater(lines, world)
  if (surfactant_percent >= 30 && water_percent < 30) return 'bar'
  if (surfactant_percent >= 3 && oil_percent < 12) return 'wash'
  if (oil_percent >= 2) return emulsionOf(lines, oil_percent, water_percent)
  return sharePlaying(lines, 'thickener') > 0 ? 'gel' : 'solution'
}
