import type { Problem } from '#engine/model/records.ts'
import type { RawData } from '#engine/knowledge/raw.ts'
import { blendAddsUp } from './blend-adds-up.ts'
import { idMatchesName } from './id-matches-name.ts'
import type { Lint, Vocabulary } from './lint.ts'
import { rangeIsOrdered } from './range-is-ordered.ts'
import { selectorIsKnown } from './selector-is-known.ts'
import { sourceIsListed } from './source-is-listed.ts'
import { wordIsKnown } from './word-is-known.ts'

export const LINTS: Readonly<Record<string, Lint>> = {
  'blend-adds-up': blendAddsUp,
  'id-matches-name': idMatchesName,
  'range-is-ordered': rangeIsOrdered,
  'selector-is-known': selectorIsKnown,
  'source-is-listed': sourceIsListed,
  'word-is-known': wordIsKnown,
}

export const lintRawRecords = (raw: RawData, vocabulary: Vocabulary): Problem[] =>
  Object.values(LINTS).flatMap((lint) => lint(raw, vocabulary))
