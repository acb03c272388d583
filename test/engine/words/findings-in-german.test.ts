import { describe, expect, test } from 'vitest'
import { checkFormula } from '#engine/checks/report.ts'
import { inLanguage } from '#engine/graph/in-language.ts'
import type { World } from '#engine/graph/world.ts'
import type { Finding } from '#engine/model/finding.ts'
import type { Formula } from '#engine/model/formula.ts'
import { realWorld } from '../../helpers.ts'
import { pseudoWorld } from './pseudo.ts'
import { leftover, namesIn } from './unmarked.ts'

const world = realWorld()
const german = inLanguage(world, 'de')
const pseudo = pseudoWorld(world)

/** Every worked case of every rule, and the recipes of practice. */
const formulas: readonly Formula[] = [
  ...[...world.knowledge.rules.values()].flatMap(({ fires }) => fires as Formula[]),
  ...world.knowledge.practice.map(({ formula }) => formula),
]

/** The same formulas with things left open or another market, for the sentences that say so. */
const opened: readonly Formula[] = formulas.flatMap((formula) => [
  formula,
  { ...formula, ph: null, hottest_c: null },
  { ...formula, market: 'us', product: 'leave-on', areas: ['eye', 'lip', 'under-3'] } satisfies Formula,
])

const found = new Map<World, Map<Formula, Finding[]>>()

/** Findings of a formula in a world, worked out once. */
function findingsIn(where: World, formula: Formula): Finding[] {
  const known = found.get(where) ?? new Map<Formula, Finding[]>()
  found.set(where, known)
  const findings = known.get(formula) ?? checkFormula(where, formula).findings
  known.set(formula, findings)
  return findings
}

/** All of a finding but its words. */
const bones = ({ rule, severity, about, sources, because }: Finding) => ({
  ...{ rule, severity, about, sources },
  claims: because.map(({ claim }) => claim),
})

const wordsOf = ({ message, remedy, because }: Finding): string[] => [
  message,
  ...(remedy === undefined ? [] : [remedy]),
  ...because.map(({ fact }) => fact),
]

describe('the German world', () => {
  test('speaks German', () => expect(german.say.language).toBe('de'))

  test('finds what the English one finds, in the same order', () => {
    for (const formula of opened) {
      expect(findingsIn(german, formula).map(bones)).toEqual(findingsIn(world, formula).map(bones))
    }
  })

  test('says each finding in other words', () => {
    const same = formulas.flatMap((formula) => {
      const inEnglish = new Set(findingsIn(world, formula).map(({ message }) => message))
      return findingsIn(german, formula).filter(({ message }) => inEnglish.has(message))
    })
    expect(same).toEqual([])
  })

  test('writes no decimal point', () => {
    const texts = opened.flatMap((formula) => findingsIn(german, formula).flatMap(({ message }) => message))
    expect(texts.length).toBeGreaterThan(1000)
    expect([...new Set(texts)].filter((text) => /\d\.\d/.test(text) && !NUMBERED.test(text))).toEqual([])
  })
})

/** Numbers of paragraphs have a point in every language. */
const NUMBERED = /CFR/

test('no sentence of a finding is left unmarked', () => {
  const left = new Map<string, string>()
  for (const formula of opened) {
    const own = namesIn(formula, pseudo)
    for (const finding of findingsIn(pseudo, formula)) {
      for (const text of wordsOf(finding)) {
        if (!left.has(text)) left.set(text, leftover(text, own))
      }
    }
  }
  expect(left.size).toBeGreaterThan(1000)
  const open = [...left].filter(([, rest]) => rest !== '')
  expect(open).toEqual([])
})
