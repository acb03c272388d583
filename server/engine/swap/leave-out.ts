import { runChecks } from '#engine/checks/run.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import type { Finding } from '#engine/model/finding.ts'
import type { LeaveOut } from '#engine/model/swap.ts'
import { nameOf } from '#engine/checks/say.ts'
import { linesPlayingHere } from '#engine/formula/build-context.ts'
import { short } from '#engine/units/round.ts'
import { contextAfter, replaceLines } from './apply.ts'
import { forbidding, worsened } from './compare.ts'
import type { Job } from './job.ts'

/** From this share on a line is the product itself. */
const BASE_PERCENT = 30

/** What becomes of the formula when a line is simply dropped. */
export function judgeLeaveOut(context: FormulaContext, findings: readonly Finding[], job: Job): LeaveOut {
  const { missing, share_percent, role, swap } = job
  const out = new Set([missing.id])
  if (context.lines.length === 1 || context.lines.every(({ subject }) => out.has(subject.id))) {
    return { verdict: 'no', why: `${nameOf(missing)} is all there is.` }
  }
  const after = contextAfter(replaceLines(context, out, []), context)
  const [worst] = forbidding(worsened(findings, runChecks(after), out), context.world)
  if (worst) return { verdict: 'no', why: `Without ${nameOf(missing)}: ${worst.message}.` }
  const isBase = share_percent >= BASE_PERCENT && !missing.allRoles.has('water-phase')
  if (isBase)
    return { verdict: 'no', why: `${short(share_percent)} % of the formula is ${nameOf(missing)}: it is the product.` }
  const sharing = linesPlayingHere(context, role.id).filter(({ subject }) => subject.id !== missing.id)
  if (swap.lost === 'no' && sharing.length > 0) {
    return {
      verdict: 'workable',
      why: `${sharing.map(({ subject }) => nameOf(subject)).join(', ')} does the same job; expect less of it.`,
    }
  }
  const why = {
    fine: `The formula stands without ${nameOf(missing)}; what is lost is its effect as ${role.label.toLowerCase()}.`,
    workable: `The formula stands, but without its ${role.label.toLowerCase()}: a different feel, body or shelf life.`,
    no: `Nothing else does the job of the ${role.label.toLowerCase()}.`,
  }[swap.lost]
  return { verdict: swap.lost, why }
}
