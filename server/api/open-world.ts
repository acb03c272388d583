import { buildKnowledge, buildWorld } from '#engine/index.ts'
import type { RawData, World } from '#engine/index.ts'

/** Data that cannot be worked with: every fault with file and path, so that one reading is enough to mend them. */
export class FaultyData extends Error {
  override readonly name = 'FaultyData'

  constructor(readonly problems: readonly { path: string; message: string }[]) {
    super(
      [
        `graph-data has ${problems.length} faults; the server does not start on faulty data:`,
        ...problems.map(({ path, message }) => `  ${path}: ${message}`),
      ].join('\n'),
    )
  }
}

/** The world that all routes ask. @throws FaultyData when a data lint objects */
export function openWorld(raw: RawData): World {
  const knowledge = buildKnowledge(raw)
  if (knowledge.problems.length > 0) throw new FaultyData(knowledge.problems)
  return buildWorld(knowledge)
}
