import type { Additive } from '#engine/chemistry/ph/dose-to.ts'
import { logConstantAt } from '#engine/chemistry/ph/log-constant-at.ts'
import type { LogConstant } from '#engine/chemistry/ph/log-constant-at.ts'
import type { AcidSystem, Ion } from '#engine/chemistry/ph/mixture.ts'
import type { Provenance } from '#engine/model/records.ts'
import type { RawTable } from './raw.ts'
import { idOf } from './slug.ts'

type Row = Record<string, string>

/** One step of an acid or base with where its constant comes from. */
export interface AcidStep extends LogConstant, Pick<Provenance, 'source' | 'locator' | 'access'> {
  step: string
}

/** An acid or base: all its forms together. Names as in graph-data/tables/pka.tsv. */
export interface Acid {
  name: string
  /** charge of the form with all its protons */
  charge: number
  steps: AcidStep[]
  /** measured in the salt of a solution, in micelles or in a dispersion */
  apparent: boolean
  /** what a reader of a result should hear; empty where there is nothing to say */
  caution: string
}

/** What one mole of an acid, base, salt or ingredient brings into water. */
export interface AcidCompound {
  name: string
  /** id of its record, where there is one */
  ingredient?: string
  /** [g/mol]; undefined for a mixture without a formula */
  molar_mass?: number
  acids: { acid: Acid; per_mol: number }[]
  /** ions that take no part, per mole */
  ions: Ion[]
}

export interface AcidTable {
  /** by name in lower case with hyphens, and by short names */
  compounds: ReadonlyMap<string, AcidCompound>
  /** by id of the record */
  byIngredient: ReadonlyMap<string, AcidCompound>
}

const optional = (text: string | undefined): number | undefined =>
  text === undefined || text.trim() === '' ? undefined : Number(text)

const list = (text: string | undefined): string[] => (text ? text.split(/\s*;\s*/).filter((part) => part !== '') : [])

function stepOf(row: Row): AcidStep {
  const dh_kj_mol = optional(row['dh_kj_mol'])
  const dcp_j_mol_k = optional(row['dcp_j_mol_k'])
  return {
    step: row['step'] ?? '',
    pka: Number(row['pka']),
    temp_c: Number(row['temp_c']),
    ...(dh_kj_mol !== undefined && { dh_kj_mol }),
    ...(dcp_j_mol_k !== undefined && { dcp_j_mol_k }),
    source: row['source_id'] ?? '',
    locator: row['locator'] ?? '',
    access: row['access'] as Provenance['access'],
  }
}

function acidsOf(rows: readonly Row[]): Map<string, Acid> {
  const acids = new Map<string, Acid>()
  for (const row of rows) {
    const name = row['acid'] ?? ''
    const known = acids.get(name)
    if (known) known.steps.push(stepOf(row))
    else
      acids.set(name, {
        name,
        charge: Number(row['charge']),
        steps: [stepOf(row)],
        apparent: row['apparent'] === 'yes',
        caution: row['caution'] ?? '',
      })
  }
  return acids
}

/** "citric acid*1" as name and number. */
function times(text: string): [string, number] {
  const star = text.lastIndexOf('*')
  return [text.slice(0, star), Number(text.slice(star + 1))]
}

function compoundOf(row: Row, acids: ReadonlyMap<string, Acid>): AcidCompound {
  const molar_mass = optional(row['molar_mass'])
  return {
    name: row['name'] ?? '',
    ...(row['ingredient'] && { ingredient: row['ingredient'] }),
    ...(molar_mass !== undefined && { molar_mass }),
    acids: list(row['acids_per_mol']).flatMap((part) => {
      const [name, per_mol] = times(part)
      const acid = acids.get(name)
      return acid ? [{ acid, per_mol }] : []
    }),
    ions: list(row['ions_per_mol']).map((part) => {
      const [charge, mol_per_l] = times(part)
      return { charge: Number(charge), mol_per_l }
    }),
  }
}

const rowsOf = (tables: readonly RawTable[], end: string): Row[] =>
  tables.find(({ path }) => path.endsWith(end))?.rows ?? []

/** Acids, bases and their salts from the tables of constants; empty where there are no such tables. */
export function expandAcids(tables: readonly RawTable[]): AcidTable {
  const acids = acidsOf(rowsOf(tables, '/pka.tsv'))
  const compounds = new Map<string, AcidCompound>()
  const byIngredient = new Map<string, AcidCompound>()
  for (const row of rowsOf(tables, '/pka-compounds.tsv')) {
    const compound = compoundOf(row, acids)
    for (const name of [compound.name, ...list(row['also'])]) compounds.set(idOf(name), compound)
    if (compound.ingredient !== undefined) byIngredient.set(compound.ingredient, compound)
  }
  return { compounds, byIngredient }
}

/** The compound of a name, short name or id of a record; undefined where none is known. */
export const compoundNamed = ({ compounds, byIngredient }: AcidTable, name: string): AcidCompound | undefined =>
  compounds.get(idOf(name)) ?? byIngredient.get(name)

/** All forms of an acid at a temperature, ready for a mixture. */
export const systemOf = ({ charge, steps, apparent }: Acid, mol_per_l: number, temp_c: number): AcidSystem => ({
  charge,
  pkas: steps.map((step) => logConstantAt(step, temp_c)),
  ...(apparent && { apparent }),
  mol_per_l,
})

/** One mole of a compound at a temperature, as an addition to a mixture. */
export const additiveOf = ({ acids, ions }: AcidCompound, temp_c: number): Additive => ({
  systems: acids.map(({ acid, per_mol }) => systemOf(acid, per_mol, temp_c)),
  ions,
})
