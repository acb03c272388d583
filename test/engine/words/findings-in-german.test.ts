import { describe, expect, test } from 'vitest'
import { buildContext } from '#engine/formula/build-context.ts'
import { nameOf } from '#engine/formula/say.ts'
import { MIXTURE_POLYMERS } from '#engine/chemistry/mixtures/mixture.ts'
import { checkFormula } from '#engine/checks/report.ts'
import { inLanguage } from '#engine/graph/in-language.ts'
import type { World } from '#engine/graph/world.ts'
import type { Finding } from '#engine/model/finding.ts'
import type { Formula } from '#engine/model/formula.ts'
import { realWorld } from '../../helpers.ts'
import { outsideBrackets, pseudoWorld } from './pseudo.ts'

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

/** What may stand outside the marked sentences, beside names of ingredients; with the reason. */
const ALLOWED: readonly RegExp[] = [
  /\b(?:EU|US)\b/g, // the market as its code
  /\bI{1,3}\b/g, // number of an annex
  /\b(?:[A-Z]+_[A-Z]+|[A-Z]{4,}\d*)\b/g, // the key of a work: BEAN1972, HPE_MEM
  /\b\d{4}-\d{2}-\d{2}\b/g, // days
  /[<>]?\d[\d.,]*/g, // figures
  /[%;:,.()+…·/–-]/g, // signs between what is enumerated
]

const locatorsOfTables = [...world.knowledge.tables.values()].flatMap((rows) =>
  rows.flatMap((row) => row['locator'] ?? []),
)

/** Places in a work are given as the work counts: "Annex III, ref. no 286", "Table VII". */
const references = [
  ...world.knowledge.limits.flatMap(({ entry, rows }) => [entry, ...rows.map(({ locator }) => locator)]),
  ...locatorsOfTables,
  ...MIXTURE_POLYMERS, // their ids stand for themselves in a remedy
].sort((a, b) => b.length - a.length)

const names = [...new Set(world.subjects.map(nameOf))].sort((a, b) => b.length - a.length)

function leftover(text: string, own: readonly string[]): string {
  let rest = outsideBrackets(text)
  for (const known of [...own, ...references, ...names]) {
    if (known !== '' && rest.includes(known)) rest = rest.replaceAll(known, ' ')
  }
  return ALLOWED.reduce((left, allowed) => left.replace(allowed, ' '), rest).trim()
}

/** Names of a formula, with the parts of its blends and what nobody recorded. */
const namesIn = (formula: Formula): string[] =>
  buildContext(formula, pseudo).lines.flatMap(({ subject }) => [
    nameOf(subject),
    subject.inci,
    ...subject.parts.flatMap((part) => [nameOf(part.subject), part.subject.inci]),
  ])

test('no sentence of a finding is left unmarked', () => {
  const left = new Map<string, string>()
  for (const formula of opened) {
    const own = namesIn(formula)
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
