import { isSeen } from '#engine/model/access.ts'
import { declaredNames } from '#engine/checks/allergen-sums.ts'
import { nameOf } from '#engine/checks/say.ts'
import type { Dose } from '#engine/dose/dose.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import { usedClaim } from '#engine/graph/subject.ts'
import type { Say } from '#engine/words/say.ts'
import type { Change, Evidence } from '#engine/model/swap.ts'
import { readableName } from '#engine/units/readable-name.ts'
import type { Candidate } from './candidates.ts'
import type { Job } from './job.ts'

const CRITERION_WORDS: Record<string, string> = {
  fatty_acids: 'fatty acids',
  iodine_value: 'keeping',
  melting_c: 'melting point',
  required_hlb: 'required HLB',
  hlb: 'HLB',
  acid_pka: 'acid strength',
  chain_length: 'chain length',
  ph_effective: 'working pH',
  chemistry: 'chemical family',
  completeness: 'working without a partner',
  cleansing: 'washing strength',
  benefit: 'effect',
  hazard: 'hazards',
  salt: 'ions',
  mechanism: 'way of thickening',
  texture: 'hardness',
  spreading: 'spreading on skin',
  form: 'form as supplied',
  electrolyte: 'bearing salts',
  spectrum: 'organisms covered',
  molar_mass: 'size of the molecule',
}

export const criterionWords = (criterion: string, say: Say): string =>
  say.text(CRITERION_WORDS[criterion] ?? criterion.replaceAll('_', ' ').replaceAll('-', ' '))

const criteriaListed = (criteria: readonly string[], say: Say): string =>
  say.list(
    criteria.map((one) => criterionWords(one, say)),
    'and',
  )

const NEAR = 0.7
const FAR = 0.4

/** "Works like X because …; differs in …" in words a student follows. */
export function whyText(job: Job, candidate: Candidate, context: FormulaContext): string {
  const { stand, likeness, stated, distance, claim } = candidate
  const { say, knowledge } = context.world
  const label = knowledge.roles.get(claim?.role ?? '')?.label ?? say`stand-in`
  const scored = (fits: (score: number) => boolean): string[] =>
    Object.entries(likeness.scores).flatMap(([name, score]) => (fits(score) ? [name] : []))
  const near = scored((score) => score >= NEAR)
  const far = scored((score) => score < FAR)
  const parts = [
    distance < 1
      ? say`${nameOf(stand)} does the same job here: ${say.inside(job.role.label)}`
      : say`${nameOf(stand)} is ${say.article(say.inside(label))} and can do the job of ${say.article(say.inside(job.role.label))}`,
    near.length > 0 ? say`near in ${criteriaListed(near, say)}` : '',
    far.length > 0 ? say`differs in ${criteriaListed(far, say)}` : '',
    stated?.says ?? '',
    candidate.denied ? say`but ${candidate.denied.says}` : '',
    likeness.unknown.length > 0 ? say`not known: ${criteriaListed(likeness.unknown, say)}` : '',
  ]
  return `${parts.filter((part) => part !== '').join('; ')}.`
}

/** The dose in words, with what was not known when it was worked out. */
export function doseChange(job: Job, candidate: Candidate, dose: Dose, say: Say): Change {
  const after_percent = dose.share_percent
  const note =
    dose.unknown.length > 0 ? say` (${criteriaListed(dose.unknown, say)} not known: test with a small batch)` : ''
  return {
    kind: 'dose',
    text: say`${say.short(after_percent)} % ${nameOf(candidate.stand)} for ${say.short(job.share_percent)} % ${nameOf(job.missing)}: ${dose.how}${note}`,
    ingredient: candidate.stand.id,
    from: job.share_percent,
    to: after_percent,
    unit: '%',
  }
}

/** Where an ingredient comes from, as people with allergies ask; no list of the law. */
const ORIGIN_WORDS: Record<string, string> = {
  'tree-nut': 'tree nut',
  peanut: 'peanut',
  soya: 'soya',
  sesame: 'sesame',
  'wheat-gluten': 'wheat',
  milk: 'milk',
  'lanolin-derived': 'wool wax',
  'bee-derived': 'bee product',
  'animal-derived': 'animal source',
}

/** The recipe as it was and, where there is one, as it becomes. */
interface Sides {
  before: FormulaContext
  after?: FormulaContext
}

