import { readFileSync } from 'node:fs'

/** One worked example on preservatives as it is printed. */
export interface Printed {
  id: string
  topic: string
  inputs: Record<string, unknown>
  expected: Record<string, unknown>
  tolerance: string
  source_id: string
  access: string
  flag?: string
}

const FILE = new URL('../../reference/preservation/worked-examples.json', import.meta.url)

export const printedExamples = (): Printed[] =>
  (JSON.parse(readFileSync(FILE, 'utf8')) as { examples: Printed[] }).examples

const of = (values: Record<string, unknown>, key: string): number => {
  const value = values[key]
  if (typeof value !== 'number') throw new Error(`${key}: no number`)
  return value
}

/** A number among the inputs of an example. */
export const input = ({ inputs }: Printed, key: string): number => of(inputs, key)
/** A number among the expected values. */
export const expected = ({ expected: values }: Printed, key: string): number => of(values, key)
