import { nameOf } from '#engine/checks/say.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import { mainRole } from '#engine/graph/subject.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { Refusal } from '#engine/model/swap.ts'
import type { Job } from './job.ts'

/** What a person may reach for because of its name: shared first words of this length or more. */
const SHARED_LETTERS = 6
const MOST = 4

const nameWords = (subject: Subject): string[] => subject.id.split('-').filter((word) => word.length >= SHARED_LETTERS)

/** Shares a telling word of its name with the missing one but plays none of the roles sought. */
function sharesOnlyTheName(job: Job, subject: Subject): boolean {
  const words = new Set(nameWords(job.missing))
  return (
    subject.madeOf.length === 0 &&
    !subject.allRoles.has(job.swap.scope) &&
    nameWords(subject).some((word) => words.has(word))
  )
}

const usual = (subject: Subject): number => subject.facts.get('usual')?.[0]?.value ?? 1

function deniers(job: Job, context: FormulaContext): Refusal[] {
  return context.world.subjects.flatMap((subject) => {
    const denial = subject.notFor.find((claim) => claim.for === job.missing.id)
    if (!denial) return []
    const message = `${nameOf(subject)}: ${denial.says || 'does not stand in for it'}`
    const claim = `${subject.id}>does-not-stand-in-for>${job.missing.id}`
    return [
      {
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
      },
    ]
  })
}

function namesakes(job: Job, context: FormulaContext): Refusal[] {
  const { roles } = context.world.knowledge
  return context.world.subjects
    .filter((subject) => subject.id !== job.missing.id && sharesOnlyTheName(job, subject))
    .sort((a, b) => usual(b) - usual(a) || (a.id < b.id ? -1 : 1))
    .slice(0, MOST)
    .map((subject) => {
      const label = roles.get(mainRole(subject))?.label.toLowerCase() ?? 'something else'
      const message = `${nameOf(subject)} shares the name only: it is used as ${label}, not as ${job.role.label.toLowerCase()}`
      const because = [{ fact: `plays ${label}`, claim: `${subject.id}>plays>role:${mainRole(subject)}` }]
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
