import { Errors } from 'typebox/value'
import type { TSchema } from 'typebox'
import type { ApiError } from './api-error.ts'
import { schemaFault } from './schema-fault.ts'
import type { SchemaFault } from './schema-fault.ts'

/** Names of parameters that the two validators spell in another way. */
const firstOf = (value: unknown): unknown => (Array.isArray(value) ? value[0] : undefined)

/** The fault as the server's validator states it, so that both read the same. */
function asStated({ keyword, instancePath, schemaPath, params, message }: SchemaFault): SchemaFault {
  const stated = {
    ...params,
    additionalProperty: firstOf(params['additionalProperties']),
    missingProperty: firstOf(params['requiredProperties']),
  }
  const says = message?.replace(/^must not /, 'must NOT ')
  return { keyword, instancePath, schemaPath, params: stated, ...(says !== undefined && { message: says }) }
}

/** The first fault; where no alternative fits, all that was said of the alternatives. */
function firstFault(all: readonly SchemaFault[]): SchemaFault[] {
  const faults = all.filter(({ keyword }) => keyword !== 'boolean') // said again as additionalProperties
  const [first] = faults
  const [, union] = /^(.*?)\/anyOf\/\d+/.exec(first?.schemaPath ?? '') ?? []
  if (!first || union === undefined) return first ? [first] : []
  const end = faults.findIndex(({ keyword, schemaPath }) => keyword === 'anyOf' && schemaPath === union)
  return faults.slice(0, end + 1)
}

/**
 * Checks a value against a schema without compiling code, which a strict content policy would refuse.
 *
 * @param where body, querystring or params
 * @returns what the server would answer to this value, null when it fits
 */
export function faultOf(schema: TSchema, value: unknown, where: string): ApiError | null {
  const faults = firstFault(Errors(schema, value) as unknown as SchemaFault[])
  return faults.length > 0 ? schemaFault(faults.map(asStated), where) : null
}
