import type { Formula } from '#engine/model/formula.ts'
import type { PracticeFormula } from '#engine/model/learn.ts'
import { isObject } from './expand-claims.ts'
import type { RawFile } from './raw.ts'

/** Recipes to practise on, by id. Their shape is tested against the schema of formulas, with the real data. */
export const expandPractice = (files: readonly RawFile[]): PracticeFormula[] =>
  files
    .flatMap(({ data }) => (isObject(data) && isObject(data['formula']) ? [data] : []))
    .map((data) => ({ id: String(data['id']), title: String(data['title']), formula: data['formula'] as Formula }))
    .sort((a, b) => (a.id < b.id ? -1 : 1))
