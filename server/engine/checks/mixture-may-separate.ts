import type { MixturePolymer } from '#engine/chemistry/mixtures/mixture.ts'
import { separationRate } from '#engine/chemistry/mixtures/separation-rate.ts'
import { mixtureDataOf } from '#engine/knowledge/mixture-data.ts'
import { readableName } from '#engine/units/readable-name.ts'
import type { Check, Hit } from './check.ts'
import { countAlike } from './mixture-counts.ts'
import { mixtureHere } from './mixture-here.ts'
import type { MixtureHere } from './mixture-here.ts'
import { mixtureRemedy, percent } from './mixture-remedy.ts'
import { because, nameOf, shareFact } from './say.ts'

const WARN_FROM_RATE = 0.8
const NOTE_FROM_RATE = 0.4

const SOURCE = 'CHITRE2024'

const idsOf = (here: MixtureHere): string[] =>
  [...here.surfactants.map(({ line }) => line), ...here.polymers, ...here.thickeners.map(({ line }) => line)]
    .map(({ subject }) => subject.id)
    .filter((id, at, all) => all.indexOf(id) === at)
    .sort()

const names = (here: MixtureHere): string =>
  [...here.surfactants.map(({ line }) => line), ...here.polymers].map(({ subject }) => nameOf(subject)).join(', ')

/** What the counted mixtures were, and which of the surfactants here were never in one. */
function countFacts(here: MixtureHere, polymer: MixturePolymer, measured: Parameters<typeof countAlike>[0]) {
  const kinds = here.surfactants.flatMap(({ kind }) => kind ?? [])
  const { n, separated, alike, names: seen } = countAlike(measured, kinds, polymer)
  const common =
    alike === 'polymer' ? `with ${readableName(polymer)}` : `of these kinds of surfactant with ${readableName(polymer)}`
  const known = new Set(measured.flatMap((one) => one.names))
  const strange = here.surfactants.map(({ line }) => line.subject).filter(({ id }) => !known.has(id))
  return {
    n,
    separated,
    facts: [
      because(`${separated} of ${n} measured mixtures ${common} separated (${seen.map(readableName).join(', ')})`),
      ...strange.map((subject) => because(`${nameOf(subject)} itself was not measured, others of its kind were`)),
    ],
  }
}

function hitInside(
  here: MixtureHere & { mixture: NonNullable<MixtureHere['mixture']> },
  data: ReturnType<typeof mixtureDataOf>,
): Hit[] {
  if (!data.model) return []
  const { rate, min, max } = separationRate(here.mixture, data.model)
  if (rate < NOTE_FROM_RATE) return []
  const { n, facts } = countFacts(here, here.mixture.polymer, data.measured)
  return [
    {
      severity: rate >= WARN_FROM_RATE ? 'warn' : 'note',
      about: idsOf(here),
      message: `Mixtures like this of ${names(here)} separated in about ${percent(rate)} of cases when measured (95 % interval ${Math.round(min * 100)} to ${percent(max)}; ${n} mixtures of this kind)`,
      remedy: mixtureRemedy(here.mixture, data.model),
      because: [
        ...facts,
        ...[...here.surfactants, ...here.thickeners].map(({ line }) => shareFact(line)),
        ...here.polymers.map(shareFact),
        because('shares as supplied; whether the measured shares are as supplied or active matter is not stated'),
      ],
      sources: [SOURCE],
    },
  ]
}

/** All materials are of kinds that were measured, but not in such amounts or not without the thickener. */
function hitBeside(here: MixtureHere, data: ReturnType<typeof mixtureDataOf>): Hit[] {
  const [polymer] = here.polymers
  const measuredPolymer = data.measured.find((one) => one.polymer === polymer?.subject.id)?.polymer
  if (!measuredPolymer || here.polymers.length > 1 || here.surfactants.some(({ kind }) => !kind)) return []
  const { n, separated, facts } = countFacts(here, measuredPolymer, data.measured)
  if (separated / n < NOTE_FROM_RATE) return []
  return [
    {
      severity: 'note',
      about: idsOf(here),
      message: `Whether ${names(here)} separate here is not measured (${here.outside.join('; ')}); of ${n} mixtures of the kind in other amounts ${separated} separated`,
      remedy: 'Make 50 g, let it stand for a day at room temperature, and look against the light before a batch',
      because: [...facts, ...here.outside.map((fact) => because(fact))],
      sources: [SOURCE],
    },
  ]
}

/** rule:mixture-may-separate. Why, severity and worked cases: graph-data/rules/mixture-may-separate.yaml */
export const mixtureMaySeparate: Check = (context) => {
  const here = mixtureHere(context)
  if (!here) return []
  const data = mixtureDataOf(context.world.knowledge)
  const { mixture } = here
  return mixture && here.outside.length === 0 ? hitInside({ ...here, mixture }, data) : hitBeside(here, data)
}
