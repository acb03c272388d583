import { preservingDose, preservingWork, waterWithoutPreservative } from '#engine/checks/preservation.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import { ENOUGH_DOSE, humectantsBindWater } from '#engine/preservation/too-little.ts'
import { linesPlayingHere } from '#engine/formula/build-context.ts'
import { nameOf } from '#engine/checks/say.ts'
import type { Job } from './job.ts'

/** Why nothing can take the place of a line, and what would have to be reformulated; null when the search may go on. */
export type HangsOn = (context: FormulaContext, job: Job) => string | null

/** A role whose every change is a new product. */
const irreplaceableRole: HangsOn = (_context, job) => job.swap.irreplaceable ?? null

/** No preservative proper, only boosters, and this one carries them: what holds on paper has to be proven anew. */
const preservationHangsOnIt: HangsOn = (context, { missing }) => {
  if (!missing.allRoles.has('preservative-booster') || missing.allRoles.has('preservative')) return null
  if (linesPlayingHere(context, 'preservative').length > 0) return null
  const work = preservingWork(context)
  const rest = work.filter(({ subject }) => subject.id !== missing.id)
  if (waterWithoutPreservative(context).length > 0 || preservingDose(rest) >= preservingDose(work)) return null
  const { say } = context.world
  const others = rest.map(({ subject }) => nameOf(subject)).join(', ') || say`nothing else`
  return say`${nameOf(missing)} carries the preservation of this formula together with ${others}: another humectant leaves it unpreserved. Choose a preservative system at its own dose and pH, and have a challenge test made.`
}

/** No preservative, but a humectant that leaves germs no free water: how far another binds it nobody has measured here. */
const waterIsBoundByIt: HangsOn = (context, { missing }) => {
  const bound = humectantsBindWater(context) && !humectantsBindWater(context, missing.id)
  const wet = context.water_percent >= LEAST_WATER_PERCENT
  if (!bound || !wet || preservingDose(preservingWork(context)) >= ENOUGH_DOSE) return null
  return context.world
    .say`${nameOf(missing)} is base and preservation in one: it binds the water. How much water another one leaves free at this share is not known, and no preservative stands beside it. Choose a preservative system first, at its own dose and pH, and have a challenge test made.`
}

/** With less water than this nothing is kept by binding it. */
const LEAST_WATER_PERCENT = 5

const GIVES_STRUCTURE = ['thickener', 'structurant', 'body-giver', 'oil-gel-emulsifier']
const HOLDS_TOGETHER = ['emulsifier']

/** Emulsifier and structure in one, with nothing beside it that does either. */
const emulsifierAndStructureInOne: HangsOn = (context, { missing }) => {
  const alone = (roles: readonly string[]) =>
    roles.every((role) => linesPlayingHere(context, role).every(({ subject }) => subject.id === missing.id))
  if (!missing.allRoles.has('emulsifier')) return null
  const oilGel =
    linesPlayingHere(context, 'oil-gel-emulsifier').some(({ subject }) => subject.id === missing.id) &&
    context.oil_percent > 60
  const inWash =
    context.form === 'wash' && missing.classes.has('complete-emulsifier') && context.surfactant_percent >= 3
  if (!(oilGel || inWash) || !alone(GIVES_STRUCTURE) || !alone(HOLDS_TOGETHER)) return null
  return context.world
    .say`${nameOf(missing)} is the only emulsifier and the only thing that gives this formula its structure. Another emulsifier gives another product: the phases have to be designed anew.`
}

/** Wax acids and alkali make the emulsifier, and the wax is the structure as well. */
const waxSoap: HangsOn = (context, job) => {
  if (job.role.id !== 'soap-emulsifier' || !job.missing.allRoles.has('wax')) return null
  const otherEmulsifiers = linesPlayingHere(context, 'emulsifier').filter(
    ({ subject }) => subject.id !== job.missing.id,
  )
  if (otherEmulsifiers.length > 0) return null
  return context.world
    .say`The acids of ${nameOf(job.missing)} and the alkali make the emulsifier, and the wax is the structure as well; no other wax does both. The emulsifying system has to be reformulated.`
}

const ALL: readonly HangsOn[] = [
  irreplaceableRole,
  preservationHangsOnIt,
  waterIsBoundByIt,
  emulsifierAndStructureInOne,
  waxSoap,
]

export const hangsOn: HangsOn = (context, job) => {
  for (const reason of ALL) {
    const why = reason(context, job)
    if (why !== null) return why
  }
  return null
}
