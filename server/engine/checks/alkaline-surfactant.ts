import { activeMatter } from '#engine/formula/totals.ts'
import { numberOf, rangeOfProperty, usedClaim } from '#engine/graph/subject.ts'
import type { Check } from './check.ts'
import { because, becauseOf, nameOf, sourcesOf } from './say.ts'
import { washLines } from './wash-composition.ts'

/** Supplied this alkaline, a surfactant carries free alkali into the wash [pH]. */
const ALKALINE_FROM_PH = 9.5
const ACTIVE_THAT_SHOWS_PERCENT = 1
const ACIDS = ['acid', 'chemical-exfoliant', 'effervescent-acid']

/** rule:alkaline-surfactant: glucosides and amphoacetates come alkaline, and nothing in the formula takes that up. */
export const alkalineSurfactant: Check = (context) => {
  const { form, ph, lines, world } = context
  const { say } = world
  if (form !== 'wash' || lines.some(({ subject }) => subject.classes.has('soap'))) return []
  if (lines.some(({ subject }) => ACIDS.some((role) => subject.allRoles.has(role)))) return []
  const alkaline = washLines(context).filter(
    (line) =>
      (numberOf(line.subject, 'ph_supplied') ?? 0) >= ALKALINE_FROM_PH &&
      activeMatter(line) >= ACTIVE_THAT_SHOWS_PERCENT,
  )
  if (alkaline.length === 0) return []
  const claims = alkaline.flatMap(({ subject }) => usedClaim(subject, 'ph_supplied') ?? [])
  const each = alkaline.map(
    ({ subject }) => say`${nameOf(subject)} comes at pH ${say.range(rangeOfProperty(subject, 'ph_supplied') ?? {})}`,
  )
  const surfactants = each.join(', ')
  return [
    {
      about: alkaline.map(({ subject }) => subject.id).sort(),
      message:
        ph !== null && ph < 8
          ? say`${surfactants}; no acid is in the formula, and pH ${say.short(ph)} is not reached without one`
          : say`${surfactants}; no acid is in the formula`,
      remedy: say`Mix the surfactants, measure, and bring the pH down with citric or lactic acid drop by drop; some grades are sold neutralised`,
      because: [
        ...claims.map((claim) => becauseOf(say`pH as supplied`, claim, say)),
        because(say`no acid in the formula`),
      ],
      sources: sourcesOf(...claims),
    },
  ]
}
