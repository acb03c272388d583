import { kindOf } from '#engine/chemistry/mixtures/kind-of.ts'
import { MIXTURE_POLYMERS } from '#engine/chemistry/mixtures/mixture.ts'
import type { MeasuredMixture, MixtureThickener, SurfactantKind } from '#engine/chemistry/mixtures/mixture.ts'
import type { MixtureModel } from '#engine/chemistry/mixtures/separation-rate.ts'
import type { Ingredient } from '#engine/model/records.ts'
import type { Knowledge } from './knowledge.ts'
import { idOf } from './slug.ts'

/** Mixtures of surfactants, cationic polymer and thickener that were made, and what was fitted to them. */
export interface MixtureData {
  measured: readonly MeasuredMixture[]
  /** null where no coefficients are on file */
  model: MixtureModel | null
}

const THICKENER_OF: Readonly<Record<string, MixtureThickener>> = {
  'laureth-2': 'short-ethoxylate',
  'peg-ppg-120-10-trimethylolpropane-trioleate-and-laureth-2': 'peg-ester',
}

type Row = Readonly<Record<string, string>>

/** Kind of a record; of a mixture of chains the longest counts. */
export function kindOfRecord({ classes, facts }: Pick<Ingredient, 'classes' | 'facts'>): SurfactantKind | undefined {
  const chain = facts.get('chain_length')?.find(({ used }) => used)
  return kindOf(classes, chain?.value ?? chain?.max)
}

function surfactantsOf(row: Row, ingredients: ReadonlyMap<string, Ingredient>): MeasuredMixture['surfactants'] {
  return [1, 2].flatMap((at) => {
    const record = ingredients.get(idOf(row[`surfactant_${at}`] ?? ''))
    const kind = record && kindOfRecord(record)
    return kind ? [{ kind, share_percent: Number(row[`share_${at}_percent`]) }] : []
  })
}

/** A row of the table; a row of which a material has no kind is left out. */
function mixtureOf(row: Row, ingredients: ReadonlyMap<string, Ingredient>): MeasuredMixture[] {
  const polymer = MIXTURE_POLYMERS.find((one) => one === idOf(row['polymer'] ?? ''))
  const thickener = THICKENER_OF[idOf(row['thickener'] ?? '')]
  const surfactants = surfactantsOf(row, ingredients)
  if (!polymer || !thickener || surfactants.length < 2) return []
  return [
    {
      surfactants,
      polymer,
      polymer_percent: Number(row['polymer_percent']),
      thickener,
      thickener_percent: Number(row['thickener_percent']),
      names: [1, 2].map((at) => idOf(row[`surfactant_${at}`] ?? '')),
      held: row['held'] === 'yes',
    },
  ]
}

function modelOf(coefficients: readonly Row[], spread: readonly Row[]): MixtureModel | null {
  if (coefficients.length === 0) return null
  const terms = coefficients.map((row) => row['term'] ?? '')
  return {
    terms,
    coefficients: coefficients.map((row) => Number(row['coefficient'])),
    spread: spread.map((row) => terms.map((term) => Number(row[term]))),
  }
}

const memo = new WeakMap<Knowledge['tables'], MixtureData>()

/** The three tables of mixtures, read once; a world without them has no measured mixtures. */
export function mixtureDataOf({ tables, ingredients }: Pick<Knowledge, 'tables' | 'ingredients'>): MixtureData {
  const known = memo.get(tables)
  if (known) return known
  const rows = (name: string): readonly Row[] => tables.get(name) ?? []
  const data = {
    measured: rows('surfactant-mixtures').flatMap((row) => mixtureOf(row, ingredients)),
    model: modelOf(rows('mixture-model'), rows('mixture-spread')),
  }
  memo.set(tables, data)
  return data
}
