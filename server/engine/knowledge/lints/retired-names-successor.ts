import { isObject } from '#engine/knowledge/expand-claims.ts'
import type { RawFile } from '#engine/knowledge/raw.ts'
import type { Lint, Vocabulary } from './lint.ts'

function faultsOf({ data }: RawFile, { ingredients, inventory }: Vocabulary): string[] {
  const retired = isObject(data) && isObject(data['retired']) ? data['retired'] : undefined
  if (!retired) return []
  const use: unknown[] = Array.isArray(retired['use']) ? retired['use'] : []
  return [
    ...(typeof retired['why'] === 'string' && retired['why'] !== '' ? [] : ['retired without a reason']),
    ...(typeof retired['on'] === 'string' ? [] : ['retired without a day']),
    ...(use.length > 0 ? [] : ['retired without a record to use instead']),
    ...use
      .map(String)
      .filter((id) => !ingredients.has(id) && !inventory.has(id))
      .map((id) => `${id}, to be used instead, is not known`),
  ]
}

/** Guards against a record that is put aside without a word: formulas that name it have to be led on. */
export const retiredNamesSuccessor: Lint = (raw, vocabulary) =>
  raw.ingredients.flatMap((file) =>
    faultsOf(file, vocabulary).map((message) => ({ path: `${file.path}/retired`, message })),
  )
