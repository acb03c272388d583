/** A worked case or decoy that is right and that the rule does not meet yet. The list may only shrink. */
export interface KnownGap {
  rule: string
  /** list of the rule file and place in it, from 0 */
  list: 'fires' | 'silent'
  at: number
  reason: string
}

export const KNOWN_GAPS: readonly KnownGap[] = []
