import type { FormulaContext } from '#engine/formula/context.ts'
import { linesPlayingHere } from '#engine/formula/build-context.ts'
import { nameOf } from '#engine/formula/say.ts'
import { sharePlaying } from '#engine/formula/totals.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { Hurdle } from '#engine/model/preservation.ts'
import { figuresOf } from './tables.ts'
import { hurdleWithoutPreservative } from './too-little.ts'
import { estimateActivity, growthAt } from './water-activity.ts'

type Kind = (context: FormulaContext) => Hurdle[]

const ACID_PH = 4
const ALKALINE_PH = 9.5

const ph: Kind = ({ ph: here, world: { say } }) => {
  if (here === null) return []
  if (here <= ACID_PH)
    return [
      {
        kind: 'ph',
        text: say`pH ${say.short(here)}: most bacteria grow poorly in so much acid; yeasts and moulds do not mind`,
      },
    ]
  if (here >= ALKALINE_PH)
    return [{ kind: 'ph', text: say`pH ${say.short(here)}: hardly anything grows in so much alkali` }]
  return []
}

/** Above this an estimate says no more than that it is wet. */
const WORTH_SAYING = 0.97

const waterActivity: Kind = (context) => {
  const { say } = context.world
  const alcohol_percent = sharePlaying(context.lines, 'alcohol-solvent')
  const alcohol: Hurdle[] =
    alcohol_percent >= 10
      ? [
          {
            kind: 'water-activity',
            text:
              alcohol_percent >= 20
                ? say`${say.short(alcohol_percent)} % alcohol: from about 20 % on alcohol keeps water by itself`
                : say`${say.short(alcohol_percent)} % alcohol: a help, from about 20 % on it keeps water by itself`,
          },
        ]
      : []
  const estimate = estimateActivity(context)
  if (!estimate || estimate.activity > WORTH_SAYING) return alcohol
  const { grow, stopped } = growthAt(estimate.activity, figuresOf(context.world).leastWaterActivity)
  const names = estimate.solutes
    .filter(({ share_percent }) => share_percent >= 1)
    .map(({ subject }) => say.inside(nameOf(subject)))
  const [no, still] = [stopped.slice(0, 3), grow.slice(-2)].map((germs) => say.list(germs.map(say.text), 'and'))
  const text = [
    say`Water activity about ${say.figure(estimate.activity.toFixed(2))}, estimated from ${say.list(names, 'and')}, without counting what gums and emulsifiers bind`,
    stopped.length > 3
      ? say`${no ?? ''} and others no longer grow`
      : stopped.length > 0
        ? say`${no ?? ''} no longer grow`
        : '',
    grow.length > 0 ? say`${still ?? ''} still do, and yeasts and moulds stand less water than bacteria` : '',
  ]
  return [...alcohol, { kind: 'water-activity', text: text.filter((part) => part !== '').join('; ') }]
}

/** What is there mainly to bind metals; an acid that also does is none. */
const isChelator = (subject: Subject, context: FormulaContext): boolean =>
  context.rolesOf(subject)[0]?.role === 'chelator'

const chelator: Kind = (context) =>
  linesPlayingHere(context, 'chelator')
    .filter(({ subject }) => isChelator(subject, context))
    .map(({ subject, share_percent }) => ({
      kind: 'chelator' as const,
      text: context.world
        .say`${nameOf(subject)} at ${context.world.say.short(share_percent)} % takes metal ions from gram-negative bacteria: with 0.2 % methylparaben 0.01 % disodium EDTA brought the time for nine of ten P. aeruginosa from above 9 h to 0.8 h, for E. coli it changed nothing (JSCC1989, Table VI, read); no preservative by itself`,
    }))

/** Moisturisers that also disturb membranes; plain glycerin does not. */
const isMultifunctional = (subject: Subject): boolean =>
  subject.allRoles.has('preservative-booster') && subject.allRoles.has('humectant')

const humectant: Kind = (context) =>
  context.lines
    .filter(({ subject }) => isMultifunctional(subject))
    .map(({ subject, share_percent }) => ({
      kind: 'humectant' as const,
      text: context.world
        .say`${nameOf(subject)} at ${context.world.say.short(share_percent)} %: moistens and weakens germs; it helps a preservative and does not replace one`,
    }))

const selfKeeping: Kind = (context) => {
  const why = hurdleWithoutPreservative(context)
  // Alcohol and alkali are told above.
  return why === null || why.kind !== 'little-water'
    ? []
    : [
        {
          kind: 'water-activity',
          text: context.world.say`${why.text}: germs find no water to grow in while it stays so`,
        },
      ]
}

const packaging: Kind = ({ water_percent, world: { say } }) =>
  water_percent < 1
    ? []
    : [
        {
          kind: 'package',
          text: say`Not known here: a tube, pump or airless bottle keeps fingers and water out; an open jar asks more of the preservative`,
        },
      ]

const ALL: readonly Kind[] = [ph, waterActivity, selfKeeping, chelator, humectant, packaging]

/** What else makes life hard for germs in this formula. */
export const hurdlesOf = (context: FormulaContext): Hurdle[] => ALL.flatMap((kind) => kind(context))
