import { mainRole, numberOf } from '#engine/graph/subject.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { World } from '#engine/graph/world.ts'
import type { Formula, Line } from '#engine/model/formula.ts'
import { roundTo, short } from '#engine/units/round.ts'
import { drawOne } from './chance.ts'
import type { Chance } from './chance.ts'
import { nameOf } from './draft.ts'

/** One thing of a recipe made different. */
export interface Change {
  /** as a condition: "the pH is 8 instead of 5.5" */
  text: string
  formula: Formula
  ingredients: string[]
}

const PH = [2.5, 3.5, 4.5, 6.5, 7.5, 8.5, 10]
const HOTTEST_C = [25, 50, 95]
const FACTORS = [0.1, 0.25, 3, 5]
/** The filling line must stay what the recipe is made of. */
const LEAST_FILL_PERCENT = 15
const WELL_KNOWN = 4

const drawnLine = ({ lines }: Formula, chance: Chance): Line | undefined =>
  drawOne(
    lines.filter(({ fills }) => fills !== true),
    chance,
  )

const withLines = (formula: Formula, lines: Line[]): Formula => ({ ...formula, lines })

export const hasRoom = ({ lines }: Formula): boolean =>
  lines.reduce((sum, { share_percent = 0 }) => sum + share_percent, 0) <= 100 - LEAST_FILL_PERCENT

type Way = (world: World, formula: Formula, chance: Chance) => Change | null

const otherPh: Way = (_world, formula, chance) => {
  const ph = drawOne(PH, chance)
  if (ph === undefined || formula.ph === null || Math.abs(ph - formula.ph) < 1) return null
  return { text: `the pH is ${ph} instead of ${formula.ph}`, formula: { ...formula, ph }, ingredients: [] }
}

const otherHeat: Way = (_world, formula, chance) => {
  const hottest_c = drawOne(HOTTEST_C, chance)
  if (hottest_c === undefined || formula.hottest_c === null || Math.abs(hottest_c - formula.hottest_c) < 15) return null
  const text = `the hottest point of the process is ${hottest_c} °C instead of ${formula.hottest_c} °C`
  return { text, formula: { ...formula, hottest_c }, ingredients: [] }
}

const lineLeftOut: Way = (world, formula, chance) => {
  const line = drawnLine(formula, chance)
  const subject = line && world.find(line.ingredient)
  if (!line || !subject) return null
  const lines = formula.lines.filter((one) => one !== line)
  return { text: `${nameOf(subject)} is left out`, formula: withLines(formula, lines), ingredients: [subject.id] }
}

const otherLevel: Way = (world, formula, chance) => {
  const line = drawnLine(formula, chance)
  const factor = drawOne(FACTORS, chance)
  const subject = line && world.find(line.ingredient)
  if (!line || !subject || factor === undefined || line.share_percent === undefined) return null
  const share_percent = roundTo(line.share_percent * factor, 3)
  const lines = formula.lines.map((one) => (one === line ? { ...one, share_percent } : one))
  const text = `${nameOf(subject)} is at ${short(share_percent)} % instead of ${short(line.share_percent)} %`
  return { text, formula: withLines(formula, lines), ingredients: [subject.id] }
}

const usualLevel = ({ roles }: Subject): number | undefined => roles[0]?.level_percent?.typical

const lineMore: Way = (world, formula, chance) => {
  const known = world.subjects.filter((one) => (numberOf(one, 'usual') ?? 0) >= WELL_KNOWN)
  const subject = drawOne(known, chance)
  const share_percent = subject && usualLevel(subject)
  if (!subject || share_percent === undefined || formula.lines.some((one) => one.ingredient === subject.id)) return null
  const lines = [...formula.lines, { ingredient: subject.id, share_percent }]
  const text = `${short(share_percent)} % ${nameOf(subject)} comes in`
  return { text, formula: withLines(formula, lines), ingredients: [subject.id] }
}

/** One line gives way to another player of the same role, mass for mass. */
const otherPlayer: Way = (world, formula, chance) => {
  const line = drawnLine(formula, chance)
  const subject = line && world.find(line.ingredient)
  if (!line || !subject) return null
  const players = world
    .players(mainRole(subject))
    .filter((one) => one !== subject && (numberOf(one, 'usual') ?? 0) >= WELL_KNOWN)
  const other = drawOne(players, chance)
  if (!other || formula.lines.some((one) => one.ingredient === other.id)) return null
  const lines = formula.lines.map((one) => (one === line ? { ...one, ingredient: other.id } : one))
  const text = `${nameOf(other)} takes the place of ${nameOf(subject)}, gram for gram`
  return { text, formula: withLines(formula, lines), ingredients: [subject.id, other.id] }
}

const WAYS: readonly Way[] = [otherPh, otherHeat, lineLeftOut, otherLevel, lineMore, otherPlayer]

/** One drawn change of a recipe; null where the draw leads to none. */
export function drawChange(world: World, formula: Formula, chance: Chance): Change | null {
  const change = drawOne(WAYS, chance)?.(world, formula, chance) ?? null
  return change && hasRoom(change.formula) ? change : null
}
