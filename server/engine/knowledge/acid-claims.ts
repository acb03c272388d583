import type { Claim } from '#engine/model/records.ts'
import type { AcidCompound, AcidStep, AcidTable } from './acids.ts'

const ROOM_C = 25
const NEAR_ROOM_C = 5
const SEEN_ON = '2026-11-27'

const isNearRoom = ({ temp_c }: AcidStep): boolean => Math.abs(temp_c - ROOM_C) <= NEAR_ROOM_C

/** The free acid or base itself: one acid, no ions that came with it. An amino acid has no first step to go by. */
function isFree({ acids, ions }: AcidCompound): boolean {
  const [first] = acids
  const isAminoAcid = first !== undefined && first.acid.charge > 0 && first.acid.steps.length > 1
  return acids.length === 1 && ions.length === 0 && !isAminoAcid
}

function claimOf(id: string, step: AcidStep, property: string, conditions?: string): Claim {
  const { pka, source, locator, access } = step
  return {
    id,
    property,
    value: pka,
    unit: '1',
    kind: access === 'memory' ? 'assertion' : 'measured',
    source,
    locator: locator || 'table of acid constants',
    access,
    date: SEEN_ON,
    ...(conditions && { conditions }),
    used: false,
  }
}

/**
 * Acid constants of the table as claims of their ingredients: the first step of a free acid or base as `acid_pka`,
 * further steps and those of a salt's acid under a name of their own, to be read by people.
 */
export function acidClaims({ byIngredient }: AcidTable): Map<string, Claim[]> {
  return new Map(
    [...byIngredient].map(([id, compound]) => {
      const claims = compound.acids.flatMap(({ acid }, which) =>
        acid.steps.filter(isNearRoom).map((step, at) => {
          const place = `pka/${id}/${which}-${at}`
          return at === 0 && isFree(compound) && !acid.apparent
            ? claimOf(place, step, 'acid_pka')
            : claimOf(place, step, 'acid_constant', `${acid.name}, step ${step.step}, ${step.temp_c} C`)
        }),
      )
      return [id, claims] as const
    }),
  )
}
