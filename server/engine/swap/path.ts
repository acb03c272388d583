import type { World } from '#engine/graph/world.ts'
import type { Step } from '#engine/model/swap.ts'
import type { Candidate } from './candidates.ts'
import type { Job } from './job.ts'

/** The way through the graph that led from the missing ingredient to the stand-in. */
export function pathTo(job: Job, candidate: Candidate, world: World): Step[] {
  const { stand, claim, stated } = candidate
  const steps: Step[] = [
    {
      from: job.missing.id,
      relation: 'plays',
      to: `role:${job.role.id}`,
      claim: `${job.missing.id}>plays>role:${job.role.id}`,
    },
  ]
  if (claim) {
    const above = world.roles.above(job.role.id)
    const ofStand = world.roles.above(claim.role)
    const meet = above.find((role) => ofStand.includes(role))
    const up = meet === undefined ? [] : above.slice(0, above.indexOf(meet) + 1)
    const down = meet === undefined ? [] : ofStand.slice(0, ofStand.indexOf(meet) + 1).reverse()
    up.slice(1).forEach((role, index) =>
      steps.push({ from: `role:${up[index]}`, relation: 'broader', to: `role:${role}` }),
    )
    down
      .slice(1)
      .forEach((role, index) => steps.push({ from: `role:${down[index]}`, relation: 'narrower', to: `role:${role}` }))
    steps.push({
      from: `role:${claim.role}`,
      relation: 'played-by',
      to: stand.id,
      claim: `${stand.id}>plays>role:${claim.role}`,
    })
  }
  if (stated)
    steps.push({
      from: stand.id,
      relation: 'stands-in-for',
      to: stated.for,
      claim: `${stand.id}>stands-in-for>${stated.for}`,
    })
  return steps
}
