import { linesPlayingHere } from '#engine/formula/build-context.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import type { Subject } from '#engine/graph/subject.ts'
import { phasesOf } from './phases.ts'
import { figuresOf } from './tables.ts'
import type { LotionRow } from './tables.ts'

/** Charge of the emulsifiers of an oil-in-water formula: by the larger share; null where it is neither. */
export function emulsifierCharge(context: FormulaContext): 'anionic' | 'nonionic' | null {
  if (context.form !== 'oil-in-water') return null
  const share = (charge: string) =>
    context.substances.reduce(
      (sum, { subject, pure_percent }) =>
        subject.classes.has(charge) && (subject.allRoles.has('emulsifier') || subject.allRoles.has('surfactant'))
          ? sum + pure_percent
          : sum,
      0,
    )
  // Fatty acid and alkali make a soap, which no line names.
  const soap = linesPlayingHere(context, 'soap-emulsifier').reduce((sum, line) => sum + line.share_percent, 0)
  const [anionic, nonionic, cationic] = [share('anionic') + soap, share('nonionic'), share('cationic')]
  if (cationic > 0 || anionic + nonionic === 0) return null
  return anionic >= nonionic / 4 ? 'anionic' : 'nonionic'
}

/** How far the pH may lie from that of the lotion that was tested. */
const NEAR_PH = 0.15

/** Published tests of one agent alone in a lotion like this one: same charge of the emulsifier, same pH. */
export function likeLotions(agent: Subject, context: FormulaContext): LotionRow[] {
  const { ph } = context
  if (ph === null) return []
  const rows = figuresOf(context.world).lotions.filter((row) => row.agent === agent.id)
  if (rows.length === 0 || phasesOf(context).oil_percent === 0) return []
  const charge = emulsifierCharge(context)
  return rows.filter(
    ({ emulsifier, ph: tried }) => emulsifier === charge && ph >= tried.min - NEAR_PH && ph <= tried.max + NEAR_PH,
  )
}
