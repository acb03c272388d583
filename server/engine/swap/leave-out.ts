import { nameOf } from '#engine/checks/say.ts'
import { linesPlayingHere } from '#engine/formula/build-context.ts'
import type { FormulaContext, FormulaLine } from '#engine/formula/context.ts'
import type { LeaveOut, Wishes } from '#engine/model/swap.ts'
import type { Before } from './trial.ts'
import type { Job } from './job.ts'
import { tryOut } from './trial.ts'

/** From this share on a line is the product itself. */
const BASE_PERCENT = 30
/** From this part of the oil phase on an oil is the oil phase: all of it outside in water-in-oil, most of it in oil-in-water. */
const MAIN_OIL: Partial<Record<FormulaContext['form'], number>> = { 'water-in-oil': 0.4, 'oil-in-water': 0.7 }

const NOTHING_ELSE: Wishes = {}

/** How much of the work in a role stays when the line goes: shares measured by their usual level in the role. */
function workLeft(context: FormulaContext, job: Job): { left: number; sharing: FormulaLine[] } {
  const work = ({ subject, share_percent }: FormulaLine): number => {
    const claim = context
      .rolesOf(subject)
      .find(({ role }) => context.world.roles.above(role).includes(job.role.id))?.claim
    return share_percent / (claim?.level_percent?.typical ?? claim?.level_percent?.max ?? share_percent)
  }
  const players = linesPlayingHere(context, job.role.id)
  const sharing = players.filter(({ subject }) => subject.id !== job.missing.id)
  const total = players.reduce((sum, line) => sum + work(line), 0)
  return { left: total === 0 ? 0 : sharing.reduce((sum, line) => sum + work(line), 0) / total, sharing }
}

/** The only water of a product that is mostly water; beside another one, that one fills up. */
function isAllTheWater({ lines, world: { say } }: FormulaContext, { missing, share_percent }: Job): string | null {
  const hasOther = lines.some(({ subject }) => subject.id !== missing.id && subject.allRoles.has('water-phase'))
  if (hasOther || share_percent < BASE_PERCENT) return null
  return say`${say.short(share_percent)} % of the formula is ${nameOf(missing)}: all the rest is dissolved or dispersed in it.`
}

/** The line is so much of the product that without it there is another product. */
function isTheProduct(context: FormulaContext, job: Job): string | null {
  const { missing, share_percent } = job
  const { say } = context.world
  if (missing.allRoles.has('water-phase')) return isAllTheWater(context, job)
  const partOfOil = missing.allRoles.has('emollient') ? share_percent / Math.max(share_percent, context.oil_percent) : 0
  const bound = MAIN_OIL[context.form]
  if (share_percent < BASE_PERCENT && !(bound !== undefined && context.oil_percent >= 5 && partOfOil >= bound))
    return null
  return share_percent >= BASE_PERCENT
    ? say`${say.short(share_percent)} % of the formula is ${nameOf(missing)}: it is the product.`
    : say`${nameOf(missing)} is the main oil: without it there is another product.`
}

const isEmulsion = ({ form }: FormulaContext): boolean => form === 'oil-in-water' || form === 'water-in-oil'

const HALF = 0.5
/** So much of the work stays that hardly anybody notices. */
const MOST = 0.75

/** What is lost with the role itself, softened or sharpened by what else does the job here. */
function byRole(context: FormulaContext, job: Job): LeaveOut {
  const { missing, role, swap } = job
  const { say } = context.world
  const label = say.inside(role.label)
  const { left, sharing } = workLeft(context, job)
  const others = sharing.map(({ subject }) => nameOf(subject)).join(', ')
  // In an emulsion a wax or fatty alcohol is body; in a stick or balm it is what stands.
  const lost =
    swap.lost === 'no' && isEmulsion(context) && context.world.roles.above(role.id).includes('structurant')
      ? 'workable'
      : swap.lost
  if (lost === 'no') {
    return left >= HALF
      ? { verdict: 'workable', why: say`${others} does the same job; expect less of it.` }
      : {
          verdict: 'no',
          why: others
            ? say`${others} alone does too little of the job of the ${label}.`
            : say`Nothing else does the job of the ${label}.`,
        }
  }
  if (lost === 'workable' && left >= MOST)
    return { verdict: 'fine', why: say`${others} does the same job; little is lost.` }
  return lost === 'fine'
    ? {
        verdict: 'fine',
        why: say`The formula stands without ${nameOf(missing)}; what is lost is its effect as ${label}.`,
      }
    : {
        verdict: 'workable',
        why: say`The formula stands, but without its ${label}: a different feel, body or shelf life.`,
      }
}

/** What becomes of the formula when a line is simply dropped (and what has nothing left to do with it). */
export function judgeLeaveOut(before: Before, job: Job): LeaveOut {
  const { context } = before
  const { say } = context.world
  const out = new Set([job.missing.id])
  if (context.lines.every(({ subject }) => out.has(subject.id)))
    return { verdict: 'no', why: say`${nameOf(job.missing)} is all there is.` }
  const trial = tryOut(before, out, [], NOTHING_ELSE)
  const [worst] = [...trial.conflict, ...trial.burdens.filter(({ severity }) => severity === 'warn')]
  if (worst) return { verdict: 'no', why: say`Without ${nameOf(job.missing)}: ${worst.message}.` }
  const product = isTheProduct(context, job)
  if (product !== null) return { verdict: 'no', why: product }
  const verdict = byRole(context, job)
  const also = trial.repairs.map(({ text }) => text).join('; ')
  return also ? { ...verdict, why: `${verdict.why} ${also}.` } : verdict
}
