import { waterActivity } from '#engine/chemistry/preservation/water-activity.ts'
import type { FormulaContext, Substance } from '#engine/formula/context.ts'
import { numberOf, plays, wordOf } from '#engine/graph/subject.ts'
import { figuresOf } from './tables.ts'

/** Larger molecules bind little water for their mass, and their molar mass is that of a mixture. */
const LARGEST_MOLAR_MASS = 400

const SALTS = ['electrolyte', 'divalent-salt']

function lowersActivity({ subject }: Substance): boolean {
  const molar_mass = numberOf(subject, 'molar_mass')
  return (
    molar_mass !== undefined &&
    molar_mass <= LARGEST_MOLAR_MASS &&
    wordOf(subject, 'solubility') === 'water' &&
    !plays(subject, 'water-phase') &&
    !plays(subject, 'surfactant')
  )
}

const isSalt = ({ subject }: Substance): boolean => SALTS.some((one) => subject.classes.has(one))

/** An estimate of the water activity of the water phase, and what it rests on; null where there is no water. */
export function estimateActivity(context: FormulaContext): { activity: number; solutes: Substance[] } | null {
  const water_g = context.substances.reduce(
    (sum, { subject, share_percent }) => (plays(subject, 'water-phase') ? sum + share_percent : sum),
    0,
  )
  if (water_g <= 0) return null
  const { norrish } = figuresOf(context.world)
  const solutes = context.substances.filter(lowersActivity)
  const activity = waterActivity(
    water_g,
    solutes.map((one) => {
      const constant = norrish.get(one.subject.id)
      return {
        grams: one.pure_percent,
        molar_mass: numberOf(one.subject, 'molar_mass') ?? LARGEST_MOLAR_MASS,
        particles: isSalt(one) ? 2 : 1,
        ...(constant !== undefined && { norrish: constant }),
      }
    }),
  )
  return { activity, solutes }
}

/** Organisms of the table that still grow at a water activity, and those that no longer do. */
export function growthAt(
  activity: number,
  rows: readonly { organism: string; activity: number }[],
): { grow: string[]; stopped: string[] } {
  const names = (keep: (least: number) => boolean) =>
    rows.filter((row) => keep(row.activity)).map(({ organism }) => organism)
  return { grow: names((least) => activity >= least), stopped: names((least) => activity < least) }
}
