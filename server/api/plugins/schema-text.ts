/** The part of JSON Schema that the routes use. */
export interface JsonSchema {
  type?: string | string[]
  const?: unknown
  enum?: unknown[]
  anyOf?: JsonSchema[]
  properties?: Record<string, JsonSchema>
  patternProperties?: Record<string, JsonSchema>
  additionalProperties?: JsonSchema | boolean
  required?: string[]
  items?: JsonSchema
  description?: string
  pattern?: string
  minimum?: number
  maximum?: number
  exclusiveMinimum?: number
  minItems?: number
  maxItems?: number
  maxLength?: number
}

const INDENT = '  '

function bounds(schema: JsonSchema): string {
  const parts = [
    schema.exclusiveMinimum !== undefined && `above ${schema.exclusiveMinimum}`,
    schema.minimum !== undefined && `from ${schema.minimum}`,
    schema.maximum !== undefined && `to ${schema.maximum}`,
    schema.minItems !== undefined && `at least ${schema.minItems}`,
    schema.maxItems !== undefined && `at most ${schema.maxItems}`,
    schema.maxLength !== undefined && `at most ${schema.maxLength} characters`,
    schema.pattern !== undefined && `like ${schema.pattern}`,
  ].filter(Boolean)
  return parts.length > 0 ? ` (${parts.join(', ')})` : ''
}

function objectText(properties: Record<string, JsonSchema>, required: readonly string[], indent: string): string {
  const inner = indent + INDENT
  const lines = Object.entries(properties).map(([key, schema]) => {
    const says = schema.description === undefined ? '' : `   // ${schema.description}`
    return `${inner}${key}${required.includes(key) ? '' : '?'}: ${schemaText(schema, inner)}${says}\n`
  })
  return `{\n${lines.join('')}${indent}}`
}

/** A schema as people write it down: { lines: [ { ingredient: string } ] }. */
export function schemaText(schema: JsonSchema, indent = ''): string {
  if (schema.const !== undefined) return JSON.stringify(schema.const)
  if (schema.enum) return schema.enum.map((word) => JSON.stringify(word)).join(' | ')
  if (schema.anyOf) return schema.anyOf.map((one) => schemaText(one, indent)).join(' | ')
  if (schema.properties) return objectText(schema.properties, schema.required ?? [], indent)
  if (schema.items) return `[ ${schemaText(schema.items, indent)} ]${bounds(schema)}`
  const [values] = Object.values(schema.patternProperties ?? {})
  const any = values ?? (typeof schema.additionalProperties === 'object' ? schema.additionalProperties : undefined)
  if (any) return `{ [name]: ${schemaText(any, indent)} }`
  return `${[schema.type ?? 'any'].flat().join(' | ')}${bounds(schema)}`
}
