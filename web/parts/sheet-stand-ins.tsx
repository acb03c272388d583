import { Fragment } from 'react'
import type { ReactNode } from 'react'
import type { SheetLine } from '#web/client/use-swap-sheet.ts'
import { useRoleLabels } from '#web/client/use-role-labels.ts'
import { costNote } from '#web/format/cost-note.ts'
import type { Money } from '#web/format/cost-note.ts'
import { shareText } from '#web/format/number.ts'
import { commonNotes, doseOf, isDangerous, ownNotes } from '#web/state/sheet-notes.ts'
import { sharesOf } from '#web/state/swap-cost.ts'
import type { Formula } from '#web/state/to-formula.ts'
import { sheet as T } from '#web/text/sheet.ts'
import { lowered } from '#web/format/lower.ts'
import { Said } from './spoken.tsx'

interface Props {
  line: SheetLine
  formula: Formula
  labelOf: (id: string) => string
  money: Money
}

type StandIn = SheetLine['standIns'][number]

/** Where a stand-in is in the recipe already, its dose is not all there will be of it. */
function inAll({ changes, lines }: StandIn, { formula, labelOf }: Props): string[] {
  const shares = sharesOf(formula)
  return lines
    .filter(({ ingredient }) => shares.has(ingredient) && changes.some((one) => one.ingredient === ingredient))
    .map(({ ingredient, share_percent }) => T.inAll(labelOf(ingredient), share_percent))
}

function One({ standIn, common, ...props }: Props & { standIn: StandIn; common: readonly string[] }) {
  const { labelOf, formula } = props
  const { grade, lines, open } = standIn
  const labelOfRole = useRoleLabels()
  const notes: ReactNode[] = [
    ...inAll(standIn, props),
    ...ownNotes(standIn, common).map((note) => <Said key={note}>{note}</Said>),
    ...(open.length > 0 ? [T.openJobs(open.map((role) => lowered(labelOfRole(role))).join(', '))] : []),
    standIn.formula ? costNote({ before: formula, after: standIn.formula, labelOf, money: props.money }) : '',
  ].filter((note) => note !== '')
  return (
    <li>
      {lines.map(({ ingredient }, at) => (
        <span key={ingredient}>
          {at > 0 && ' + '}
          <b>{labelOf(ingredient)}</b> {shareText(doseOf(standIn, ingredient))}
        </span>
      ))}
      {grade === 'workable' && <i>, {T.workable}</i>}
      {notes.length > 0 && (
        <small>
          {notes.map((note, at) => (
            <Fragment key={at}>; {note}</Fragment>
          ))}
        </small>
      )}
      {isDangerous(standIn) && <small className="danger">. {T.dangerous}</small>}
    </li>
  )
}

/** The stand-ins of a line, best first; or that there is none, and why. */
export function SheetStandIns(props: Props) {
  const { line } = props
  if (line.standIns.length === 0) {
    return (
      <p>
        <strong>{line.irreplaceable ? T.irreplaceable : T.notKnown}</strong> <Said>{line.why}</Said>
      </p>
    )
  }
  const common = commonNotes(line)
  return (
    <>
      <ol>
        {line.standIns.map((standIn) => (
          <One
            key={standIn.lines.map(({ ingredient }) => ingredient).join('+')}
            {...props}
            standIn={standIn}
            common={common}
          />
        ))}
      </ol>
      {common.length > 0 && (
        <small>
          <Said>{T.forAll(common.join('; '))}</Said>
        </small>
      )}
    </>
  )
}
