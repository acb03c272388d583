import { rangeOfProperty, usedClaim } from '#engine/graph/subject.ts'
import { wordOf } from '#engine/graph/subject.ts'
import { linesPlayingHere } from '#engine/formula/build-context.ts'
import type { FormulaLine } from '#engine/formula/context.ts'
import type { Say } from '#engine/words/say.ts'
import type { Check } from './check.ts'
import { because, nameOf, sourcesOf } from './say.ts'

/** Degrees that a kitchen thermometer may be off. */
const TOLERANCE_C = 3

interface HeatHere {
  say: Say
  hottest_c: number
}

/** Heat that a line asks for: stated, else the melting point of a solid fat or wax. */
export function heatAsked(line: FormulaLine) {
  const stated = usedClaim(line.subject, 'heat_min_c')
  const stated_c = rangeOfProperty(line.subject, 'heat_min_c')?.min
  if (stated && stated_c !== undefined) return { claim: stated, asked_c: stated_c, what: 'needs' }
  const solid = wordOf(line.subject, 'form') === 'solid' && wordOf(line.subject, 'solubility') === 'oil'
  const melting = usedClaim(line.subject, 'melting_c')
  const melting_c = rangeOfProperty(line.subject, 'melting_c')?.max
  return solid && melting && melting_c !== undefined
    ? { claim: melting, asked_c: melting_c, what: 'melts up to' }
    : null
}

function textsOf(name: string, { what, asked_c }: NonNullable<ReturnType<typeof heatAsked>>, here: HeatHere) {
  const { say, hottest_c } = here
  return what === 'needs'
    ? {
        message: say`${name} needs ${asked_c} °C; the process stops at ${hottest_c} °C`,
        fact: say`needs ${asked_c} °C`,
      }
    : {
        message: say`${name} melts up to ${asked_c} °C; the process stops at ${hottest_c} °C`,
        fact: say`melts up to ${asked_c} °C`,
      }
}

/** rule:heat-too-low. What does not melt in stays as grains. */
export const heatTooLow: Check = (context) => {
  const { lines, hottest_c, world } = context
  const { say } = world
  if (hottest_c === null) return []
  return lines.flatMap((line) => {
    const heat = heatAsked(line)
    // A starch that is there as a powder is not to gel.
    const asPowder = line.subject.allRoles.has('powder-base') && linesPlayingHere(context, 'powder-base').includes(line)
    if (!heat || asPowder || line.phase === 'cool-down' || hottest_c + TOLERANCE_C >= heat.asked_c) return []
    const { message, fact } = textsOf(nameOf(line.subject), heat, { say, hottest_c })
    return [
      {
        about: [line.subject.id],
        message,
        remedy: say`Heat the phase to about ${heat.asked_c} °C until clear`,
        because: [because(fact, heat.claim), because(say`hottest point ${hottest_c} °C`)],
        sources: sourcesOf(heat.claim),
      },
    ]
  })
}
