import type { Claim, PropertySpec, Provenance } from '#engine/model/records.ts'
import type { RawTable } from './raw.ts'
import { idOf } from './slug.ts'
import { spectrumOf } from './spectrum-in-words.ts'

/** Property of a published table → property of the records. What is not named here is kept under its own name, to be read by people. */
const SAME_AS: Record<string, { property: string; unit?: string }> = {
  heat_max: { property: 'heat_max_c' },
  heat_min: { property: 'heat_min_c' },
  active_matter: { property: 'active_percent', unit: '%' },
  ethanol_tolerance: { property: 'ethanol_max_percent', unit: '%' },
  ph: { property: 'ph_supplied', unit: 'pH' },
  viscosity: { property: 'viscosity_mpa_s', unit: 'mPa.s' },
  osi_110c: { property: 'oxidation_h' },
}

/** One unit under two names: what is weighed need not be named where the property says it. */
const SAME_UNIT: Record<string, string> = { 'mg KOH/g': 'mg/g', 'g I2/100 g': 'g/100 g' }

/** Properties that a table may state in words; the record's own words decide, these are shown beside them. */
const IN_WORDS = new Set(['phase', 'charge', 'role', 'form', 'solubility', 'electrolyte', 'spectrum'])

/** Of these a single word of the vocabulary is a claim like any other; a phrase is for people to read. */
export const BY_WORD = new Set(['form', 'solubility', 'electrolyte', 'divalent_ions'])

type Specs = ReadonlyMap<string, PropertySpec>

const number = (text: string | undefined): number | undefined =>
  text === undefined || text.trim() === '' || Number.isNaN(Number(text)) ? undefined : Number(text)

function propertyOf(name: string, unit: string, text: string | undefined, properties: Specs): string {
  const same = SAME_AS[name.toLowerCase()]
  if (same && (same.unit === undefined || same.unit === unit)) return same.property
  if (BY_WORD.has(name) && text !== undefined && properties.get(name)?.words.includes(text)) return name
  if (name === 'spectrum' && text !== undefined && spectrumOf(text, properties.get(name)?.words ?? [])) return name
  return IN_WORDS.has(name) ? `${name}_in_words` : name
}

const kindOf = (access: string): Provenance['kind'] =>
  access === 'read' || access === 'secondary' ? 'assertion' : 'rule-of-thumb'

/** One row of a long table (one property of one substance in one source) as a claim. */
function claimOfRow(row: Record<string, string>, place: string, properties: Specs): Claim | null {
  const unit = row['unit'] ?? ''
  const text = row['value_text']?.trim()
  const property = propertyOf(row['property'] ?? '', unit, text, properties)
  const min = number(row['min'])
  const max = number(row['max'])
  const isNumber = min !== undefined || max !== undefined
  if (!isNumber && !text) return null
  // A number that is only described ("stable at low pH") is for people to read.
  const onlyInWords = !isNumber && properties.get(property)?.kind === 'range'
  const spectrum = property === 'spectrum' ? spectrumOf(text ?? '', properties.get(property)?.words ?? []) : undefined
  return {
    id: row['id'] || place,
    property: onlyInWords ? `${property}_in_words` : property,
    ...(min !== undefined && { min }),
    ...(max !== undefined && { max }),
    ...(spectrum ? { spectrum } : text && { is: text }),
    unit: onlyInWords ? '' : (SAME_UNIT[unit] ?? unit),
    kind: (row['kind'] || kindOf(row['access'] ?? '')) as Claim['kind'],
    source: row['source_id'] ?? '',
    locator: row['locator'] || `table ${place}`,
    access: row['access'] as Claim['access'],
    date: row['date'] || '2026-11-25',
    ...(row['conditions'] && { conditions: row['conditions'] }),
    ...(row['note'] && { note: row['note'] }),
    used: false,
  }
}

function listFor(id: string, lists: Map<string, Claim[]>): Claim[] {
  const list = lists.get(id) ?? []
  lists.set(id, list)
  return list
}

/**
 * Claims of all long tables by ingredient id. A table qualifies by having the columns inci, property and access; where the
 * column is called agent, the engine reads the table itself as well.
 */
export function tableClaims(tables: readonly RawTable[], properties: Specs): Map<string, Claim[]> {
  const byIngredient = new Map<string, Claim[]>()
  const ofName = new Map<string, Claim[]>() // rows name an ingredient again and again
  for (const table of tables) {
    const name = table.path.replace(/^.*\//, '').replace(/\.tsv$/, '')
    table.rows.forEach((row, index) => {
      const inci = row['inci'] || row['agent']
      if (!inci || !row['property'] || !row['access']) return
      const claim = claimOfRow(row, `${name}/${index}`, properties)
      if (!claim) return
      const known = ofName.get(inci) ?? listFor(idOf(inci), byIngredient)
      ofName.set(inci, known)
      known.push(claim)
    })
  }
  return byIngredient
}
