import { heatIsKnown } from '#engine/chemistry/ph/log-constant-at.ts'
import type { Ion, Mixture } from '#engine/chemistry/ph/mixture.ts'
import { compoundNamed, systemOf } from '#engine/knowledge/acids.ts'
import type { Acid, AcidCompound, AcidTable } from '#engine/knowledge/acids.ts'

/** A mixture as a person states it. */
export interface StatedMixture {
  systems: readonly { acid: string; mol_per_l: number }[]
  ions: readonly Ion[]
  temp_c: number
}

/** The same, ready to be solved, with the acids behind it in the same order as its systems. */
export interface ReadMixture extends Mixture {
  acids: readonly Acid[]
}

/** Names of the acids and bases themselves; their salts are known too. */
export const acidNames = ({ compounds }: AcidTable): string[] =>
  [...new Set([...compounds.values()].filter(isItself).map(({ name }) => name))].sort()

const isItself = ({ acids, ions, name }: AcidCompound): boolean =>
  acids[0]?.acid.name === name || (acids.length === 0 && ions.length === 1)

/** @throws RangeError naming the argument and the names that exist */
export function compoundOrThrow(table: AcidTable, name: string, argument: string): AcidCompound {
  const compound = compoundNamed(table, name)
  if (compound) return compound
  const known = acidNames(table).join(', ')
  throw new RangeError(`${argument}: no acid or base is called ${name.slice(0, 40)}; known, with their salts: ${known}`)
}

/**
 * Acids, bases and salts by name as a mixture at its temperature.
 * @throws RangeError naming the argument (systems/0/acid) whose name is not known, with the names that exist
 */
export function readMixture({ systems, ions, temp_c }: StatedMixture, table: AcidTable): ReadMixture {
  const named = systems.map(({ acid, mol_per_l }, index) => ({
    compound: compoundOrThrow(table, acid, `systems/${index}/acid`),
    mol_per_l,
  }))
  const parts = named.flatMap(({ compound, mol_per_l }) =>
    compound.acids.map(({ acid, per_mol }) => ({ acid, mol_per_l: mol_per_l * per_mol })),
  )
  const brought = named.flatMap(({ compound, mol_per_l }) =>
    compound.ions.map((ion) => ({ charge: ion.charge, mol_per_l: ion.mol_per_l * mol_per_l })),
  )
  return {
    systems: parts.map(({ acid, mol_per_l }) => systemOf(acid, mol_per_l, temp_c)),
    acids: parts.map(({ acid }) => acid),
    ions: [...ions, ...brought],
    temp_c,
  }
}

/** What one has to know about the constants of these acids at this temperature, a sentence each. */
export function cautionsOf(acids: readonly Acid[], temp_c: number): string[] {
  const cold = acids.filter(({ steps }) => steps.some((step) => !heatIsKnown(step, temp_c))).map(({ name }) => name)
  const unknown = [...new Set(cold)].sort()
  return [
    ...new Set(acids.flatMap(({ caution }) => (caution === '' ? [] : [`${caution}.`]))),
    ...(unknown.length === 0
      ? []
      : [
          `Not known how the constant of ${unknown.join(', ')} moves with temperature: that of room temperature is used.`,
        ]),
  ]
}

/** Sources of the constants, each once. */
export const sourcesOfAcids = (acids: readonly Acid[]): string[] =>
  [
    ...new Set(['PHREEQC-MINTEQ', 'MALMBERG1956', ...acids.flatMap(({ steps }) => steps.map(({ source }) => source))]),
  ].sort()
