import type { Formula, Line } from '#engine/model/formula.ts'
import { plays, wordOf } from '#engine/graph/subject.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { World } from '#engine/graph/world.ts'
import type { PlaysRole } from '#engine/model/records.ts'
import type { FormulaContext, FormulaLine, RoleHere, Substance } from './context.ts'
import { formOf } from './form-of.ts'
import { activeMatter, oilPercent, surfactantPercent, waterPercent } from './totals.ts'
import { holdsHere } from './when.ts'

/** Phase of a line: as stated, else that of the record. */
function phaseOf(line: Line, subject: Subject): FormulaLine['phase'] {
  if (line.phase) return line.phase
  const word = wordOf(subject, 'phase')
  if (word === 'oil' || word === 'powder' || word === 'cool-down') return word
  return 'water'
}

function linesOf(formula: Formula, world: World): FormulaLine[] {
  const filled_percent = 100 - formula.lines.reduce((sum, line) => sum + (line.share_percent ?? 0), 0)
  return formula.lines.flatMap((line) => {
    const subject = world.find(line.ingredient)
    if (!subject) return []
    const strength = line.strength_percent !== undefined && { strength_percent: line.strength_percent }
    return [
      {
        subject,
        share_percent: line.share_percent ?? Math.max(0, filled_percent),
        phase: phaseOf(line, subject),
        ...strength,
      },
    ]
  })
}

function substancesOf(lines: readonly FormulaLine[]): Substance[] {
  const sums = new Map<string, Substance>()
  for (const line of lines) {
    for (const part of line.subject.parts) {
      const known = sums.get(part.subject.id)
      const share_percent = line.share_percent * part.share
      // Parts of a blend are stated pure; a line of its own is a trade form with its strength.
      const pure = part.subject.id === line.subject.id ? activeMatter(line) / line.share_percent : 1
      sums.set(part.subject.id, {
        subject: part.subject,
        share_percent: (known?.share_percent ?? 0) + share_percent,
        pure_percent: (known?.pure_percent ?? 0) + share_percent * pure,
      })
    }
  }
  return [...sums.values()]
}

const SIDE_SHARE = 0.5
const isSide = ({ share }: PlaysRole): boolean => share !== undefined && share < SIDE_SHARE

/** Neighbours, form, place or pH that are stated and hold say more about this formula than a general role; a mere level does not. */
const isTelling = (claim: PlaysRole): boolean =>
  !isSide(claim) && Boolean(claim.when?.with ?? claim.when?.form ?? claim.when?.areas ?? claim.when?.ph)

/** Roles in order of the record; where none fits the circumstances the unconditional and then all of them count. */
function rolesHere(subject: Subject, here: FormulaContext): RoleHere[] {
  const share_percent = here.lines.reduce(
    (sum, line) => sum + (line.subject.id === subject.id ? line.share_percent : 0),
    0,
  )
  const fitting = subject.roles.filter((claim) => holdsHere(claim.when, subject, here, share_percent))
  const chosen = fitting.length > 0 ? fitting : subject.roles
  const told = chosen.filter((claim) => isTelling(claim))
  const side = chosen.filter((claim) => !isTelling(claim) && isSide(claim))
  const ordered = [...told, ...chosen.filter((claim) => !told.includes(claim) && !side.includes(claim)), ...side]
  return ordered.map((claim) => ({ role: claim.role, claim }))
}

/** Lines of one ingredient in one phase and strength are one line to every rule. */
function merged(written: readonly FormulaLine[]): FormulaLine[] {
  const sums = new Map<string, FormulaLine>()
  for (const line of written) {
    const key = `${line.subject.id} ${line.phase} ${line.strength_percent ?? ''}`
    sums.set(key, { ...line, share_percent: (sums.get(key)?.share_percent ?? 0) + line.share_percent })
  }
  return [...sums.values()]
}

const byId = (a: FormulaLine, b: FormulaLine): number =>
  a.subject.id < b.subject.id ? -1 : a.subject.id > b.subject.id ? 1 : 0

/** Former and second names give way to the id of the record; ids that nobody knows stay as they are. */
const withRecordIds = (formula: Formula, world: World): Formula => ({
  ...formula,
  lines: formula.lines.map((line) => ({ ...line, ingredient: world.find(line.ingredient)?.id ?? line.ingredient })),
})

/**
 * Works out what the rules ask of a formula. Lines of ingredients that the world does not know are left out; the
 * caller refuses them first.
 */
export function buildContext(asked: Formula, world: World, placedOn?: string): FormulaContext {
  const formula = withRecordIds(asked, world)
  const written = linesOf(formula, world)
  const lines = merged(written).sort((a, b) => byId(a, b) || a.share_percent - b.share_percent)
  const memo = new Map<string, RoleHere[]>()
  const context: FormulaContext = {
    world,
    formula,
    lines,
    written,
    substances: substancesOf(lines),
    form: formula.form ?? formOf(lines, world),
    formDerived: formula.form === undefined,
    ph: formula.ph,
    hottest_c: formula.hottest_c,
    // An empty list says nothing of where the product goes: as if it were left out.
    areas: formula.areas && formula.areas.length > 0 ? formula.areas : undefined,
    placedOn,
    water_percent: waterPercent(lines, world),
    oil_percent: oilPercent(lines),
    surfactant_percent: surfactantPercent(lines, world),
    rolesOf: (subject) => {
      const known = memo.get(subject.id)
      if (known) return known
      const roles = rolesHere(subject, context)
      memo.set(subject.id, roles)
      return roles
    },
  }
  return context
}

/** Lines that play a role (or a narrower one) in this formula. */
export const linesPlayingHere = (context: FormulaContext, role: string): FormulaLine[] =>
  context.lines.filter(
    (line) =>
      plays(line.subject, role) &&
      context.rolesOf(line.subject).some((here) => context.world.roles.above(here.role).includes(role)),
  )

/** Share of one ingredient over all its lines [%]. */
export const shareOf = (context: FormulaContext, id: string): number =>
  context.lines.reduce((sum, line) => sum + (line.subject.id === id ? line.share_percent : 0), 0)
