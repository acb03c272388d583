import { describe, expect, test } from 'vitest'
import { mayStop } from '#engine/model/claim.ts'
import { evidenceOf } from '#engine/model/evidence.ts'
import { realWorld } from '../../helpers.ts'

const code = (
  access: 'read' | 'secondary' | 'memory' | 'common-practice',
  kind: 'measured' | 'law' | 'assertion' | 'derived',
) => evidenceOf({ id: 'x#y/0', access, kind }).code

describe('kind of evidence', () => {
  // Evidence and Conclusion Ontology, release of 2020-01-03: 269 experiment, 303 statement without and 304 with
  // reference, 305 inferred by a curator, 306 background knowledge, 501 automatic.
  test.each([
    ['read', 'measured', 'ECO:0000269'],
    ['secondary', 'measured', 'ECO:0000304'],
    ['read', 'law', 'ECO:0000304'],
    ['read', 'assertion', 'ECO:0000304'],
    ['memory', 'measured', 'ECO:0000303'],
    ['memory', 'assertion', 'ECO:0000303'],
    ['common-practice', 'assertion', 'ECO:0000306'],
    ['memory', 'derived', 'ECO:0000305'],
    ['read', 'derived', 'ECO:0000305'],
  ] as const)('%s and %s is %s', (access, kind, expected) => expect(code(access, kind)).toBe(expected))

  test('what the program works out is automatic, whatever it rests on', () => {
    expect(evidenceOf({ id: 'olive#iodine_value/derived', access: 'read', kind: 'derived' }).code).toBe('ECO:0000501')
  })

  test('nothing remembered counts as an experiment, and nothing remembered may stop a formula', () => {
    const claims = [...realWorld().knowledge.ingredients.values()].flatMap((one) => [...one.facts.values()].flat())
    const remembered = claims.filter(({ access }) => access === 'memory' || access === 'common-practice')
    expect(remembered.length).toBeGreaterThan(1000)
    expect(remembered.filter((claim) => evidenceOf(claim).code === 'ECO:0000269')).toEqual([])
    expect(remembered.filter((claim) => mayStop(claim))).toEqual([])
  })
})
