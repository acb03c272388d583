import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { calculate, CALCULATIONS } from '#engine/index.ts'
import { CALCULATION_INPUTS } from '#engine/model/inputs/index.ts'
import type { CalculationName } from '#engine/model/inputs/index.ts'
import { realWorld } from '../../helpers.ts'

interface Schema {
  type?: string
  enum?: unknown[]
  pattern?: string
  minimum?: number
  maximum?: number
  exclusiveMinimum?: number
  exclusiveMaximum?: number
  minItems?: number
  items?: Schema
  required?: string[]
  properties?: Record<string, Schema>
}

const WORDS = [
  'olea-europaea-fruit-oil',
  'cocos-nucifera-oil',
  'squalane',
  'citric-acid',
  'citric acid',
  '-OH (free)',
  '-SO4Na',
]
const ACIDS = ['C18:1', 'C16:0', 'C18:2', 'C18:1-OH', 'C22:6n3']

function numbers({ minimum, maximum, exclusiveMinimum, exclusiveMaximum }: Schema): fc.Arbitrary<number> {
  const edges = [minimum, maximum].filter((edge) => edge !== undefined)
  const least = exclusiveMinimum === undefined ? [] : [exclusiveMinimum + Number.MIN_VALUE, exclusiveMinimum + 1e-9]
  const between = fc.double({
    min: minimum ?? exclusiveMinimum ?? -1e9,
    max: maximum ?? exclusiveMaximum ?? 1e9,
    minExcluded: exclusiveMinimum !== undefined,
    maxExcluded: exclusiveMaximum !== undefined,
    noNaN: true,
  })
  return edges.length + least.length === 0 ? between : fc.oneof(between, fc.constantFrom(...edges, ...least))
}

/** Anything that a schema of the calculations takes, its edges often. */
function anyOf(schema: Schema): fc.Arbitrary<unknown> {
  if (schema.enum) return fc.constantFrom(...schema.enum)
  if (schema.type === 'integer') return fc.integer({ min: schema.minimum!, max: schema.maximum! })
  if (schema.type === 'number') return numbers(schema)
  if (schema.type === 'string') return fc.constantFrom(...(schema.pattern?.startsWith('^C') ? ACIDS : WORDS))
  if (schema.type === 'array') return fc.array(anyOf(schema.items!), { minLength: schema.minItems ?? 0, maxLength: 4 })
  const parts = Object.entries(schema.properties ?? {}).map(([name, part]) => [name, anyOf(part)] as const)
  return fc.record(Object.fromEntries(parts), { requiredKeys: schema.required ?? [] })
}

const world = realWorld()

describe.each(Object.keys(CALCULATIONS) as CalculationName[])('%s', (name) => {
  test('answers any question of its schema with finite figures, or says which argument does not go', () =>
    fc.assert(
      fc.property(anyOf(CALCULATION_INPUTS[name] as Schema), (input) => {
        try {
          const { values, steps } = calculate(world, name, input as never)
          for (const value of [...Object.values(values), ...steps.map((step) => step.value)]) {
            expect(Number.isFinite(value), `${value} of ${JSON.stringify(steps)}`).toBe(true)
          }
        } catch (error) {
          if (!(error instanceof RangeError)) throw error
          const properties = Object.keys((CALCULATION_INPUTS[name] as Schema).properties ?? {})
          expect(properties).toContain(/^[a-z0-9_]+/.exec(error.message)?.[0])
        }
      }),
      { numRuns: 150 },
    ))
})