/** Fragrance allergens that the law has on the label after the swap and not before, and the other way round. */
function allergensMoved({ before, after }: Sides): string[] {
  if (!after) return []
  const { say } = after.world
  const [was, is] = [declaredNames(before), declaredNames(after)]
  const fresh = is.filter((name) => !was.includes(name)).map(readableName)
  const gone = was.filter((name) => !is.includes(name)).map(readableName)
  return [
    ...(fresh.length > 0 ? [say`Allergens to declare now: ${say.list(fresh, 'and')}`] : []),
    ...(gone.length > 0 ? [say`No longer to declare: ${say.list(gone, 'and')}`] : []),
  ]
}

/** What a person will notice or has to write on the label. */
export function feelAndLabelChanges(job: Job, { stand }: Candidate, sides: Sides): Change[] {
  const { say, knowledge } = sides.before.world
  const { classes } = knowledge
  const classWords = (ids: readonly string[]): string =>
    say.list(
      ids.map((id) => say.text(id.replaceAll('-', ' '))),
      'and',
    )
  const fresh = [...stand.classes].filter((id) => !job.missing.classes.has(id))
  const gone = [...job.missing.classes].filter((id) => !stand.classes.has(id))
  const inGroups = (ids: readonly string[], groups: readonly string[]) =>
    ids.filter((id) => groups.includes(classes.get(id)?.group ?? ''))
  const origins = fresh.flatMap((id) => ORIGIN_WORDS[id] ?? [])
  const label = [
    say`The ingredient list changes: ${nameOf(stand)} in place of ${nameOf(job.missing)}`,
    ...allergensMoved(sides),
    ...(origins.length > 0 ? [say`Comes from ${say.list(origins.map(say.text), 'and')}: ask about allergies`] : []),
  ]
  const changes: Change[] = [{ kind: 'label', text: label.join('. ') }]
  const feel = inGroups(fresh, ['spreading', 'texture', 'cleansing', 'powder-feel', 'odour', 'shade'])
  const feelGone = inGroups(gone, ['spreading', 'texture', 'cleansing', 'powder-feel', 'odour', 'shade'])
  if (feel.length > 0) {
    changes.push({
      kind: 'feel',
      text:
        feelGone.length > 0
          ? say`Feels different: ${classWords(feel)} instead of ${classWords(feelGone)}`
          : say`Feels different: ${classWords(feel)}`,
    })
  }
  return changes
}

/** Steps of work that the stand-in asks for. */
export function orderChanges(candidate: Candidate, after: FormulaContext, before: FormulaContext, job: Job): Change[] {
  const { stand } = candidate
  const { say } = before.world
  const changes: Change[] = stand.needs
    .filter(({ need }) => need === 'process')
    .map(({ says }) => ({ kind: 'order', text: says, ingredient: stand.id }))
  const work = before.world.knowledge.roles.get(candidate.claim?.role ?? job.role.id)?.work
  if (work) changes.push({ kind: 'order', text: work, ingredient: stand.id })
  const phaseOf = (context: FormulaContext, id: string) => context.lines.find(({ subject }) => subject.id === id)?.phase
  const [from, to] = [phaseOf(before, job.missing.id), phaseOf(after, stand.id)]
  if (to === 'cool-down' && from !== 'cool-down') {
    const max_c = usedClaim(stand, 'heat_max_c')?.max ?? usedClaim(stand, 'heat_max_c')?.value
    changes.push({
      kind: 'order',
      text:
        max_c === undefined
          ? say`Goes into the cool-down phase`
          : say`Goes into the cool-down phase, below ${max_c} °C`,
      ingredient: stand.id,
    })
  } else if (to !== from && to !== undefined && from !== undefined) {
    changes.push({
      kind: 'order',
      text: say`Goes into the ${say.text(to)} phase instead of the ${say.text(from)} phase`,
      ingredient: stand.id,
    })
  }
  return changes
}

/** The weakest link decides how well a proposal is backed. */
export function evidenceOf({ stated, claim }: Candidate): Evidence {
  const from = stated ?? claim
  if (!from) return 'memory'
  if (from.kind === 'measured' && from.access !== 'memory') return 'measured'
  if (isSeen(from)) return 'published'
  return from.access === 'common-practice' ? 'practice' : 'memory'
}
