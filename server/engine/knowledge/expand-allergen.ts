import { isObject } from './expand-claims.ts'
import type { RawFile } from './raw.ts'

/** One substance or natural scent whose presence must be declared on the label. */
export interface DeclaredAllergen {
  /** name of the law, to be printed */
  label: string
  /** ids that it covers: names of the law, and other inventory names of the same material */
  members: string[]
  leave_on_percent: number
  rinse_off_percent: number
  /** declared besides the single substances that it brings */
  naturalComplex: boolean
  /** entry that prohibits it; declaring it cures nothing */
  banned_by?: string
  /** first day on which goods placed on the market must declare it */
  applies_from?: string
  /** last day for selling off goods that do not */
  older_stock_until?: string
  source: string
  locator: string
  /** state of the list */
  date: string
}

const strings = (value: unknown): string[] => (Array.isArray(value) ? value.map(String) : [])
const word = (row: Record<string, unknown>, key: string): string | undefined =>
  typeof row[key] === 'string' ? row[key] : undefined

const LEAVE_ON_PERCENT = 0.001
const RINSE_OFF_PERCENT = 0.01

function allergenOf(row: Record<string, unknown>, date: string): DeclaredAllergen {
  const banned_by = word(row, 'banned_by')
  const applies_from = word(row, 'applies_from')
  const older_stock_until = word(row, 'older_stock_until')
  return {
    label: String(row['label_name'] ?? ''),
    members: [...new Set([...strings(row['members']), ...strings(row['added'])])],
    leave_on_percent: Number(row['leave_on_percent'] ?? LEAVE_ON_PERCENT),
    rinse_off_percent: Number(row['rinse_off_percent'] ?? RINSE_OFF_PERCENT),
    naturalComplex: row['natural_complex'] === true,
    ...(banned_by !== undefined && { banned_by }),
    ...(applies_from !== undefined && { applies_from }),
    ...(older_stock_until !== undefined && { older_stock_until }),
    source: String(row['source'] ?? ''),
    locator: String(row['locator'] ?? ''),
    date,
  }
}

/** Declared allergens of all files that list them; an allergen without thresholds has those of the law. */
export const expandAllergens = (files: readonly RawFile[]): DeclaredAllergen[] =>
  files.flatMap(({ data }) => {
    if (!isObject(data) || !Array.isArray(data['allergens'])) return []
    return data['allergens'].filter(isObject).map((row) => allergenOf(row, String(data['date'] ?? '')))
  })
