import { rightShare } from '#web/state/teach-marks.ts'
import type { Tally } from '#web/state/teach-marks.ts'
import { teach } from '#web/text/teach.ts'

const T = teach.results

/** "3 of 4" and the share; not known where nothing could be marked. */
export function ShareCells({ tally }: { tally: Pick<Tally, 'right' | 'of'> }) {
  const share = rightShare(tally)
  return (
    <>
      <td data-head={T.columns.right}>{share === null ? '' : T.right(tally.right, tally.of)}</td>
      <td data-head={T.columns.share}>{share === null ? T.notKnown : T.share(share)}</td>
    </>
  )
}
