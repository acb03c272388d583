import { phaseOfGroups } from './phase-of-group.ts'
import { readLines } from './read-lines.ts'
import { toShares } from './to-shares.ts'
import type { ParsedLine, ParsedRecipe } from './types.ts'

/** Reads a recipe typed or pasted as free text. Nothing is lost: what is no ingredient comes back as an unread line or a note. */
export function parseRecipe(text: string): ParsedRecipe {
  const { kept, process } = readLines(text)
  const read = kept.filter((line) => line.kind === 'ingredient')
  const phases = phaseOfGroups(read)
  const { basis, total, lines: shares } = toShares(read)
  const shareOf = new Map(read.map((line, at) => [line, shares[at]]))
  const lines = kept.flatMap((line): ParsedLine[] => {
    if (line.kind === 'note') return []
    const blank = { typed: line.typed, share_percent: null, fills: false, phase: null }
    if (line.kind === 'unread') return [{ kind: 'unread', name: line.typed, ...blank }]
    const { name, strength_percent, group } = line
    const phase = line.phase ?? (group === null ? null : (phases.get(group) ?? null))
    const strength = strength_percent === undefined ? {} : { strength_percent }
    return [{ kind: 'ingredient', name, ...blank, ...shareOf.get(line), phase, ...strength }]
  })
  const batch = process.batch_g ?? (basis === 'grams' && total !== null ? total : undefined)
  return {
    lines,
    notes: kept.filter(({ kind }) => kind === 'note').map(({ typed }) => typed),
    process: { ...process, ...(batch !== undefined && { batch_g: batch }) },
    basis,
    total,
  }
}
