import type { Mixture, MixturePolymer } from '#engine/chemistry/mixtures/mixture.ts'
import type { FormulaContext, FormulaLine } from '#engine/formula/context.ts'
import { mixtureDataOf } from '#engine/knowledge/mixture-data.ts'
import type { Check, Hit } from './check.ts'
import { countAlike } from './mixture-counts.ts'
import { mixtureHere } from './mixture-here.ts'
import type { MixtureHere } from './mixture-here.ts'
import { rateHere, WARN_FROM_RATE } from './mixture-rate.ts'
import { mixtureRemedy, percent, trial } from './mixture-remedy.ts'
import { because, nameOf, shareFact } from './say.ts'

const NOTE_FROM_RATE = 0.4

const SOURCE = 'CHITRE2024'

const linesOf = ({ surfactants, polymers, thickeners }: MixtureHere): FormulaLine[] => [
  ...surfactants.map(({ line }) => line),
  ...polymers,
  ...thickeners.map(({ line }) => line),
]

const idsOf = (here: MixtureHere): string[] => [...new Set(linesOf(here).map(({ subject }) => subject.id))].sort()

const namesOf = (here: MixtureHere): string =>
  linesOf({ ...here, thickeners: [] })
    .map(({ subject }) => nameOf(subject))
    .join(', ')

/** What the counted mixtures were, and which of the surfactants here were never in one. */
function countsHere(here: MixtureHere, polymer: MixturePolymer, { world }: FormulaContext) {
  const { measured } = mixtureDataOf(world.knowledge)
  const kinds = here.surfactants.flatMap(({ kind }) => kind ?? [])
  const { n, separated, alike, names } = countAlike(measured, kinds, polymer)
  const nameById = (id: string): string => {
    const subject = world.find(id)
    return subject ? nameOf(subject) : id
  }
  const { say } = world
  const [named, all] = [nameById(polymer), names.map(nameById).join(', ')]
  const words =
    alike === 'polymer'
      ? {
          said: say`of ${n} measured mixtures with ${named} ${separated} separated`,
          fact: say`${separated} of ${n} measured mixtures with ${named} separated (${all})`,
        }
      : {
          said: say`of ${n} measured mixtures of these kinds of surfactant with ${named} ${separated} separated`,
          fact: say`${separated} of ${n} measured mixtures of these kinds of surfactant with ${named} separated (${all})`,
        }
  const known = new Set(measured.flatMap((one) => one.names))
  const strange = here.surfactants.map(({ line }) => line.subject).filter(({ id }) => !known.has(id))
  return {
    said: words.said,
    rate: separated / n,
    facts: [
      because(words.fact),
      ...strange.map((subject) => because(say`${nameOf(subject)} itself was not measured, others of its kind were`)),
    ],
  }
}

function hitInside(here: MixtureHere, mixture: Mixture, context: FormulaContext): Hit[] {
  const { measured, model } = mixtureDataOf(context.world.knowledge)
  const found = rateHere(here, context)
  if (!model || !found || found.rate < NOTE_FROM_RATE) return []
  const { rate, min, max } = found
  const { said, facts } = countsHere(here, mixture.polymer, context)
  const { say } = context.world
  return [
    {
      severity: rate >= WARN_FROM_RATE ? 'warn' : 'note',
      about: idsOf(here),
      message: say`About ${percent(rate)} of mixtures like this one separate (95 % interval ${Math.round(min * 100)} to ${percent(max)}, fitted to ${measured.length} measured mixtures; ${said}): ${namesOf(here)}`,
      remedy: mixtureRemedy(mixture, model, say),
      because: [
        ...facts,
        ...linesOf(here).map((line) => shareFact(line, say)),
        because(say`shares as supplied; whether the measured shares are as supplied or active matter is not stated`),
      ],
      sources: [SOURCE],
    },
  ]
}

/** All materials are of kinds that were measured, but not in such amounts, or not without a thickener. */
function hitBeside(here: MixtureHere, context: FormulaContext): Hit[] {
  const { measured } = mixtureDataOf(context.world.knowledge)
  const [polymer] = here.polymers
  const known = measured.find((one) => one.polymer === polymer?.subject.id)?.polymer
  if (!known || here.polymers.length > 1 || here.surfactants.some(({ kind }) => !kind)) return []
  const { said, rate, facts } = countsHere(here, known, context)
  if (rate < NOTE_FROM_RATE) return []
  const { say } = context.world
  return [
    {
      severity: 'note',
      about: idsOf(here),
      message: say`Whether ${namesOf(here)} separate here was not measured (${here.outside.join('; ')}); in other amounts, ${said}`,
      remedy: trial(say),
      because: [...facts, ...here.outside.map((fact) => because(fact))],
      sources: [SOURCE],
    },
  ]
}

/** rule:mixture-may-separate. Why, severity and worked cases: graph-data/rules/mixture-may-separate.yaml */
export const mixtureMaySeparate: Check = (context) => {
  const here = mixtureHere(context)
  if (!here) return []
  const { mixture, outside } = here
  return mixture && outside.length === 0 ? hitInside(here, mixture, context) : hitBeside(here, context)
}
