import { attributionFor } from '#engine/knowledge/expand-terms.ts'
import type { Claim } from '#engine/model/records.ts'
import { csvOf } from './csv.ts'
import type { Cell } from './csv.ts'
import type { Subject } from './subject.ts'
import type { World } from './world.ts'

const HEADS = [
  'ingredient',
  'inci',
  'property',
  'value',
  'min',
  'max',
  'text',
  'unit',
  'kind',
  'source',
  'locator',
  'access',
  'date',
  'conditions',
  'note',
  'used',
  'claim',
  'licence',
  'attribution',
  'graph_version',
] as const

/** "C18:1 = 40; C18:2 = 12" for values that are several. */
const several = (values: Readonly<Record<string, number | string>>): string =>
  Object.entries(values)
    .map(([name, value]) => `${name} = ${value}`)
    .join('; ')

const textOf = ({ is, spectrum, shares }: Claim): string | undefined =>
  is ?? (spectrum ? several(spectrum) : shares ? several(shares) : undefined)

function rowOf({ knowledge }: World, { id, inci }: Subject, claim: Claim): Cell[] {
  const { terms, version } = knowledge
  const attribution = attributionFor(terms, claim.source)
  return [
    id,
    inci,
    claim.property,
    claim.value,
    claim.min,
    claim.max,
    textOf(claim),
    claim.unit,
    claim.kind,
    claim.source,
    claim.locator,
    claim.access,
    claim.date,
    claim.conditions,
    claim.note,
    claim.used ? 'yes' : 'no',
    claim.id,
    terms.licence.title,
    attribution?.credit ?? terms.credit,
    version,
  ]
}

/**
 * Every statement about an ingredient, or about all that are recorded, as comma-separated text: a row a claim, each with
 * its origin, licence, attribution and the version of the graph.
 * What may be given singly only stands in the table of its one ingredient and not in that of all.
 * @param subject the one asked for; all when left out
 */
export function exportClaims(world: World, subject?: Subject): string {
  const { terms } = world.knowledge
  const isOpen = (claim: Claim): boolean =>
    subject !== undefined || attributionFor(terms, claim.source)?.singleOnly !== true
  const rows = (subject ? [subject] : world.subjects).flatMap((one) =>
    [...one.facts.values()]
      .flat()
      .filter(isOpen)
      .map((claim) => rowOf(world, one, claim)),
  )
  return csvOf(HEADS, rows)
}
