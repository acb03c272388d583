import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { doseOf } from '#engine/dose/dose.ts'
import type { DoseQuestion } from '#engine/dose/dose.ts'
import { numberOf } from '#engine/graph/subject.ts'
import { english } from '#engine/words/say.ts'
import type { DoseBasis, PlaysRole } from '#engine/model/records.ts'
import { makeWorld } from '../../helpers.ts'

type Facts = Record<string, unknown>

function question(basis: DoseBasis, missing: Facts, stand: Facts, more: Partial<DoseQuestion> = {}): DoseQuestion {
  const world = makeWorld({
    ingredients: [
      { id: 'missing', inci: 'MISSING', roles: [], facts: missing },
      { id: 'stand', inci: 'STAND', roles: [], facts: stand },
    ],
  })
  return {
    basis,
    say: english,
    missing: world.find('missing')!,
    stand: world.find('stand')!,
    share_percent: 4,
    missingClaim: undefined,
    standClaim: undefined,
    equivalentsOf: (subject) => numberOf(subject, 'equivalents'),
    ...more,
  }
}

const claim = (typical: number, min?: number, max?: number) =>
  ({
    role: 'x',
    level_percent: { typical, ...(min !== undefined && { min }), ...(max !== undefined && { max }) },
  }) as PlaysRole

const share = fc.double({ min: 0.05, max: 29, noNaN: true })
const strength = fc.double({ min: 5, max: 100, noNaN: true })
const molar = fc.double({ min: 30, max: 600, noNaN: true })
const equivalents = fc.integer({ min: 1, max: 6 })

describe('equal active matter', () => {
  test('is kept whatever the strengths', () =>
    fc.assert(
      fc.property(share, strength, strength, (share_percent, old, fresh) => {
        const dose = doseOf(
          question('active-matter', { active_percent: old }, { active_percent: fresh }, { share_percent }),
        )
        expect((dose.share_percent * fresh) / 100).toBeCloseTo((share_percent * old) / 100, 9)
        expect(dose.unknown).toEqual([])
      }),
      { numRuns: 50 },
    ))

  test('there and back is the first dose', () =>
    fc.assert(
      fc.property(share, strength, strength, (share_percent, a, b) => {
        const there = doseOf(question('active-matter', { active_percent: a }, { active_percent: b }, { share_percent }))
        const back = doseOf(
          question(
            'active-matter',
            { active_percent: b },
            { active_percent: a },
            { share_percent: there.share_percent },
          ),
        )
        expect(back.share_percent).toBeCloseTo(share_percent, 9)
      }),
      { numRuns: 30 },
    ))

  test('goes by what the bottle says before what is usual', () => {
    const dose = doseOf(
      question('active-matter', { active_percent: 30 }, { active_percent: 50 }, { strength_percent: 60 }),
    )
    expect(dose.share_percent).toBeCloseTo(4.8, 9)
  })

  test('a strength that nobody knows is told and not guessed', () => {
    const dose = doseOf(question('active-matter', { active_percent: 30 }, {}))
    expect(dose).toMatchObject({ share_percent: 4, unknown: ['active_percent'] })
  })

  // The strength of the missing one is as necessary as that of the stand-in.
  test('a missing one of unknown strength is told too', () => {
    expect(doseOf(question('active-matter', {}, { active_percent: 30 })).unknown).toEqual(['active_percent'])
  })
})

describe('equal equivalents', () => {
  test('of acid or base are kept', () =>
    fc.assert(
      fc.property(share, molar, equivalents, molar, equivalents, strength, (share_percent, m1, e1, m2, e2, active) => {
        const dose = doseOf(
          question(
            'equivalents',
            { molar_mass: m1, equivalents: e1 },
            { molar_mass: m2, equivalents: e2, active_percent: active },
            { share_percent },
          ),
        )
        const moles = (share_percent / m1) * e1
        expect((((dose.share_percent * active) / 100) * e2) / m2).toBeCloseTo(moles, 9)
      }),
      { numRuns: 50 },
    ))

  test('potassium hydroxide weighs 1.40 times as much as sodium hydroxide', () => {
    const dose = doseOf(
      question('equivalents', { molar_mass: 40, equivalents: 1 }, { molar_mass: 56.11, equivalents: 1 }),
    )
    expect(dose.share_percent / 4).toBeCloseTo(1.403, 3)
  })

  test('a molar mass that nobody knows is told', () =>
    expect(doseOf(question('equivalents', { molar_mass: 40, equivalents: 1 }, {})).unknown).toEqual([
      'molar_mass',
      'equivalents',
    ]))
})

describe('equal effect', () => {
  test('keeps the place in the usual range', () => {
    const dose = doseOf(
      question('strength', {}, {}, { missingClaim: claim(0.5), standClaim: claim(1.5), share_percent: 0.4 }),
    )
    expect(dose.share_percent).toBeCloseTo(1.2, 12)
  })
  test('without a usual level it is the same mass, and that is told', () =>
    expect(doseOf(question('strength', {}, {}))).toMatchObject({ share_percent: 4, unknown: ['level_percent'] }))
})

describe('its own usual level', () => {
  test('is never left, however the missing one was dosed', () =>
    fc.assert(
      fc.property(share, (share_percent) => {
        const dose = doseOf(
          question(
            'own-level',
            {},
            {},
            { missingClaim: claim(4, 2, 6), standClaim: claim(1, 0.5, 1.2), share_percent },
          ),
        )
        expect(dose.share_percent).toBeGreaterThanOrEqual(0.5)
        expect(dose.share_percent).toBeLessThanOrEqual(1.2)
      }),
    ))
})

describe('a stated ratio of the pair', () => {
  test('goes before the usual levels', () => {
    const more = { ratio: 0.8, missingClaim: claim(1), standClaim: claim(5) }
    expect(doseOf(question('strength', {}, {}, more)).share_percent).toBeCloseTo(3.2, 12)
  })
  test('of what is dosed by its own level ends at its usual upper level, and says so', () => {
    const dose = (ratio: number) => doseOf(question('own-level', {}, {}, { ratio, standClaim: claim(5, 2, 10) }))
    expect(dose(2)).toMatchObject({ share_percent: 8, how: '2 times as much' })
    expect(dose(4)).toMatchObject({ share_percent: 10 })
    expect(dose(4).how).toMatch(/would be 16 %; kept to the 10 %/)
  })
  test('does not go before active matter', () => {
    const dose = doseOf(question('active-matter', { active_percent: 30 }, { active_percent: 60 }, { ratio: 1 }))
    expect(dose.share_percent).toBe(2)
  })
})

describe('what makes up a third of a product', () => {
  const dose = (basis: 'strength' | 'own-level', typicalMissing: number, typicalStand: number) =>
    doseOf(
      question(
        basis,
        {},
        {},
        {
          missingClaim: claim(typicalMissing, 1, 5),
          standClaim: claim(typicalStand, 0.5, 5),
          share_percent: 45,
        },
      ),
    ).share_percent

  // Makers who tried both use about half as much candelilla as beeswax (source web-wax): also in a balm of one third wax.
  test('takes less of what is twice as strong', () => expect(dose('strength', 2, 1)).toBe(22.5))
  test('never takes more than there was', () => expect(dose('strength', 1, 2)).toBe(45))
  test('is no place for a usual level', () => expect(dose('own-level', 2, 1)).toBe(45))
})
