import type { Problem } from '#engine/model/records.ts'
import type { Knowledge } from '#engine/knowledge/knowledge.ts'
import type { RawData } from '#engine/knowledge/raw.ts'

/** What a lint may look things up in: everything that was read, without the faults found in it. */
export type Vocabulary = Omit<Knowledge, 'version' | 'names' | 'words' | 'languages' | 'problems'>

/** Checks all records and gives every fault, each with file and path. */
export type Lint = (raw: RawData, vocabulary: Vocabulary) => Problem[]
