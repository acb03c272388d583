import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { bufferCapacity } from '#engine/chemistry/ph/capacity.ts'
import { readMixture } from '#engine/calculate/acids-mixture.ts'
import type { ReadMixture, StatedMixture } from '#engine/calculate/acids-mixture.ts'
import { readTable } from '#load/read-table.ts'
import { realWorld } from '../../helpers.ts'

const here = (name: string): string => fileURLToPath(new URL(name, import.meta.url))

/** Totals by short name and ions as [charge, amount], as the tables write them. */
interface Written {
  systems: Record<string, number>
  ions: [number, number][]
  temp_c: number
}

export const stated = ({ systems, ions, temp_c }: Written): StatedMixture => ({
  systems: Object.entries(systems).map(([acid, mol_per_l]) => ({ acid, mol_per_l })),
  ions: ions.map(([charge, mol_per_l]) => ({ charge, mol_per_l })),
  temp_c,
})

export const mixtureOf = (written: Written): ReadMixture => readMixture(stated(written), realWorld().knowledge.acids)

export interface Buffer {
  id: string
  family: string
  recipe: string
  standing: string
  source: string
  expected_ph: number
  mixture: StatedMixture
}

/** Published recipes with their pH: own collection of tables, each row with its source. */
export const buffers = (): Buffer[] =>
  readTable(here('buffers.csv')).map((row) => {
    const components = JSON.parse(row['components'] ?? '{}') as {
      acid_systems_mol_per_L: Record<string, number>
      strong_ions_charge_mol_per_L: [number, number][]
    }
    return {
      id: row['id'] ?? '',
      family: row['family'] ?? '',
      recipe: row['recipe'] ?? '',
      standing: row['standing'] ?? '',
      source: `${row['source_id']}, ${row['locator']}`,
      expected_ph: Number(row['expected_ph']),
      mixture: stated({
        systems: components.acid_systems_mol_per_L,
        ions: components.strong_ions_charge_mol_per_L,
        temp_c: Number(row['temp_c']),
      }),
    }
  })

export interface AdjustCase {
  id: string
  topic: string
  title: string
  inputs: Record<string, unknown>
  expected: Record<string, unknown>
  tolerance: string
  source_id: string
}

export const adjustCases = (): AdjustCase[] =>
  (JSON.parse(readFileSync(here('adjust-cases.json'), 'utf8')) as { cases: AdjustCase[] }).cases

/** Mixture of a case that lists its systems per kg, 1 kg counted as 1 L. */
export const writtenIn = ({ inputs }: AdjustCase, temp_c = 25): Written => ({
  systems: (inputs['acid_systems_mol_per_kg'] ?? {}) as Record<string, number>,
  ions: (inputs['strong_ions'] ?? []) as [number, number][],
  temp_c: typeof inputs['temp_c'] === 'number' ? inputs['temp_c'] : temp_c,
})

export const capacity_mmol = (written: Written): number => bufferCapacity(mixtureOf(written)) * 1000
