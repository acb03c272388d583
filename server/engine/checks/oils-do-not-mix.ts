import { linesPlayingHere } from '#engine/formula/build-context.ts'
import type { FormulaContext, FormulaLine } from '#engine/formula/context.ts'
import { numberOf, usedClaim, wordOf } from '#engine/graph/subject.ts'
import { roundTo } from '#engine/units/round.ts'
import type { Say } from '#engine/words/say.ts'
import type { Check, Hit } from './check.ts'
import { because, nameOf, shareFact, sourcesOf } from './say.ts'

/** The measured pair: the most polar of the fixed oils and a hydrocarbon. */
const POLAR = 'ricinus-communis-seed-oil'
const APOLAR = 'paraffinum-liquidum'
const CLEARS = 'clears_castor_and_mineral_oil_percent'

/** So much of each before it shows [%], and no further from equal parts than this, for which it was measured. */
const SHOWS_FROM_PERCENT = 5
const FURTHEST_FROM_EQUAL = 3

/** Waxes from here on [%] hold the oils in a network: nothing can settle. */
const NETWORK_FROM_PERCENT = 3

const share = (lines: readonly FormulaLine[]): number => lines.reduce((sum, line) => sum + line.share_percent, 0)
const linesOf = (context: FormulaContext, id: string): FormulaLine[] =>
  context.lines.filter(({ subject }) => subject.id === id)

/** A third oil of which nothing was measured may clear the mixture or not: from this share of it on, nobody can tell. */
const MATTERS_FROM = 0.1

const isOil = ({ subject }: FormulaLine): boolean =>
  wordOf(subject, 'solubility') === 'oil' && wordOf(subject, 'form') === 'liquid' && subject.allRoles.has('emollient')

/** rule:oils-do-not-mix. Measured at 25 °C for equal parts of castor oil and mineral oil. */
export const oilsDoNotMix: Check = (context) => {
  if (context.form !== 'anhydrous') return []
  const [polar, apolar] = [linesOf(context, POLAR), linesOf(context, APOLAR)]
  const [a, b] = [share(polar), share(apolar)]
  if (Math.min(a, b) < SHOWS_FROM_PERCENT || Math.max(a, b) > FURTHEST_FROM_EQUAL * Math.min(a, b)) return []
  if (share(linesPlayingHere(context, 'structurant')) >= NETWORK_FROM_PERCENT) return []
  const others = context.lines.filter((line) => isOil(line) && ![POLAR, APOLAR].includes(line.subject.id))
  const bridges = others.filter(({ subject }) => numberOf(subject, CLEARS) !== undefined)
  const unknown = others.filter((line) => !bridges.includes(line))
  const all = a + b + share(others)
  const cleared = bridges.reduce(
    (sum, { subject, share_percent }) => sum + (100 * share_percent) / all / (numberOf(subject, CLEARS) ?? Infinity),
    0,
  )
  if (cleared >= 1) return []
  const pair = [...polar, ...apolar]
  const { say } = context.world
  if (share(unknown) >= MATTERS_FROM * all) return [notKnown(pair, unknown, say)]
  const claims = [
    ...bridges.map(({ subject }) => usedClaim(subject, CLEARS)),
    ...pair.map(({ subject }) => usedClaim(subject, 'solubility_parameter')),
  ].flatMap((claim) => claim ?? [])
  return [
    {
      about: pair.map(({ subject }) => subject.id).sort(),
      message: say`Castor oil (${say.short(a)} %) and mineral oil (${say.short(b)} %) do not mix clear at room temperature; the oils between them bring ${roundTo(cleared * 100, 0)} % of what equal parts need`,
      remedy: say`Add an oil that mixes with both (about 15 % octyldodecanol, 28 % isopropyl palmitate), or leave one of the two out`,
      because: [
        ...pair.map((line) => shareFact(line, say)),
        ...claims.map((claim) =>
          because(claim.property === CLEARS ? say`what clears equal parts` : say`solubility parameter`, claim),
        ),
      ],
      sources: sourcesOf(...claims, { source: 'COSOL1991' }),
    },
  ]
}

const notKnown = (pair: readonly FormulaLine[], unknown: readonly FormulaLine[], say: Say): Hit => ({
  severity: 'unknown',
  about: [...pair, ...unknown].map(({ subject }) => subject.id).sort(),
  message: say`Castor oil and mineral oil do not mix alone; whether ${unknown.map(({ subject }) => nameOf(subject)).join(', ')} clears them was not measured`,
  remedy: say`Stir a small sample at room temperature and look after a day`,
  because: unknown.map(({ subject }) => because(say`no figure for ${nameOf(subject)} between castor and mineral oil`)),
  sources: ['COSOL1991'],
})
