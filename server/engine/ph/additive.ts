import { chargePerMole } from '#engine/chemistry/ph/dose-to.ts'
import type { Additive } from '#engine/chemistry/ph/dose-to.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import type { Subject } from '#engine/graph/subject.ts'
import { additiveOf } from '#engine/knowledge/acids.ts'
import type { AcidCompound, AcidTable } from '#engine/knowledge/acids.ts'
import { matches } from '#engine/knowledge/selector.ts'
import type { Say } from '#engine/words/say.ts'
import { readableName } from '#engine/units/readable-name.ts'
import { short } from '#engine/units/round.ts'
import type { Chosen } from './adjust-types.ts'

/** The acid or base that goes in, with all that its dose is worked out from. */
export interface Addition extends Chosen {
  subject: Subject
  compound: AcidCompound
  additive: Additive
  molar_mass: number
}

/** Proposed in this order where the formula has none of its own; mild ones first. */
const PROPOSED = {
  acid: ['citric-acid', 'lactic-acid', 'gluconolactone'],
  base: ['arginine', 'triethanolamine', 'sodium-hydroxide'],
}

/** Amines hardly reach beyond this pH; lye does. */
const AMINE_TO_PH = 8

/** At this salt level a charge is judged as acid or base; the sign does not depend on it. */
const USUAL_SALT_MOL_PER_L = 0.05
const LEAST_CHARGE = 0.02

export const usable = ({ byIngredient }: AcidTable): string[] =>
  [...byIngredient]
    .filter(([, { molar_mass }]) => molar_mass !== undefined)
    .map(([id]) => id)
    .sort()

/** Acid, base or neither at this pH, by the charge that a mole of it carries. */
export function kindAt(additive: Additive, ph: number, temp_c: number): 'acid' | 'base' | null {
  const charge = chargePerMole(additive, ph, { ionic_strength: USUAL_SALT_MOL_PER_L, temp_c })
  if (Math.abs(charge) < LEAST_CHARGE) return null
  return charge < 0 ? 'acid' : 'base'
}

/** Lines and additions that say they do not go together. */
function clashes(subject: Subject, { lines }: FormulaContext): boolean {
  return lines.some(
    (line) =>
      line.subject.id !== subject.id &&
      (subject.clashes.some((clash) => matches(clash.with, line.subject)) ||
        line.subject.clashes.some((clash) => matches(clash.with, subject))),
  )
}

function candidates(context: FormulaContext, kind: 'acid' | 'base', target_ph: number): string[] {
  const own = context.lines
    .filter(({ subject }) => subject.allRoles.has(kind) && subject.roles[0]?.role === kind)
    .map(({ subject }) => subject.id)
  const usual = PROPOSED[kind].filter((id) => kind === 'acid' || target_ph <= AMINE_TO_PH || id === 'sodium-hydroxide')
  return [...own.sort(), ...usual]
}

interface Asked {
  with?: string | undefined
  strength_percent?: number | undefined
  target_ph: number
  temp_c: number
}

function additionOf(context: FormulaContext, id: string, asked: Asked & { proposed: boolean }): Addition | null {
  const subject = context.world.find(id)
  const compound = subject ? context.world.knowledge.acids.byIngredient.get(subject.id) : undefined
  if (!subject || compound?.molar_mass === undefined) return null
  const additive = additiveOf(compound, asked.temp_c)
  const kind = kindAt(additive, asked.target_ph, asked.temp_c)
  if (kind === null) return null
  return {
    ingredient: subject.id,
    inci: subject.inci,
    kind,
    strength_percent: asked.strength_percent ?? 100,
    proposed: asked.proposed,
    subject,
    compound,
    additive,
    molar_mass: compound.molar_mass,
  }
}

/**
 * What was chosen, or what suits the way the pH has to go; null where nothing was chosen and the way is not known.
 * @throws RangeError "with: …" for what is neither acid nor base here
 */
export function additionFor(context: FormulaContext, asked: Asked, way: 'acid' | 'base' | null): Addition | null {
  if (asked.with !== undefined) {
    const chosen = additionOf(context, asked.with, { ...asked, proposed: false })
    if (chosen) return chosen
    const known = usable(context.world.knowledge.acids).join(', ')
    throw new RangeError(
      `with: ${asked.with.slice(0, 60)} is no acid or base with a known constant at pH ${short(asked.target_ph)}; known: ${known}`,
    )
  }
  if (way === null) return null
  const all = candidates(context, way, asked.target_ph)
    .map((id) => additionOf(context, id, { ...asked, proposed: true }))
    .filter((one) => one !== null && one.kind === way)
  return all.find((one) => one !== null && !clashes(one.subject, context)) ?? all[0] ?? null
}

/** @throws RangeError "with: …" where the target lies the other way */
export function mustPull(addition: Addition, way: 'acid' | 'base', from: { ph: number; target_ph: number }): void {
  if (addition.kind === way) return
  const name = readableName(addition.inci)
  const pulls = addition.kind === 'acid' ? 'lowers' : 'raises'
  const needs = way === 'acid' ? 'an acid' : 'a base'
  throw new RangeError(
    `with: from pH ${short(from.ph)} to ${short(from.target_ph)} ${needs} is needed; ${name} ${pulls} the pH`,
  )
}

/** Name with strength, as it stands on the bottle. */
export const bottleOf = ({ inci, strength_percent }: Chosen, say: Say): string =>
  strength_percent === 100
    ? say`${readableName(inci)}, pure`
    : say`${readableName(inci)}, ${say.short(strength_percent)} % solution`
