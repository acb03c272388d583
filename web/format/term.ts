import { text } from '#web/text/text.ts'

/** A property or criterion as a person reads it. */
export const termWords = (id: string): string => text.terms[id] ?? id.replaceAll(/[-_:]/g, ' ')

/** Unit as shown beside a value; nothing where the words of the property say it already. */
export function unitWords(property: string, unit: string): string {
  if (unit === 'C') return property === 'chain_length' ? '' : '°C'
  return unit === '1' || unit === 'pH' || unit === '1/mol' ? '' : unit
}
