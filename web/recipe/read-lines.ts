import { readAmount } from './amount.ts'
import { isRule, readHead, readRow, splitCells } from './cells.ts'
import type { Column, Row } from './cells.ts'
import { readHeading } from './heading.ts'
import { isInstruction, isTitle, withoutVerb } from './instruction.ts'
import { mergeProcess, readProcess } from './process-notes.ts'
import { splitStrength } from './strength.ts'
import { tidyLine } from './tidy-line.ts'
import type { NoteLine, Process, ReadLine, UnreadLine } from './types.ts'

type Kept = ReadLine | UnreadLine | NoteLine

/** Where the reader stands: what the headings and the table head above have said. */
interface Standing {
  phase: ReadLine['phase']
  group: string | null
  head: Column[] | null
}

const LONGEST_NAME = 200 // the server takes no longer name

function readIngredient(typed: string, row: Row, standing: Standing): ReadLine | UnreadLine {
  const { name: whole, ...amount } = readAmount(withoutVerb(row.text))
  if (!/\p{L}{2}/u.test(whole) || whole.length > LONGEST_NAME) return { kind: 'unread', typed }
  const phase = row.phase ?? (row.group === null ? standing.phase : null)
  return { kind: 'ingredient', typed, ...splitStrength(whole), ...amount, phase, group: row.group ?? standing.group }
}

function readOne(typed: string, standing: Standing): { kept: Kept; standing: Standing } {
  const line = tidyLine(typed)
  const note: NoteLine = { kind: 'note', typed: typed.trim() }
  if (isRule(line)) return { kept: note, standing }
  const cells = splitCells(typed.trim())
  const head = cells ? readHead(cells) : null
  if (head) return { kept: note, standing: { ...standing, head } }
  const heading = readHeading(line)
  if (heading) {
    const next = { ...standing, phase: heading.phase, group: heading.phase ? null : heading.group }
    if (!/\d/.test(heading.rest) && !/q\.?s/i.test(heading.rest)) return { kept: note, standing: next }
    return {
      kept: readIngredient(typed.trim(), { text: heading.rest, phase: null, group: null }, next),
      standing: next,
    }
  }
  if (/^#/.test(line) || isInstruction(line)) return { kept: note, standing }
  const row = cells ? readRow(cells.map(tidyLine), standing.head) : { text: line, phase: null, group: null }
  if (row && /^(?:total|sum|gesamt|summe)\b/i.test(row.text)) return { kept: note, standing }
  return { kept: row ? readIngredient(typed.trim(), row, standing) : { kind: 'unread', typed: typed.trim() }, standing }
}

/** Reads a text line by line. Every line that is not blank comes back as an ingredient, as unread or as a note. */
export function readLines(text: string): { kept: Kept[]; process: Process } {
  let standing: Standing = { phase: null, group: null, head: null }
  let process: Process = {}
  const kept: Kept[] = []
  for (const typed of text.split(/\r\n|\r|\n/)) {
    if (tidyLine(typed) === '') {
      if (typed.trim() !== '') kept.push({ kind: 'note', typed: typed.trim() })
      continue
    }
    if (kept.length === 0 && isTitle(tidyLine(typed))) {
      kept.push({ kind: 'note', typed: typed.trim() })
      continue
    }
    const read = readOne(typed, standing)
    standing = read.standing
    process = mergeProcess(process, readProcess(tidyLine(typed)))
    kept.push(read.kept)
  }
  return { kept, process }
}
