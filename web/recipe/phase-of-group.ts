import type { Phase, ReadLine } from './types.ts'

const WATERY = /\b(?:aqua|water|wasser|eau|agua|acqua|hydrosol)\b/i
const FATTY =
  /\b(?:oil|öl|aceite|huile|butter|wax|wachs|cera|cet\w+ alcohol|stear\w+|triglyceride|squalane|dimethicone|lecithin)\b|öl\b|butter\b/i

/**
 * Works out which phase a lettered heading means from the lines under it; a letter alone says nothing.
 *
 * @returns group → phase; a group that stays open is left out, and the record's usual phase counts
 */
export function phaseOfGroups(lines: ReadLine[]): ReadonlyMap<string, Phase> {
  const phases = new Map<string, Phase>()
  const groups = [...new Set(lines.flatMap(({ group }) => (group === null ? [] : [group])))]
  for (const group of groups) {
    const own = lines.filter((line) => line.group === group)
    const taken = new Set(phases.values())
    if (own.some((line) => WATERY.test(line.name)) && !taken.has('water')) phases.set(group, 'water')
    else if (own.some((line) => FATTY.test(line.name)) && !taken.has('oil')) phases.set(group, 'oil')
    else if (taken.has('water') && taken.has('oil')) phases.set(group, 'cool-down')
  }
  return phases
}
