import { nameOf } from '#engine/checks/say.ts'
import type { Subject } from '#engine/graph/subject.ts'
import { wordOf } from '#engine/graph/subject.ts'
import type { Companion, Wishes } from '#engine/model/swap.ts'
import { roundTo } from '#engine/units/round.ts'
import { contextAfter, replaceLines } from './apply.ts'
import { usualness } from './candidates.ts'
import type { Job } from './job.ts'
import { look } from './trial.ts'
import type { Before, Trial } from './trial.ts'
import { wishUnmet } from './wishes.ts'

const MOST_TRIED = 6

/** Dose of a companion: its typical level in that role, brought to the share at which the missing one played it. */
function doseOf(stand: Subject, role: string, job: Job): number | undefined {
  const level = stand.roles.find((claim) => claim.role === role)?.level_percent
  const asked = job.others.find((here) => here.role === role)?.claim.level_percent
  const typical = level?.typical ?? level?.min
  if (typical === undefined) return undefined
  const factor = asked?.typical === undefined ? 1 : Math.min(1, job.share_percent / asked.typical)
  return roundTo(Math.max(level?.min ?? 0, typical * factor), 2)
}

/** Does it go into the product at all: oil where there is oil, water where there is water. */
function fits(stand: Subject, { form }: Trial['after']): boolean {
  const solubility = wordOf(stand, 'solubility')
  return !(form === 'anhydrous' && solubility === 'water') && !(form === 'gel' && solubility === 'oil')
}

/** Worth a second jar on the bench: a role whose loss is noticed. */
const matters = (job: Job, role: string, { context }: Before): boolean =>
  context.world.knowledge.roles.get(role)?.swap.lost !== 'fine' && role !== job.role.id

function companionFor(role: string, job: Job, trial: Trial, before: Before, wishes: Wishes): Companion | null {
  const { world } = before.context
  const { say } = world
  const label = say.inside(world.knowledge.roles.get(role)?.label ?? role)
  const present = new Set(trial.after.lines.map(({ subject }) => subject.id))
  const tried = world
    .players(role)
    .filter(({ id, roles }) => id !== job.missing.id && !present.has(id) && roles[0]?.role === role)
    .filter((stand) => wishUnmet(stand, wishes, present) === null && fits(stand, trial.after))
    .sort((a, b) => usualness(b) - usualness(a) || (a.id < b.id ? -1 : 1))
    .slice(0, MOST_TRIED)
  for (const stand of tried) {
    const share_percent = doseOf(stand, role, job)
    if (share_percent === undefined) continue
    const formula = replaceLines(trial.after, NOTHING, [{ stand, share_percent }])
    const beside = { context: trial.after, findings: trial.findings() }
    if (look(contextAfter(formula, before.context), beside, NOTHING).forbidden.length > 0) continue
    const text = say`Left open: ${label}. ${say.short(share_percent)} % ${nameOf(stand)} beside it covers that`
    const { form: _form, ...open } = formula
    const stated = before.context.formula.form
    return { ingredient: stand.id, share_percent, role, text, formula: stated ? { ...open, form: stated } : open }
  }
  return null
}

const NOTHING: ReadonlySet<string> = new Set()

/** For each job that the stand-in leaves open and whose loss is noticed: what covers it, tried in the new formula. */
export const companionsFor = (
  roles: readonly string[],
  job: Job,
  trial: Trial,
  { before, wishes }: { before: Before; wishes: Wishes },
): Companion[] =>
  roles
    .filter((role) => matters(job, role, before))
    .flatMap((role) => companionFor(role, job, trial, before, wishes) ?? [])
