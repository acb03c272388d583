import type { Claim } from '#engine/model/records.ts'
import type { InventoryRow } from './raw.ts'

const SEEN = {
  kind: 'assertion',
  source: 'inv',
  locator: 'open inventory of cosmetic ingredients, state of 30 December 2020, under this name',
  access: 'read',
  date: '2026-11-25',
  unit: '',
  used: false,
} as const

/**
 * What the open inventory says of a name: its functions in the words of the Commission, its CAS numbers. Made when a
 * record is shown, not stored; a listing says nothing about what is permitted.
 */
export function inventoryClaims({ id, functions, cas }: InventoryRow): Claim[] {
  const stated = { inventory_functions: functions, inventory_cas: cas }
  return Object.entries(stated).flatMap(([property, words]) =>
    words.length === 0 ? [] : [{ id: `${id}#${property}/0`, property, is: words.join('; ').toLowerCase(), ...SEEN }],
  )
}
