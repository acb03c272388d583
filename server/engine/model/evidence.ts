import { Type } from 'typebox'
import type { Static } from 'typebox'
import { Claim } from './claim.ts'
import type { Provenance } from './claim.ts'

const closed = { additionalProperties: false }

/**
 * What kind of evidence stands behind a claim, as a term of the open Evidence and Conclusion Ontology (CC0 1.0).
 * Labels as printed in its release of 2020-01-03 (eco.obo, read), that of ECO:0000269 in an issue that quotes it
 * (read), that of ECO:0000501 in the terms that derive from it (read).
 */
export const Evidence = Type.Object(
  {
    code: Type.String({ description: 'Identifier in the Evidence and Conclusion Ontology' }),
    label: Type.String({ description: 'Its label there' }),
  },
  closed,
)
export type Evidence = Static<typeof Evidence>

const EXPERIMENT = { code: 'ECO:0000269', label: 'experimental evidence used in manual assertion' }
const NO_REFERENCE = {
  code: 'ECO:0000303',
  label: 'author statement without traceable support used in manual assertion',
}
const REFERENCE = {
  code: 'ECO:0000304',
  label: 'author statement supported by traceable reference used in manual assertion',
}
const INFERRED = { code: 'ECO:0000305', label: 'curator inference used in manual assertion' }
const BACKGROUND = {
  code: 'ECO:0000306',
  label: 'inference from background scientific knowledge used in manual assertion',
}
const AUTOMATIC = { code: 'ECO:0000501', label: 'evidence used in automatic assertion' }

/** How a value was seen decides first; only what was read in the source can count as its experiment. */
const TABLE: Record<Provenance['access'], Partial<Record<Provenance['kind'], Evidence>> & { other: Evidence }> = {
  read: { measured: EXPERIMENT, derived: INFERRED, other: REFERENCE },
  secondary: { derived: INFERRED, other: REFERENCE },
  memory: { derived: INFERRED, other: NO_REFERENCE },
  'common-practice': { derived: INFERRED, other: BACKGROUND },
}

const FROM_CLASS = /\/class(?:-\d+)?$/

/** Taken over from the statement of a class or role. */
export const isFromClass = ({ id }: Pick<Claim, 'id'>): boolean => FROM_CLASS.test(id)

/** The program put it together by itself: worked out from other values, or taken over from a class or role. */
export const isByProgram = (claim: Pick<Claim, 'id'>): boolean => claim.id.endsWith('/derived') || isFromClass(claim)

/** Kind of evidence of a claim, from how it was seen and what it is. A value that the program works out is automatic. */
export function evidenceOf({ id, access, kind }: Pick<Claim, 'id' | 'access' | 'kind'>): Evidence {
  if (isByProgram({ id })) return AUTOMATIC
  const row = TABLE[access]
  return row[kind] ?? row.other
}

/** A claim as it goes out: with its kind of evidence, which is never stored. */
export const DescribedClaim = Type.Object({ ...Claim.properties, evidence: Evidence }, closed)
export type DescribedClaim = Static<typeof DescribedClaim>
