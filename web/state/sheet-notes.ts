import type { SheetLine } from '#web/client/use-swap-sheet.ts'

type StandIn = SheetLine['standIns'][number]

/** Share of a stand-in that a swap puts in [%]: what is in already does not count. */
export const doseOf = ({ changes, lines }: StandIn, ingredient: string): number =>
  changes.find((change) => change.kind === 'dose' && change.ingredient === ingredient)?.to ??
  lines.find((line) => line.ingredient === ingredient)?.share_percent ??
  0

const PLAIN = new Set(['dose', 'label'])

const notesOf = ({ changes }: StandIn): string[] => [
  ...new Set(changes.filter(({ kind }) => !PLAIN.has(kind)).map(({ text }) => text)),
]

/** What changes with every stand-in of a line alike: said once. */
export function commonNotes({ standIns }: SheetLine): string[] {
  const [first, ...others] = standIns
  if (!first || others.length === 0) return []
  return notesOf(first).filter((note) => others.every((one) => notesOf(one).includes(note)))
}

/** What changes with this stand-in and not with all of them; a new allergen to name is no plain change of the label. */
export function ownNotes(standIn: StandIn, common: readonly string[]): string[] {
  const label = standIn.changes.filter(({ kind, text }) => kind === 'label' && text.includes('. '))
  return [
    ...notesOf(standIn).filter((note) => !common.includes(note)),
    ...label.map(({ text }) => text.slice(text.indexOf('. ') + 2)),
  ]
}

/** Whether a stand-in is dangerous to handle, as a remark on the new recipe says. */
export const isDangerous = ({ findings, lines }: StandIn): boolean =>
  findings.some(
    ({ rule, about }) => rule === 'handle-with-care' && lines.some(({ ingredient }) => about.includes(ingredient)),
  )
