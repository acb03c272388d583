import { because, nameOf } from '#engine/checks/say.ts'
import { hotOil, hazardsOf } from './cautions.ts'
import { draft, held, named, sentence, standing, tempOf, usualTime } from './draft.ts'
import type { Place } from './item.ts'
import type { Maker, Plan } from './plan.ts'
import { makesSoapInside } from './process.ts'
import { hasClass, isFirst, playsHere } from './roles-here.ts'
import { told, waysOf } from './ways.ts'
import { wetting } from './steps-gum.ts'

/** Pigments and other fine powders, ground into a liquid. */
export const wetPigment: Maker = (plan) => {
  const { say } = plan
  const powders = plan.at('pigment')
  if (powders.length === 0 || plan.process === 'powder') return null
  return draft({
    id: 'wet-pigment',
    title: say`Grind the powder into oil`,
    text: say`Rub ${named(powders, say)} into ${named(plan.at('pigment-medium'), say)} to a paste without specks; a drop between two glass plates shows them.`,
    why: say`Dry clumps stay specks in the finished product`,
    adds: [...powders, ...plan.at('pigment-medium')],
    time: usualTime([5, 15, 'minutes'], say`until a smear shows no specks`, say),
    cautions: hazardsOf(plan.context, powders),
    aside: true,
  })
}

const emulsifiersAt = (plan: Plan, ...places: Place[]) =>
  plan.at(...places).filter(({ line }) => playsHere(plan.context, line, 'emulsifier', 'cationic-conditioner'))

const emulsifiersIn = (plan: Plan) => emulsifiersAt(plan, 'oil', 'polymer', 'water', 'gum')

/** The oil phase with its emulsifier. */
export const oilPhase: Maker = (plan, before) => {
  const { say } = plan
  const oils = plan.at('oil')
  if (oils.length === 0) return null
  const { heat } = plan
  const emulsifiers = emulsifiersAt(plan, 'oil')
  const paste = standing(before, 'wet-pigment')
  return draft({
    id: 'oil-phase',
    title: heat ? say`Melt the oil phase` : say`Mix the oil phase`,
    text: sentence(
      heat
        ? say`Melt ${named(oils, say)} together until all is molten, with no grain left.`
        : say`Stir ${named(oils, say)} together until even; no heat is needed.`,
      paste.length > 0 ? say`Stir the powder paste in.` : '',
    ),
    why:
      emulsifiers.length > 0
        ? say`${named(emulsifiers, say)} has to be dissolved in the oil to work at its surface`
        : say`All oils meet the water as one`,
    adds: oils,
    uses: paste,
    after: ['weigh'],
    temp: heat ? tempOf(heat) : undefined,
    because: told(waysOf(oils)),
    sources: waysOf(oils),
    cautions: [...(heat ? [hotOil(say)] : []), ...hazardsOf(plan.context, oils)],
    aside: true,
  })
}

/** Without a polyol the gum goes through the oil: it does not swell there. */
export const gumIntoOil: Maker = (plan) => {
  const { say } = plan
  if (wetting(plan) !== 'oil') return null
  const gums = plan.at('gum')
  return draft({
    id: 'gum-into-oil',
    title: say`Stir the gum into the oil phase`,
    text: say`Right before the phases meet, stir ${named(gums, say)} into the oil phase so that every grain is coated.`,
    why: say`Oil keeps the grains apart until they meet the water under shear`,
    adds: gums,
    uses: ['oil-phase'],
    because: told(waysOf(gums)),
    sources: waysOf(gums),
    cautions: hazardsOf(plan.context, gums),
    aside: true,
  })
}

type Way = { text: string; why: string }

function wayOfCombining(plan: Plan): Way {
  const { say } = plan
  const names = named(emulsifiersIn(plan), say) || say`The emulsifier`
  if (makesSoapInside(plan.context))
    return {
      text: say`Pour the water phase into the molten oil phase in a stream while stirring.`,
      why: say`The emulsifier forms where alkali and fatty acid meet: both have to be hot and moving`,
    }
  if (plan.context.form === 'water-in-oil')
    return {
      text: say`Stir the oil phase and let the water phase run in, in drops at first and then in a thin stream, each portion taken up before the next.`,
      why: say`${names} keeps oil outside; water that comes too fast turns the emulsion`,
    }
  return {
    text: say`Pour the oil phase into the water phase in a thin stream while stirring.`,
    why: say`${names} keeps water outside; oil that comes in thinly is cut into small droplets`,
  }
}

/** The phases meet. */
export const combine: Maker = (plan, before) => {
  const { say } = plan
  const oil = standing(before, 'gum-into-oil').length > 0 ? ['gum-into-oil'] : standing(before, 'oil-phase')
  const water = held(before)
  if (oil.length === 0 || water.length === 0) return null
  const way = wayOfCombining(plan)
  const kinds = emulsifiersIn(plan).map(({ line }) => {
    const role = plan.context.rolesOf(line.subject)[0]?.role
    const label = plan.context.world.knowledge.roles.get(role ?? '')?.label ?? say`emulsifier`
    return because(say`${nameOf(line.subject)} here: ${say.inside(label)}`)
  })
  return draft({
    id: 'combine',
    title: say`Bring the phases together`,
    text: way.text,
    why: way.why,
    uses: [...water, ...oil],
    temp: plan.heat ? tempOf(plan.heat) : undefined,
    because: kinds,
    cautions: plan.heat ? [hotOil(say)] : [],
  })
}

type Shear = Way & { min: number; max: number; isBlended: boolean }

function shearOf({ context, say }: Plan): Shear {
  const isOf = (...roles: string[]) => context.lines.some((line) => playsHere(context, line, ...roles))
  if (context.form === 'water-in-oil')
    return {
      text: say`Go on stirring hard until it is thick and even.`,
      why: say`Small droplets do not sink and do not flow together`,
      ...{ min: 3, max: 10, isBlended: false },
    }
  if (isOf('cationic-conditioner'))
    return {
      text: say`Stir steadily, without whipping air in, until even.`,
      why: say`Quat and fatty alcohol build their own network as they cool; air makes it foamy`,
      ...{ min: 5, max: 10, isBlended: false },
    }
  const text = say`Emulsify with the stick blender, head under the surface, in bursts with a spatula between, until even.`
  if (context.lines.some((line) => hasClass(line, 'acrylic-polymer') && isFirst(context, line, 'acrylic-thickener')))
    return {
      text,
      why: say`Small droplets; the polymer holds them, and long hard shear would cut it`,
      ...{ min: 1, max: 2, isBlended: true },
    }
  return { text, why: say`The smaller the droplets, the longer it holds`, min: 2, max: 5, isBlended: true }
}

export const emulsify: Maker = (plan, before) => {
  const { say } = plan
  if (!before.some(({ id }) => id === 'combine')) return null
  const { text, why, min, max, isBlended } = shearOf(plan)
  return draft({
    id: 'emulsify',
    title: say`Emulsify`,
    text,
    why,
    uses: held(before),
    time: usualTime([min, max, 'minutes'], say`by eye: no oil eyes, no grain on a glass`, say),
    cautions: isBlended ? [say`Blender off and unplugged before you touch the head.`] : [],
  })
}
