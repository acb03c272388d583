import { because, nameOf } from '#engine/checks/say.ts'
import { HOT_OIL, hazardsOf } from './cautions.ts'
import { draft, held, named, sentence, standing, tempOf, usualTime } from './draft.ts'
import type { Place } from './item.ts'
import type { Maker, Plan } from './plan.ts'
import { makesSoapInside } from './process.ts'
import { hasClass, isFirst, playsHere } from './roles-here.ts'
import { told, waysOf } from './ways.ts'
import { wetting } from './steps-gum.ts'

/** Pigments and other fine powders, ground into a liquid. */
export const wetPigment: Maker = (plan) => {
  const powders = plan.at('pigment')
  if (powders.length === 0 || plan.process === 'powder') return null
  return draft({
    id: 'wet-pigment',
    title: 'Grind the powder into oil',
    text: `Rub ${named(powders)} into ${named(plan.at('pigment-medium'))} to a paste without specks; a drop between two glass plates shows them.`,
    why: 'Dry clumps stay specks in the finished product',
    adds: [...powders, ...plan.at('pigment-medium')],
    time: usualTime(5, 15, 'minutes', 'until a smear shows no specks'),
    cautions: hazardsOf(plan.context, powders),
    aside: true,
  })
}

const emulsifiersAt = (plan: Plan, ...places: Place[]) =>
  plan.at(...places).filter(({ line }) => playsHere(plan.context, line, 'emulsifier', 'cationic-conditioner'))

const emulsifiersIn = (plan: Plan) => emulsifiersAt(plan, 'oil', 'polymer', 'water', 'gum')

/** The oil phase with its emulsifier. */
export const oilPhase: Maker = (plan, before) => {
  const oils = plan.at('oil')
  if (oils.length === 0) return null
  const { heat } = plan
  const emulsifiers = emulsifiersAt(plan, 'oil')
  const paste = standing(before, 'wet-pigment')
  return draft({
    id: 'oil-phase',
    title: heat ? 'Melt the oil phase' : 'Mix the oil phase',
    text: sentence(
      `${heat ? 'Melt' : 'Stir'} ${named(oils)} together ${heat ? 'until all is molten, with no grain left' : 'until even; no heat is needed'}.`,
      paste.length > 0 ? 'Stir the powder paste in.' : '',
    ),
    why:
      emulsifiers.length > 0
        ? `${named(emulsifiers)} has to be dissolved in the oil to work at its surface`
        : 'All oils meet the water as one',
    adds: oils,
    uses: paste,
    after: ['weigh'],
    temp: heat ? tempOf(heat) : undefined,
    because: told(waysOf(oils)),
    sources: waysOf(oils),
    cautions: [...(heat ? [HOT_OIL] : []), ...hazardsOf(plan.context, oils)],
    aside: true,
  })
}

/** Without a polyol the gum goes through the oil: it does not swell there. */
export const gumIntoOil: Maker = (plan) => {
  if (wetting(plan) !== 'oil') return null
  const gums = plan.at('gum')
  return draft({
    id: 'gum-into-oil',
    title: 'Stir the gum into the oil phase',
    text: `Right before the phases meet, stir ${named(gums)} into the oil phase so that every grain is coated.`,
    why: 'Oil keeps the grains apart until they meet the water under shear',
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
  const names = named(emulsifiersIn(plan))
  if (makesSoapInside(plan.context))
    return {
      text: 'Pour the water phase into the molten oil phase in a stream while stirring.',
      why: 'The emulsifier forms where alkali and fatty acid meet: both have to be hot and moving',
    }
  if (plan.context.form === 'water-in-oil')
    return {
      text: 'Stir the oil phase and let the water phase run in, in drops at first and then in a thin stream, each portion taken up before the next.',
      why: `${names || 'The emulsifier'} keeps oil outside; water that comes too fast turns the emulsion`,
    }
  return {
    text: 'Pour the oil phase into the water phase in a thin stream while stirring.',
    why: `${names || 'The emulsifier'} keeps water outside; oil that comes in thinly is cut into small droplets`,
  }
}

/** The phases meet. */
export const combine: Maker = (plan, before) => {
  const oil = standing(before, 'gum-into-oil').length > 0 ? ['gum-into-oil'] : standing(before, 'oil-phase')
  const water = held(before)
  if (oil.length === 0 || water.length === 0) return null
  const way = wayOfCombining(plan)
  const kinds = emulsifiersIn(plan).map(({ line }) => {
    const role = plan.context.rolesOf(line.subject)[0]?.role
    const label = plan.context.world.knowledge.roles.get(role ?? '')?.label ?? 'emulsifier'
    return because(`${nameOf(line.subject)} here: ${label.toLowerCase()}`)
  })
  return draft({
    id: 'combine',
    title: 'Bring the phases together',
    text: way.text,
    why: way.why,
    uses: [...water, ...oil],
    temp: plan.heat ? tempOf(plan.heat) : undefined,
    because: kinds,
    cautions: plan.heat ? [HOT_OIL] : [],
  })
}

const PLAIN = 'Emulsify with the stick blender, head under the surface, in bursts with a spatula between, until even.'

function shearText(plan: Plan): { text: string; min: number; max: number; why: string } {
  const { context } = plan
  const isOf = (...roles: string[]) => context.lines.some((line) => playsHere(context, line, ...roles))
  if (context.form === 'water-in-oil')
    return {
      text: 'Go on stirring hard until it is thick and even.',
      min: 3,
      max: 10,
      why: 'Small droplets do not sink and do not flow together',
    }
  if (isOf('cationic-conditioner'))
    return {
      text: 'Stir steadily, without whipping air in, until even.',
      min: 5,
      max: 10,
      why: 'Quat and fatty alcohol build their own network as they cool; air makes it foamy',
    }
  if (context.lines.some((line) => hasClass(line, 'acrylic-polymer') && isFirst(context, line, 'acrylic-thickener')))
    return {
      text: PLAIN,
      min: 1,
      max: 2,
      why: 'Small droplets; the polymer holds them, and long hard shear would cut it',
    }
  return { text: PLAIN, min: 2, max: 5, why: 'The smaller the droplets, the longer it holds' }
}

export const emulsify: Maker = (plan, before) => {
  if (!before.some(({ id }) => id === 'combine')) return null
  const { text, min, max, why } = shearText(plan)
  return draft({
    id: 'emulsify',
    title: 'Emulsify',
    text,
    why,
    uses: held(before),
    time: usualTime(min, max, 'minutes', 'by eye: no oil eyes, no grain on a glass'),
    cautions: text === PLAIN ? ['Blender off and unplugged before you touch the head.'] : [],
  })
}
