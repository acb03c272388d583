import { commonPh } from '#engine/checks/report.ts'
import { because, nameOf } from '#engine/checks/say.ts'
import { usedClaim } from '#engine/graph/subject.ts'
import { hazardsOf } from './cautions.ts'
import { draft, held, named, sentence } from './draft.ts'
import type { Placed, Reason } from './item.ts'
import type { Maker, Plan } from './plan.ts'
import { makesSoapInside } from './process.ts'
import { isSolid } from './roles-here.ts'

/** Solids for the pH go in dissolved: in water kept back for them, else in a stock made beforehand. */
function asSolution(plan: Plan, step: string, items: readonly Placed[]): string {
  const { say } = plan
  const solids = items.filter(({ line }) => isSolid(line))
  if (solids.length === 0) return ''
  return plan.keptBack?.units.has(step)
    ? say`Dissolve ${named(solids, say)} in the water kept back for it, the solid into the water, and let it cool.`
    : say`Use ${named(solids, say)} as a 10 % solution in water made beforehand, the solid into the water.`
}

/** A polymer thickens as it becomes a salt. */
export const neutralise: Maker = (plan, before) => {
  const { say } = plan
  const items = plan.at('neutraliser')
  if (items.length === 0) return null
  const polymers = plan.context.lines.filter(({ subject }) => subject.classes.has('acrylic-polymer'))
  return draft({
    id: 'neutralise',
    title: say`Neutralise`,
    text: sentence(
      asSolution(plan, 'neutralise', items),
      say`Stir ${named(items, say)} in drop by drop, slowly and all around, until the batch is thick and clear; hold the last tenth for the pH.`,
    ),
    why: say`${polymers.map(({ subject }) => nameOf(subject)).join(', ')} uncoils and thickens as it becomes a salt`,
    adds: items,
    alsoAdds: plan.keptBack?.units.has('neutralise') ? [plan.keptBack.key] : [],
    uses: held(before),
    because: polymers.flatMap(({ subject }) => {
      const claim = usedClaim(subject, 'ph_effective')
      return claim ? [because(say`${nameOf(subject)} thickens at pH ${say.range(claim)}`, claim)] : []
    }),
    cautions: hazardsOf(plan.context, items),
  })
}

function phReasons(plan: Plan): Reason[] {
  const { say } = plan
  const common = commonPh(plan.context)
  const windows = plan.context.lines.flatMap(({ subject }) => {
    const claim = usedClaim(subject, 'ph_effective')
    const keeps = claim && subject.allRoles.has('preservative')
    return keeps ? [because(say`${nameOf(subject)} works at pH ${say.range(claim)}`, claim)] : []
  })
  const all =
    common && (common.min !== undefined || common.max !== undefined)
      ? [because(say`the windows of all lines that state one meet at pH ${say.range(common)}`)]
      : []
  return [...windows, ...all]
}

const MUCH_ALCOHOL_PERCENT = 50

/** In much alcohol a reading means little; it is taken only where the recipe names a pH or brings an acid or base. */
const isMostlyAlcohol = ({ context, at }: Plan): boolean =>
  context.ph === null &&
  at('ph', 'neutraliser').length === 0 &&
  at('alcohol').reduce((sum, { line }) => sum + line.share_percent, 0) >= MUCH_ALCOHOL_PERCENT

/** Whether this batch has a pH that is measured and set. */
export function hasPhStep(plan: Plan): boolean {
  if (plan.process !== 'emulsion' && plan.process !== 'one-phase') return false
  const soapInside = makesSoapInside(plan.context) && plan.context.form === 'water-in-oil'
  return !soapInside && !isMostlyAlcohol(plan)
}

const measuredText = ({ say, context }: Plan): string => {
  if (context.form === 'water-in-oil')
    return say`Measure the water phase as it is: with oil outside the finished cream has no pH that a meter can read.`
  return context.form === 'solution'
    ? say`Measure it as it is.`
    : say`Stir one part of the batch into nine parts of distilled water and measure that.`
}

function movedText(plan: Plan, items: readonly Placed[]): string {
  const { say } = plan
  if (makesSoapInside(plan.context))
    return say`The soap that formed inside sets the pH; acid would undo it and part the cream. Write the reading down.`
  if (plan.context.ph === null)
    return sentence(
      say`The recipe names no pH: write the reading down and look at the windows given here.`,
      items.length > 0 ? say`Stir ${named(items, say)} in by quarters and measure after each.` : '',
    )
  const moves =
    items.length > 0
      ? say`Stir in three quarters of ${named(items, say)}, wait, measure, and go on in small steps; weigh what is left over and write down how much went in.`
      : say`If it is off, move it with drops of a dilute acid or base, measure after each, and write down how much went in.`
  return sentence(say`Bring it to pH ${say.short(plan.context.ph)}.`, asSolution(plan, 'ph', items), moves)
}

/** pH measured, and moved in steps. For oil outside it is the water phase that is measured, before it goes in. */
export const adjustPh: Maker = (plan, before) => {
  const { say } = plan
  const items = plan.at('ph')
  if (!hasPhStep(plan) && items.length === 0) return null
  const isOilOutside = plan.context.form === 'water-in-oil'
  return draft({
    id: 'ph',
    title: isOilOutside ? say`Measure the pH of the water phase and adjust it` : say`Measure the pH and adjust it`,
    text: sentence(
      measuredText(plan),
      say`A meter set with two buffers comes before strips, which are off by half a unit and more in cloudy or coloured products.`,
      movedText(plan, items),
      plan.at('alcohol').length > 0 ? say`Alcohol shifts the reading; take it as a guide.` : '',
    ),
    why: say`Preservatives, polymers and skin each want their pH, and a step too far cannot be taken back`,
    adds: items,
    alsoAdds: items.length > 0 && plan.keptBack?.units.has('ph') ? [plan.keptBack.key] : [],
    uses: held(before),
    because: phReasons(plan),
    cautions: hazardsOf(plan.context, items),
  })
}
