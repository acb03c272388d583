import { mustBeIn } from '#engine/units/must-be-in.ts'

/**
 * Share of a new material that brings the same active matter as the old one.
 *
 *   new = old · old_active / new_active
 *
 * @param old_percent         share of the old material [%], as supplied
 * @param old_active_percent  active matter of the old material [%]
 * @param new_active_percent  active matter of the new material [%]
 * @returns                   share of the new material [%], as supplied; may pass 100, which no formula can hold
 * @throws RangeError when an argument is out of range
 *
 * Mass balance, no source needed.
 */
export function activeMatterDose(old_percent: number, old_active_percent: number, new_active_percent: number): number {
  mustBeIn('old_percent', old_percent, 0, 100)
  mustBeIn('old_active_percent', old_active_percent, 0, 100)
  mustBeIn('new_active_percent', new_active_percent, 1e-6, 100)
  return (old_percent * old_active_percent) / new_active_percent
}
