import { mainRole, numberOf, plays, wordOf } from '#engine/graph/subject.ts'
import type { World } from '#engine/graph/world.ts'
import type { FormulaLine } from './context.ts'

const SURFACTANT_ACTIVE_PERCENT = 100 // a surfactant of unknown strength is counted whole: rather too much than too little

/** Active matter of a line [% of the formula]: stated strength, else the record's typical value, else the whole line. */
export function activeMatter(line: FormulaLine): number {
  const strength = line.strength_percent ?? numberOf(line.subject, 'active_percent') ?? SURFACTANT_ACTIVE_PERCENT
  return (line.share_percent * strength) / 100
}

/** True where the first role of the record is this one or a narrower one. */
export const mainlyPlays = (line: FormulaLine, role: string, world: World): boolean =>
  world.roles.above(mainRole(line.subject)).includes(role)

const sum = (lines: readonly FormulaLine[], amount: (line: FormulaLine) => number): number =>
  lines.reduce((total, line) => total + amount(line), 0)

/** Water and what mixes with it [%]; the water that surfactants and solutions bring is counted. */
export function waterPercent(lines: readonly FormulaLine[], world: World): number {
  return sum(lines, (line) => {
    if (plays(line.subject, 'water-phase')) return line.share_percent
    const active_percent = numberOf(line.subject, 'active_percent')
    const dissolved = wordOf(line.subject, 'solubility') === 'water' && wordOf(line.subject, 'form') !== 'powder'
    if (dissolved && active_percent !== undefined && active_percent < 95) return line.share_percent - activeMatter(line)
    return mainlyPlays(line, 'solvent', world) && dissolved ? line.share_percent : 0
  })
}

/** Oils, fats and waxes [%]. */
export const oilPercent = (lines: readonly FormulaLine[]): number =>
  sum(lines, (line) => {
    const oily = wordOf(line.subject, 'solubility') === 'oil' || wordOf(line.subject, 'solubility') === 'silicone'
    return oily && (plays(line.subject, 'emollient') || plays(line.subject, 'structurant')) ? line.share_percent : 0
  })

export const surfactantPercent = (lines: readonly FormulaLine[], world: World): number =>
  sum(lines, (line) => (mainlyPlays(line, 'surfactant', world) ? activeMatter(line) : 0))

/** Share of lines that play a role (or a narrower one) [%]. */
export const sharePlaying = (lines: readonly FormulaLine[], role: string): number =>
  sum(lines, (line) => (plays(line.subject, role) ? line.share_percent : 0))
