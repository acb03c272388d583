import { readdirSync, readFileSync } from 'node:fs'
import { CORE_SCHEMA, load } from 'js-yaml'
import type { Formula } from '#engine/model/formula.ts'
import { deepFrozen } from '../helpers.ts'

export interface NamedFormula {
  name: string
  /** first line of the file: why it is here */
  why: string
  formula: Formula
}

/** All formulas of this folder, frozen, so that whoever writes to one is caught. */
export const FORMULAS: readonly NamedFormula[] = readdirSync(import.meta.dirname)
  .filter((file) => file.endsWith('.yaml'))
  .sort()
  .map((file) => {
    const text = readFileSync(`${import.meta.dirname}/${file}`, 'utf8')
    return {
      name: file.replace(/\.yaml$/, ''),
      why: /^# (.+)/.exec(text)?.[1] ?? '',
      formula: deepFrozen(load(text, { schema: CORE_SCHEMA }) as Formula),
    }
  })
