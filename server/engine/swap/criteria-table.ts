import type { Subject } from '#engine/graph/subject.ts'
import { rangeOfProperty, usedClaim, wordOf } from '#engine/graph/subject.ts'
import type { World } from '#engine/graph/world.ts'
import type { Criterion } from '#engine/model/records.ts'
import type { CriterionRow } from '#engine/model/swap.ts'
import { roundTo } from '#engine/units/round.ts'
import { criterionWords } from './explain.ts'
import type { Job } from './job.ts'
import { nameOfCriterion, nearness, weightOf } from './similarity.ts'
import type { Moved } from './similarity.ts'

const notKnown = ({ say }: World): string => say`not known`
const MOST_ACIDS = 3

function numberText(subject: Subject, property: string, world: World): string {
  const { say } = world
  const range = rangeOfProperty(subject, property)
  if (!range) return notKnown(world)
  const { min, max } = range
  if (min === undefined || max === undefined)
    return min === undefined ? say`to ${say.short(max ?? 0)}` : say`from ${say.short(min)}`
  return min === max ? say.short(min) : say`${say.short(min)} to ${say.short(max)}`
}

function profileText(subject: Subject, world: World): string {
  const { say } = world
  const shares = Object.entries(usedClaim(subject, 'fatty_acids')?.shares ?? {})
  const main = shares.sort(([a, x], [b, y]) => y - x || (a < b ? -1 : 1)).slice(0, MOST_ACIDS)
  return main.length === 0
    ? notKnown(world)
    : main.map(([acid, share]) => say`${say.text(acid)} ${say.short(share)} %`).join(', ')
}

function spectrumText(subject: Subject, world: World): string {
  const { say } = world
  const spectrum = Object.entries(usedClaim(subject, 'spectrum')?.spectrum ?? {})
  return spectrum.length === 0
    ? notKnown(world)
    : spectrum.map(([group, strength]) => `${say.text(group)} ${say.text(strength)}`).join(', ')
}

function classText(subject: Subject, group: string, { knowledge, say }: World): string {
  const own = [...subject.classes].filter((id) => knowledge.classes.get(id)?.group === group).sort()
  return own.length === 0 ? say`none` : own.map((id) => say.text(id.replaceAll('-', ' '))).join(', ')
}

/** What a record says about one criterion, as a person reads it. */
function valueText({ by, property = '', group = '' }: Criterion, subject: Subject, world: World): string {
  if (by === 'number') return numberText(subject, property, world)
  if (by === 'word') return world.say.text(wordOf(subject, property) ?? 'not known')
  if (by === 'profile') return profileText(subject, world)
  return by === 'spectrum' ? spectrumText(subject, world) : classText(subject, group, world)
}

/** How near a stand-in comes in what: the comparison behind its rank, criterion by criterion, the weightiest first. */
export function criteriaTable(job: Job, stand: Subject, world: World, moved: Moved = {}): CriterionRow[] {
  const asked = job.swap.criteria
    .map((criterion) => ({ criterion, near: nearness(criterion, job.missing, stand, world) }))
    .filter(({ near }) => near !== 'not-asked')
  const total = asked.reduce((sum, { criterion }) => sum + weightOf(criterion, moved), 0)
  return asked
    .map(({ criterion, near }) => ({
      criterion: nameOfCriterion(criterion),
      label: criterionWords(nameOfCriterion(criterion), world.say),
      weight: total === 0 ? 0 : roundTo(weightOf(criterion, moved) / total, 3),
      why: criterion.why,
      nearness: typeof near === 'number' ? roundTo(near, 3) : null,
      missing: valueText(criterion, job.missing, world),
      standIn: valueText(criterion, stand, world),
    }))
    .sort((a, b) => b.weight - a.weight || (a.criterion < b.criterion ? -1 : 1))
}
