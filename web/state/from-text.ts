import { parseRecipe } from '#web/recipe/parse-recipe.ts'
import { EMPTY, freshKey, withoutRecipe } from './bench.ts'
import type { Bench, BenchLine } from './bench.ts'
import type { ParsedLine } from '#web/recipe/types.ts'

function benchLine(line: ParsedLine, key: string): BenchLine {
  return { ...line, key, chosen: null, aside: false, missing: false }
}

function benchLines(parsed: ParsedLine[], after: readonly BenchLine[]): BenchLine[] {
  return parsed.reduce<BenchLine[]>((lines, line) => [...lines, benchLine(line, freshKey([...after, ...lines]))], [])
}

/** A bench with the recipe of a text; wishes and settings stay unless the text states its own. */
export function benchFromText(text: string, before: Bench = EMPTY): Bench {
  const { lines, notes, process, basis, total } = parseRecipe(text)
  return {
    ...withoutRecipe(before),
    title: '',
    form: null,
    lines: benchLines(lines, []),
    notes: notes.join('\n'),
    said: { basis, total, phRange: process.phRange ?? null },
    settings: {
      ...before.settings,
      ph: process.ph ?? null,
      hottest_c: process.hottest_c ?? null,
      batch_g: process.batch_g ?? before.settings.batch_g,
    },
  }
}

/** Adds the lines of a text to what is on the bench. A line that cannot be read is added as it is. */
export function addText(bench: Bench, text: string): Bench {
  const { lines, notes, process } = parseRecipe(text)
  return {
    ...bench,
    lines: [...bench.lines, ...benchLines(lines, bench.lines)],
    notes: [bench.notes, ...notes].filter((note) => note !== '').join('\n'),
    settings: {
      ...bench.settings,
      ...(process.ph !== undefined && { ph: process.ph }),
      ...(process.hottest_c !== undefined && { hottest_c: process.hottest_c }),
    },
  }
}

/** Reads one line again after it was corrected; its place, phase and share stay where the new text says nothing. */
export function rereadLine(bench: Bench, key: string, text: string): Bench {
  const read = parseRecipe(text).lines[0]
  return {
    ...bench,
    lines: bench.lines.map((line): BenchLine => {
      if (line.key !== key) return line
      if (!read || read.kind === 'unread') return { ...line, typed: text, name: text, chosen: null }
      const { trouble: _, strength_percent: __, ...kept } = line
      const says = read.share_percent !== null || read.fills || (read.trouble ?? 'no-share') !== 'no-share'
      const own = { ...read, phase: read.phase ?? line.phase }
      if (says || line.kind === 'unread') return { ...kept, ...own, chosen: null, aside: false }
      const { trouble: ___, ...nameOnly } = own
      const { share_percent, fills } = line
      const trouble = line.trouble ? { trouble: line.trouble } : {}
      return { ...kept, ...nameOnly, share_percent, fills, ...trouble, chosen: null, aside: false }
    }),
  }
}
