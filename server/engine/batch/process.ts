import type { BatchSheet } from '#engine/model/batch.ts'
import type { FormulaContext, FormulaLine } from '#engine/formula/context.ts'
import { hasClass, inWater, isFirst, isLiquid, onlyInOil, playsHere } from './roles-here.ts'

export type Process = BatchSheet['process']

/** From here on oil is a phase of its own and no trace to be dissolved [%]. */
const OIL_PHASE_PERCENT = 1.5
const LYE_PERCENT = 2
const FAT_OF_SOAP_PERCENT = 10

const sum = (lines: readonly FormulaLine[]): number => lines.reduce((total, line) => total + line.share_percent, 0)

/** Lines that make an oil phase; scents and late additions are none. */
export const oilPhaseLines = (context: FormulaContext): FormulaLine[] =>
  context.lines.filter(
    (line) => onlyInOil(line) && !isFirst(context, line, 'scent', 'antioxidant', 'preservative', 'solubiliser'),
  )

const holdsOil = (context: FormulaContext): boolean =>
  context.lines.some(
    (line) => playsHere(context, line, 'emulsifier', 'cationic-conditioner') && !isFirst(context, line, 'solubiliser'),
  )

/** Alkali and fat together, as in soap; a little alkali beside fatty acid is a cream. */
export const isSoap = (context: FormulaContext): boolean =>
  sum(context.lines.filter((line) => playsHere(context, line, 'lye'))) >= LYE_PERCENT &&
  context.oil_percent >= FAT_OF_SOAP_PERCENT

const hasWater = (context: FormulaContext): boolean =>
  context.lines.some((line) => isFirst(context, line, 'water-phase', 'solvent') || (isLiquid(line) && inWater(line)))

/** How a formula is made: which kind of work, by its form and by what is in it. */
export function processOf(context: FormulaContext): Process {
  const { form } = context
  if (isSoap(context)) return 'soap'
  if (form === 'bar' || form === 'anhydrous' || form === 'powder') return form
  const oil_percent = sum(oilPhaseLines(context))
  if (!hasWater(context)) return oil_percent > 0 ? 'anhydrous' : 'one-phase'
  const isEmulsion = form === 'oil-in-water' || form === 'water-in-oil'
  if (isEmulsion) return oil_percent > 0 ? 'emulsion' : 'one-phase'
  return oil_percent >= OIL_PHASE_PERCENT && holdsOil(context) ? 'emulsion' : 'one-phase'
}

/** Acid and base pairs that have to meet before the emulsion is made. */
export const makesSoapInside = (context: FormulaContext): boolean =>
  context.lines.some((line) => playsHere(context, line, 'soap-emulsifier')) &&
  context.lines.some((line) => playsHere(context, line, 'base') || hasClass(line, 'borate'))

export const hasAcrylicToNeutralise = (context: FormulaContext): boolean =>
  context.lines.some(({ subject }) => subject.classes.has('acrylic-polymer') && needsBase(subject.needs))

const needsBase = (needs: readonly { need: string }[]): boolean => needs.some(({ need }) => need === 'neutraliser')
