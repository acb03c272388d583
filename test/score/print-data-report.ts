import type { Report, Seen } from './data-figures.ts'

const TARGET = 0.65
const MOST_PROPERTIES = 25

const share = ({ seen_share }: Seen): string => (seen_share === null ? '–' : `${(seen_share * 100).toFixed(1)} %`)

function table(head: readonly string[], rows: readonly (readonly (string | number)[])[]): void {
  const lines = [head, ...rows].map((cells) => cells.map(String))
  const widths = head.map((_, at) => Math.max(...lines.map((cells) => cells[at]?.length ?? 0)))
  for (const cells of lines) {
    const line = cells.map((cell, at) => (at === 0 ? cell.padEnd(widths[at] ?? 0) : cell.padStart(widths[at] ?? 0)))
    console.log(`  ${line.join('  ')}`.trimEnd())
  }
}

const title = (text: string): void => console.log(`\n${text}`)
const SEEN_HEAD = ['claims', 'read', 'secondary', 'memory', 'practice', 'seen']
const seenCells = (seen: Seen): (string | number)[] => [
  seen.claims,
  seen.read,
  seen.secondary,
  seen.memory,
  seen['common-practice'],
  share(seen),
]

function printClaims({ claims, contested, limits, records }: Report): void {
  title('Records')
  table(
    ['tier', 'records'],
    [
      ['full', records.full],
      ['short', records.short],
      ['name in the inventory only', records.inventory_only],
    ],
  )
  title('Claims by how they were seen (seen: read in the source or seen quoted)')
  table(
    ['', ...SEEN_HEAD],
    [
      ['claims from outside: of records, tables, classes', ...seenCells(claims.from_outside)],
      ['  of these, about whole classes and roles, once each', ...seenCells(claims.of_classes)],
      ['all claims of records, worked out and graded ones too', ...seenCells(claims.all)],
      ['  of full records', ...seenCells(claims.by_tier['full'] ?? claims.all)],
      ['  of short records', ...seenCells(claims.by_tier['short'] ?? claims.all)],
      ['  that decide', ...seenCells(claims.deciding)],
      ['  that are worked out', ...seenCells(claims.worked_out)],
      ['  and what the inventory says of their names', ...seenCells(claims.with_inventory)],
      ['  and of all other names in the graph', ...seenCells(claims.with_every_name)],
      ['roles and relations', ...seenCells(claims.statements)],
      [`rows of ${limits.records} legal entries`, ...seenCells(limits.rows)],
    ],
  )
  const now = claims.from_outside.seen_share ?? 0
  const { worked_out, taken_from_classes, own_grading } = claims
  console.log(
    `\n  ${now >= TARGET ? 'meets' : 'misses'} the target of ${TARGET * 100} % seen, over the claims from outside`,
  )
  console.log(
    `  worked out from other claims and counted apart: ${worked_out.claims}, ${taken_from_classes} of them from classes and roles`,
  )
  console.log(`  the tool's own grading (usual), counted apart: ${own_grading}`)
  title('Seen claims from outside by the grade of their source (A standard or paper … D supplier or hobby page)')
  table(
    ['grade', 'claims'],
    Object.entries(claims.seen_by_grade).sort(([a], [b]) => (a < b ? -1 : 1)),
  )
  title('Claims by kind')
  table(['kind', 'claims'], Object.entries(claims.by_kind))
  console.log(`  measured, but remembered (never stops a formula): ${claims.measured_from_memory}`)
  console.log(`  contested: ${contested.properties} properties in ${contested.records} records`)
}

function printProperties({ claims }: Report): void {
  const unseen = ({ memory, 'common-practice': practice }: Seen): number => memory + practice
  const all = Object.entries(claims.by_property).sort((a, b) => unseen(b[1]) - unseen(a[1]))
  title('Properties that pull the share down most (claims from outside)')
  table(
    ['property', ...SEEN_HEAD],
    all.slice(0, MOST_PROPERTIES).map(([id, seen]) => [id, ...seenCells(seen)]),
  )
  const rest = all.slice(MOST_PROPERTIES)
  console.log(
    `  and ${rest.length} more with ${rest.reduce((sum, [, seen]) => sum + unseen(seen), 0)} unseen claims together`,
  )
}

function printRoles({ roles }: Report): void {
  title('Roles: members, and how many of those that play this very role lack what it ranks and doses by')
  table(
    ['role', 'full', 'short', 'own', 'lacking'],
    roles.map(({ id, full, short, own, lacking }) => {
      const gaps = Object.entries(lacking).filter(([, count]) => count > 0)
      return [id, full, short, own, gaps.map(([property, count]) => `${property} ${count}`).join(', ') || '–']
    }),
  )
  title('Roles with fewer than five members, and why')
  for (const { id, full, short, few } of roles) if (few) console.log(`  ${id} (${full + short}): ${few}`)
}

/** Prints the report to be read. */
export function printReport(report: Report): void {
  printClaims(report)
  printProperties(report)
  printRoles(report)
}
