import { nameOf } from '#engine/checks/say.ts'
import { holdsHere } from '#engine/formula/when.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import { mainRole } from '#engine/graph/subject.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { Refusal } from '#engine/model/swap.ts'
import type { Job } from './job.ts'

const MOST = 4

/** Shares a telling word of its name with the missing one but plays none of the roles sought. */
const sharesOnlyTheName = (job: Job, subject: Subject): boolean =>
  subject.id !== job.missing.id && subject.madeOf.length === 0 && !subject.allRoles.has(job.swap.scope)

const usual = (subject: Subject): number => subject.facts.get('usual')?.[0]?.value ?? 1

function deniers(job: Job, context: FormulaContext): Refusal[] {
  const holding = context.world
    .deniersOf(job.missing.id)
    .filter(({ subject, claim }) => holdsHere(claim.when, subject, context, job.share_percent))
  return holding.map(({ subject, claim: denial }) => {
    const { say } = context.world
    const message = denial.says
      ? say`${nameOf(subject)}: ${denial.says}`
      : say`${nameOf(subject)}: does not stand in for it`
    const claim = `${subject.id}>does-not-stand-in-for>${job.missing.id}`
    return {
      lines: [{ ingredient: subject.id, share_percent: job.share_percent }],
      conflict: [
        {
          rule: 'does-not-stand-in-for',
          severity: 'warn' as const,
          about: [subject.id],
          message,
          because: [{ fact: denial.says, claim }],
          sources: [denial.source],
        },
      ],
      message,
    }
  })
}

function namesakes(job: Job, context: FormulaContext): Refusal[] {
  const {
    say,
    knowledge: { roles },
  } = context.world
  return context.world
    .namesakesOf(job.missing)
    .filter((subject) => sharesOnlyTheName(job, subject))
    .sort((a, b) => usual(b) - usual(a) || (a.id < b.id ? -1 : 1))
    .slice(0, MOST)
    .map((subject) => {
      const label = say.inside(roles.get(mainRole(subject))?.label ?? say`something else`)
      const message = say`${nameOf(subject)} shares the name only: it is used as ${label}, not as ${say.inside(job.role.label)}`
      const because = [{ fact: say`plays ${label}`, claim: `${subject.id}>plays>role:${mainRole(subject)}` }]
      return {
        lines: [{ ingredient: subject.id, share_percent: job.share_percent }],
        conflict: [
          { rule: 'role-not-played', severity: 'warn' as const, about: [subject.id], message, because, sources: [] },
        ],
        message,
      }
    })
}

/** What looks right and is not, beside what failed in the trial: known denials and mere namesakes. */
export function lookAlikes(job: Job, context: FormulaContext, shown: ReadonlySet<string>): Refusal[] {
  const fresh = (refusal: Refusal) => refusal.lines.every(({ ingredient }) => !shown.has(ingredient))
  const denied = deniers(job, context).filter(fresh).slice(0, MOST)
  const taken = new Set([...shown, ...denied.flatMap(({ lines }) => lines.map(({ ingredient }) => ingredient))])
  return [
    ...denied,
    ...namesakes(job, context).filter(({ lines }) => lines.every(({ ingredient }) => !taken.has(ingredient))),
  ]
}
