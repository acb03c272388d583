import type { LineFault } from '#web/state/teach-letters.ts'
import { teach } from '#web/text/teach.ts'

const T = teach.results.faults

/** What is wrong with letters or with a pasted line, in words. */
export function faultWords(fault: LineFault): string {
  if (fault.code === 'count') return T.count(fault.got, fault.expected)
  if (fault.code === 'letter') return T.letter(fault.question, fault.got, fault.last)
  return fault.code === 'twice' ? T.twice(fault.name) : T[fault.code]
}
