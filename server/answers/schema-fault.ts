import { ApiError } from './api-error.ts'

/** What a validator of JSON Schema says of a value: the words of ajv. */
export interface SchemaFault {
  keyword: string
  instancePath: string
  schemaPath: string
  params: Record<string, unknown>
  message?: string
}

/** A key of a caller may be as long as the body; nobody reads that. */
const LONGEST_KEY = 60

const WORDS: Record<string, string> = {
  string: 'a text',
  number: 'a finite number',
  integer: 'a whole number',
  object: 'an object',
  array: 'a list',
  boolean: 'true or false',
  null: 'null',
}

const PATTERNS: Record<string, string> = {
  '^[a-z0-9]+(-[a-z0-9]+)*$': 'must be an id: lower case letters and digits, joined by single hyphens',
  '^\\d{4}-\\d{2}-\\d{2}$': 'must be a day as YYYY-MM-DD',
  '^[1-9][0-9]{0,2}$': 'must be a whole number from 1 to 200',
  '^-?[0-9]{1,3}([.][0-9]{1,6})?$': 'must be a number such as 5.5',
}

const wordOf = (type: unknown): string => WORDS[String(type)] ?? String(type)

function textOf({ keyword, params, message = 'does not fit' }: SchemaFault): string {
  if (keyword === 'type') return `must be ${wordOf(params['type'])}`
  if (keyword === 'required') return 'is required'
  if (keyword === 'enum') return `must be one of ${(params['allowedValues'] as string[]).join(', ')}`
  if (keyword === 'const') return `must be ${JSON.stringify(params['allowedValue'])}`
  if (keyword === 'uniqueItems') return 'must NOT have duplicate items'
  if (keyword === 'pattern') return PATTERNS[String(params['pattern'])] ?? message
  return message
}

/** The fault to report: of several alternatives that all failed, the one that a value of the right type failed at. */
function tellingFault(faults: readonly SchemaFault[]): { fault: SchemaFault; text: string } | null {
  const [first] = faults
  if (!first) return null
  const tried = faults.filter(({ keyword }) => keyword !== 'anyOf')
  const alternatives = tried.length < faults.length
  const fault = tried.find(({ keyword }) => !alternatives || keyword !== 'type')
  if (fault) return { fault, text: textOf(fault) }
  return { fault: first, text: `must be ${tried.map(({ params }) => wordOf(params['type'])).join(' or ')}` }
}

const escaped = (key: string): string => key.replaceAll('~', '~0').replaceAll('/', '~1')

/** Inside a formula a pointer starts at the formula, whatever the body around it looks like. */
const belowFormula = (pointer: string): string => pointer.replace(/^\/formula(?=\/)/, '')

/** Turns what the validator found into the error that names the field. @param where body, querystring or params */
export function schemaFault(faults: readonly SchemaFault[], where: string): ApiError {
  const telling = tellingFault(faults)
  if (!telling) return new ApiError(400, 'bad-request', `${where}: does not fit`)
  const { fault, text } = telling
  const unknown: unknown = fault.params['additionalProperty']
  const missing: unknown = fault.params['missingProperty']
  const key = typeof unknown === 'string' ? unknown : missing
  const pointer = typeof key === 'string' ? `${fault.instancePath}/${escaped(key)}` : fault.instancePath
  const at = belowFormula(pointer)
  const short = at.length > LONGEST_KEY * 2 ? `${at.slice(0, LONGEST_KEY)}…` : at
  const says = typeof unknown === 'string' ? `unknown key "${unknown.slice(0, LONGEST_KEY)}"` : text
  const field = short.slice(1) || (where === 'querystring' ? 'query' : where)
  return new ApiError(400, 'bad-request', `${field}: ${says}`, short === at ? { at } : {})
}
