import { heatIsKnown } from '#engine/chemistry/ph/log-constant-at.ts'
import type { AcidSystem, Ion, Mixture } from '#engine/chemistry/ph/mixture.ts'
import { solvePh } from '#engine/chemistry/ph/solve-ph.ts'
import type { Solved } from '#engine/chemistry/ph/solve-ph.ts'
import { linesPlayingHere } from '#engine/formula/build-context.ts'
import type { FormulaContext, Substance } from '#engine/formula/context.ts'
import { systemOf } from '#engine/knowledge/acids.ts'
import type { Acid, AcidCompound } from '#engine/knowledge/acids.ts'
import { readableName } from '#engine/units/readable-name.ts'
import { buffering } from './buffering.ts'
import type { Unknown } from './buffering.ts'

/** One line as acid, base or salt. */
export interface KnownLine {
  ingredient: string
  compound: AcidCompound
  /** [mol/L of water] */
  mol_per_l: number
}

/** What a formula's water phase holds as far as acids and bases go. */
export interface Composition {
  /** water and what mixes with it, share of the product, 0 to 1 */
  water_share: number
  lines: KnownLine[]
  /** all lines that are known, at this temperature [mol/L of water] */
  mixture: Mixture
  acids: Acid[]
  /** pH and ionic strength of the known lines by themselves; null where they pass all bounds */
  own: Solved | null
  /** lines of which it is not known what they take up or give off */
  unknown: Unknown[]
  /** what all of those can hold together at most [mol/L of water]; null where no bound is known */
  hidden_most_mol_per_l: number | null
}

const inWater = ({ pure_percent }: Substance, molar_mass: number, water_share: number): number =>
  (pure_percent * 10) / molar_mass / water_share

/** Systems and ions that a line brings. */
export function broughtBy({ compound, mol_per_l }: KnownLine, temp_c: number): { systems: AcidSystem[]; ions: Ion[] } {
  return {
    systems: compound.acids.map(({ acid, per_mol }) => systemOf(acid, mol_per_l * per_mol, temp_c)),
    ions: compound.ions.map((ion) => ({ charge: ion.charge, mol_per_l: ion.mol_per_l * mol_per_l })),
  }
}

/**
 * The acids, bases and salts of a formula in its water, and what is not known of the other lines.
 *
 * @param range  lowest and highest pH that the question touches: what buffers outside of it counts as nothing
 *
 * Pure amounts by stated or typical strength, blends taken apart. All of it counts as dissolved in the water: acid that
 * moves into oil or micelles is counted as if it were in the water.
 */
export function compositionOf(
  context: FormulaContext,
  temp_c: number,
  range: { min: number; max: number },
): Composition {
  const { byIngredient } = context.world.knowledge.acids
  const water_share = context.water_percent / 100
  const lines: KnownLine[] = []
  const unknown: Unknown[] = []
  let hidden_most_mol_per_l: number | null = 0
  for (const substance of [...context.substances].sort((a, b) => (a.subject.id < b.subject.id ? -1 : 1))) {
    // Fatty acids sit in the oil or in soap: their constants are none of a solution.
    const fatty = substance.subject.classes.has('fatty-acid')
    const compound = fatty ? undefined : byIngredient.get(substance.subject.id)
    const molar_mass = compound?.molar_mass
    if (compound && molar_mass !== undefined && water_share > 0)
      lines.push({ ingredient: substance.subject.id, compound, mol_per_l: inWater(substance, molar_mass, water_share) })
    else
      for (const gap of buffering(substance.subject, range, context.world.say)) {
        unknown.push(gap)
        hidden_most_mol_per_l = addBound(hidden_most_mol_per_l, gap, substance.pure_percent / water_share)
      }
  }
  const lye = boundLye(context)
  const brought = lines.map((line) => broughtBy(line, temp_c))
  const mixture = {
    systems: brought.flatMap(({ systems }) => systems),
    ions: brought.flatMap(({ ions }) => ions),
    temp_c,
  }
  return {
    water_share,
    lines,
    mixture,
    own: solved(mixture),
    acids: lines.flatMap(({ compound }) => compound.acids.map(({ acid }) => acid)),
    unknown: [...unknown, ...lye],
    hidden_most_mol_per_l: lye.length > 0 ? null : hidden_most_mol_per_l,
  }
}

const addBound = (sum: number | null, { most_mol_per_g }: Unknown, percent_of_water: number): number | null =>
  sum === null || most_mol_per_g === undefined ? null : sum + percent_of_water * 10 * most_mol_per_g

function solved(mixture: Mixture): Solved | null {
  try {
    return solvePh(mixture)
  } catch (error) {
    if (error instanceof RangeError) return null
    throw error
  }
}

const FAT_THAT_BINDS_PERCENT = 10

/** Lye in a soap is bound by the fats, slowly and not by this calculation. */
function boundLye(context: FormulaContext): Unknown[] {
  if (context.oil_percent < FAT_THAT_BINDS_PERCENT) return []
  return linesPlayingHere(context, 'lye').map(({ subject }) => ({
    ingredient: subject.id,
    says: context.world.say`${readableName(subject.inci)}: the fats bind it as soap`,
  }))
}

/** Acids whose constant at this temperature is that of room temperature, for want of a heat. */
export const withoutHeat = (acids: readonly Acid[], temp_c: number): string[] =>
  [
    ...new Set(acids.filter(({ steps }) => steps.some((step) => !heatIsKnown(step, temp_c))).map(({ name }) => name)),
  ].sort()
