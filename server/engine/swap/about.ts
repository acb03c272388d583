import { nameOf } from '#engine/formula/say.ts'
import type { Subject } from '#engine/graph/subject.ts'
import { mainRole } from '#engine/graph/subject.ts'
import type { AboutOne, Refusal, SwapsReply, Wishes } from '#engine/model/swap.ts'
import { assess, prepare } from './assess.ts'
import type { Assessed } from './assess.ts'
import { rate } from './candidates.ts'
import { hangsOn } from './hangs-on.ts'
import type { Job } from './job.ts'
import { refusalOf, swapOf } from './propose.ts'
import { LEAST_RANK } from './search.ts'
import type { Before, Trial } from './trial.ts'
import { wishUnmet } from './wishes.ts'

const refusedFor = (rule: string, stand: Subject, message: string, claim?: string): Refusal => ({
  lines: [{ ingredient: stand.id, share_percent: 0 }],
  conflict: [
    {
      rule,
      severity: 'warn',
      about: [stand.id],
      message,
      because: [{ fact: message, ...(claim !== undefined && { claim }) }],
      sources: [],
    },
  ],
  message,
})

/** It never does this job, whatever the formula. */
function otherJob(job: Job, stand: Subject, { context }: Before): Refusal | null {
  const states = stand.standsFor.some(({ for: id }) => id === job.missing.id)
  if (stand.allRoles.has(job.swap.scope) || states) return null
  const {
    say,
    knowledge: { roles },
  } = context.world
  const main = mainRole(stand)
  const label = roles.get(main)?.label
  const message = label
    ? say`${nameOf(stand)} is used as ${say.inside(label)}, not as ${say.inside(job.role.label)}`
    : say`What ${nameOf(stand)} does in a formula is not recorded`
  return refusedFor('role-not-played', stand, message, label ? `${stand.id}>plays>role:${main}` : undefined)
}

const hasTrial = (one: Assessed): one is Assessed & { trial: Trial } =>
  one.trial !== null && one.refusedBecause === null

function aboutOne(stand: Subject, job: Job, before: Before, wishes: Wishes, reply: SwapsReply): AboutOne {
  const at = reply.swaps.findIndex(({ lines }) => lines.some(({ ingredient }) => ingredient === stand.id))
  const place = at < 0 ? null : at + 1
  const refused = (refusal: Refusal): AboutOne => ({
    ingredient: stand.id,
    place: null,
    text: refusal.message,
    refusal,
  })
  const { say } = before.context.world
  if (stand.id === job.missing.id)
    return refused(refusedFor('missing', stand, say`${nameOf(stand)} is what is missing`))
  const hanging = hangsOn(before.context, job)
  if (hanging !== null) return refused(refusedFor('formula-hangs-on-it', stand, hanging))
  const other = otherJob(job, stand, before)
  if (other) return refused(other)
  const unmet = wishUnmet(stand, wishes, new Set(before.context.lines.map(({ subject }) => subject.id)))
  if (unmet !== null) return refused(refusedFor('wish', stand, unmet(say)))
  const assessed = assess(
    job,
    prepare(job, rate(job, stand, before.context, wishes.weights ?? {}), before),
    before,
    wishes,
  )
  if (!hasTrial(assessed)) return refused(refusalOf(job, assessed, before))
  const low = assessed.rank < LEAST_RANK ? say`It holds here, but does the job too differently to be proposed` : null
  return {
    ingredient: stand.id,
    place,
    text:
      place === null
        ? (low ?? say`It holds here; others come nearer and are easier to get`)
        : say`Proposed, place ${place}`,
    swap: swapOf(job, assessed, before, wishes),
  }
}

/** How each of these would do in place of the missing one, or why it does not. */
export const aboutThese = (
  ids: readonly string[],
  job: Job,
  before: Before,
  wishes: Wishes,
  reply: SwapsReply,
): AboutOne[] =>
  ids.flatMap((id) => {
    const stand = before.context.world.find(id)
    return stand ? [aboutOne(stand, job, before, wishes, reply)] : []
  })
