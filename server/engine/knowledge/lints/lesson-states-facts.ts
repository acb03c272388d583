import { isObject } from '#engine/knowledge/expand-claims.ts'
import type { Statement } from '#engine/model/lesson.ts'
import { judgeFact } from './lesson-facts.ts'
import type { Lint } from './lint.ts'

/** Guards against a lesson that says what the records do not: learners would carry it on. */
export const lessonStatesFacts: Lint = (raw, words) =>
  (raw.lessons ?? []).flatMap(({ path, data }) => {
    const states = isObject(data) && Array.isArray(data['states']) ? data['states'] : []
    return states.flatMap((statement: unknown, at) => {
      if (!isObject(statement)) return []
      const judged = judgeFact(words, statement as Statement)
      if (judged === null || judged.holds) return []
      return [{ path: `${path}/states/${at}`, message: `"${String(statement['says'])}": ${judged.found}` }]
    })
  })
