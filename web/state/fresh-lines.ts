import type { Formula } from './to-formula.ts'

/** Ids of lines that do not stand in the recipe before with the same share; the filling line is no news. */
export function freshLines(after: Formula, before: Formula): string[] {
  const keyOf = ({ ingredient, share_percent }: Formula['lines'][number]) => `${ingredient} ${share_percent}`
  const old = new Set(before.lines.map(keyOf))
  return after.lines.filter((line) => !line.fills && !old.has(keyOf(line))).map(({ ingredient }) => ingredient)
}
