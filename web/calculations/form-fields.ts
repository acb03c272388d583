/** The part of a JSON schema that a form is made from. */
interface Schema {
  type?: string
  enum?: string[]
  minimum?: number
  exclusiveMinimum?: number
  maximum?: number
  exclusiveMaximum?: number
  minItems?: number
  maxItems?: number
  maxLength?: number
  description?: string
  required?: string[]
  properties?: Record<string, Schema>
  items?: Schema
}

export interface CellField {
  /** name in the input; empty where a row is one plain text */
  key: string
  kind: 'number' | 'text' | 'oil' | 'choice'
  optional: boolean
  says?: string
  choices: readonly string[]
  longest: number
  min?: number
  max?: number
  /** the limit itself does not count */
  over?: boolean
  under?: boolean
  whole?: boolean
}

export interface RowsField {
  key: string
  kind: 'rows'
  optional: boolean
  says?: string
  least: number
  most: number
  cells: CellField[]
}

export type Field = CellField | RowsField

/** Fields that name a record; a person types any of its names. */
const NAMES_A_RECORD = new Set(['ingredient', 'from', 'to'])
const LONGEST = 200
const MOST_ROWS = 20

function kindOf(key: string, { type, enum: choices }: Schema): CellField['kind'] {
  if (choices) return 'choice'
  if (type === 'number' || type === 'integer') return 'number'
  return NAMES_A_RECORD.has(key) ? 'oil' : 'text'
}

function limitsOf({ type, minimum, exclusiveMinimum, maximum, exclusiveMaximum }: Schema): Partial<CellField> {
  const min = exclusiveMinimum ?? minimum
  const max = exclusiveMaximum ?? maximum
  return {
    ...(min !== undefined && { min }),
    ...(max !== undefined && { max }),
    ...(exclusiveMinimum !== undefined && { over: true }),
    ...(exclusiveMaximum !== undefined && { under: true }),
    ...(type === 'integer' && { whole: true }),
  }
}

const cellOf = (key: string, schema: Schema, optional: boolean): CellField => ({
  key,
  kind: kindOf(key, schema),
  optional,
  choices: schema.enum ?? [],
  longest: Math.min(schema.maxLength ?? LONGEST, LONGEST),
  ...(schema.description !== undefined && { says: schema.description }),
  ...limitsOf(schema),
})

function fieldOf(key: string, schema: Schema, optional: boolean): Field {
  if (schema.type !== 'array') return cellOf(key, schema, optional)
  const { items = {}, minItems = 0, maxItems = MOST_ROWS, description } = schema
  const cells = items.properties
    ? Object.entries(items.properties).map(([name, one]) => cellOf(name, one, !items.required?.includes(name)))
    : [cellOf('', items, false)]
  return {
    key,
    kind: 'rows',
    optional,
    least: minItems,
    most: Math.min(maxItems, MOST_ROWS),
    cells,
    ...(description !== undefined && { says: description }),
  }
}

/** The fields of a form for an input, in the order of its schema; lists of records or words become rows. */
export function fieldsOf(input: unknown): Field[] {
  const { properties = {}, required = [] } = input as Schema
  return Object.entries(properties).map(([key, schema]) => fieldOf(key, schema, !required.includes(key)))
}
