import { MIXTURE_POLYMERS } from '#engine/chemistry/mixtures/mixture.ts'
import { buildContext } from '#engine/formula/build-context.ts'
import { nameOf } from '#engine/formula/say.ts'
import type { World } from '#engine/graph/world.ts'
import type { Formula } from '#engine/model/formula.ts'
import { realWorld } from '../../helpers.ts'
import { outsideBrackets } from './pseudo.ts'

const world = realWorld()

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

/** What of a text nobody marked for translation: empty where all is. `own`: names that may stand in it. */
export function leftover(text: string, own: readonly string[]): string {
  let rest = outsideBrackets(text)
  for (const known of [...own, ...references, ...names].sort((a, b) => b.length - a.length)) {
    if (known !== '' && rest.includes(known)) rest = rest.replaceAll(known, ' ')
  }
  return ALLOWED.reduce((left, allowed) => left.replace(allowed, ' '), rest).trim()
}

/** Names of a formula, with the parts of its blends and what nobody recorded. */
export const namesIn = (formula: Formula, where: World): string[] =>
  buildContext(formula, where).lines.flatMap(({ subject }) => [
    nameOf(subject),
    subject.inci,
    ...subject.parts.flatMap((part) => [nameOf(part.subject), part.subject.inci]),
  ])
