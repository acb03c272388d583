import type { FormulaContext } from '#engine/formula/context.ts'
import { nameOf } from '#engine/formula/say.ts'
import { sharePlaying } from '#engine/formula/totals.ts'
import type { Told } from './told.ts'
import { agentsHere, preservingDose, preservingWork } from './work.ts'
import type { Work } from './work.ts'

const WATER_THAT_SPOILS_PERCENT = 5

/** From this part of the wet phase on humectants leave germs little free water. */
const BINDS_PART = 0.6

/** Humectants bind so much of the water that little of it is free; of a line that is not there they do not. */
export function humectantsBindWater({ lines, water_percent }: FormulaContext, without?: string): boolean {
  const left = lines.filter(({ subject }) => subject.id !== without)
  const wet_percent = water_percent + sharePlaying(lines, 'humectant')
  return wet_percent > 0 && sharePlaying(left, 'humectant') / wet_percent > BINDS_PART
}

interface KeepsItself {
  kind: 'alcohol' | 'alkali' | 'little-water'
  text: string
}

/** Why a formula with water may do without a preservative, or null. Each is a hurdle of its own. */
export function hurdleWithoutPreservative(context: FormulaContext): KeepsItself | null {
  const { say } = context.world
  const alcohol_percent = sharePlaying(context.lines, 'alcohol-solvent')
  if (alcohol_percent >= 20) return { kind: 'alcohol', text: say`${say.short(alcohol_percent)} % alcohol` }
  if (context.ph !== null && context.ph >= 9.5) return { kind: 'alkali', text: say`pH ${say.short(context.ph)}` }
  if (humectantsBindWater(context)) return { kind: 'little-water', text: say`little free water beside the humectants` }
  if (context.form === 'bar' && context.water_percent < 30)
    return { kind: 'little-water', text: say`a solid bar with little free water` }
  return null
}

/** Water that germs can grow in, and no hurdle that keeps them down by itself. */
export const mustBePreserved = (context: FormulaContext): boolean =>
  context.water_percent >= WATER_THAT_SPOILS_PERCENT && hurdleWithoutPreservative(context) === null

export const ENOUGH_DOSE = 0.45

/** An agent that is dosed well and does not come to work. */
const isIdle = ({ nominal, effect }: Work): boolean => nominal >= ENOUGH_DOSE && effect.most < nominal / 2

/** Nothing that preserves, or less of it at work than a preserved product needs. */
export function tooLittle(context: FormulaContext): Told[] {
  if (!mustBePreserved(context)) return []
  const dose = preservingDose(preservingWork(context))
  if (dose >= ENOUGH_DOSE) return []
  const work = agentsHere(context)
  const named = work.map(({ subject }) => nameOf(subject))
  const idle = work.filter(isIdle).map(({ subject }) => nameOf(subject))
  const { say } = context.world
  const water = say`${say.short(context.water_percent)} % water`
  const how = idle.length > 0 ? say`${say.list(idle, 'and')}: dosed, but not at work here` : say.list(named, 'and')
  return [
    {
      about: work.map(({ subject }) => subject.id).sort(),
      message:
        named.length === 0
          ? say`${water} and nothing that preserves it`
          : say`${water} and too little that preserves it (${how})`,
      remedy: say`Add a preservative system at its own dose and inside its pH window, and have a challenge test made`,
      because: [
        { fact: say`water phase ${water}` },
        { fact: say`preserving dose at work ${say.short(dose)} of a full one` },
      ],
      sources: ['practice'],
    },
  ]
}
