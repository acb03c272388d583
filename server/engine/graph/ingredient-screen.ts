import { matches } from '#engine/knowledge/selector.ts'
import type { Ingredient } from '#engine/model/records.ts'
import { coldProcess } from './cold-process.ts'
import type { ScreenEntry, ScreenQuestion } from './screen.ts'
import { rangeOfProperty, wordOf } from './subject.ts'
import type { Subject } from './subject.ts'
import type { World } from './world.ts'

/** What an ingredient may be sought by, beside its names. All that is given must hold; what is not known is no yes. */
export interface IngredientTraits {
  /** one of these roles, or a narrower one */
  roles?: readonly string[]
  class?: string
  tier?: string
  /** pH at which it keeps and, where it works in a window only, works */
  ph?: number
  /** heat that it bears [C] */
  heat_c?: number
  /** can be worked in without heat */
  cold?: true
  /** what it dissolves in; what dissolves in both fits water and oil */
  solubility?: string
  charge?: string
  /** clashes with none of these, by class or by a record of either */
  beside?: readonly Subject[]
}

/** Group of classes that tell the charge. */
const CHARGE = 'charge'

/** Words by which a charge can be asked for. */
export const chargesOf = ({ knowledge }: World): string[] =>
  [...knowledge.classes.values()].flatMap(({ id, group }) => (group === CHARGE ? [id] : [])).sort()

/** Says that a value is not stated, so that what is unknown can be told apart from what does not fit. */
const unknown = (subject: string): string => `unknown:${subject}`

/** At which side of which class clash an ingredient, or a part of it, stands. */
const sideKeys = ({ clashSides, parts }: Subject): string[] =>
  [{ clashSides }, ...parts.map(({ subject }) => subject)].flatMap((one) =>
    one.clashSides.flatMap((clashes, side) => [...clashes].map((clash) => `side:${side}:${clash}`)),
  )

function traitKeys(world: World, ingredient: Ingredient): string[] {
  const charges = [...ingredient.classes].filter((one) => world.knowledge.classes.get(one)?.group === CHARGE)
  const solubility = wordOf(ingredient, 'solubility')
  const process = coldProcess(ingredient)
  return [
    `tier:${ingredient.tier}`,
    ...ingredient.roles.flatMap(({ role }) => world.roles.above(role)).map((role) => `role:${role}`),
    ...[...ingredient.classes].map((one) => `class:${one}`),
    ...(charges.length > 0 ? charges.map((charge) => `charge:${charge}`) : [unknown('charge')]),
    solubility === undefined ? unknown('solubility') : `solubility:${solubility}`,
    process === null ? unknown('cold') : `cold:${process.cold}`,
  ]
}

/**
 * Words and windows by which an ingredient is found.
 * @param subject the same looked up; without it the entry says nothing of clashes
 */
export function entryOf(world: World, ingredient: Ingredient, subject: Subject | null): ScreenEntry {
  const heat = rangeOfProperty(ingredient, 'heat_max_c')?.max
  return {
    keys: new Set([...traitKeys(world, ingredient), ...(subject ? sideKeys(subject) : [])]),
    windows: {
      keeps: rangeOfProperty(ingredient, 'ph_stability'),
      works: rangeOfProperty(ingredient, 'ph_effective'),
      ...(heat !== undefined && { heat: { max: heat } }),
    },
  }
}

const solubleIn = (word: string): string[] =>
  word === 'water' || word === 'oil' ? [`solubility:${word}`, 'solubility:both'] : [`solubility:${word}`]

/** Traits as a question. @param unknowns whether what states no such value fits too */
export function questionOf(traits: IngredientTraits, unknowns: boolean): ScreenQuestion {
  const { roles, ph, heat_c, solubility, charge } = traits
  const valued = (subject: string, keys: readonly string[]) => (unknowns ? [...keys, unknown(subject)] : keys)
  const opposite = (traits.beside ?? []).flatMap((one) =>
    sideKeys(one).map((key) => key.replace(/^side:(\d)/, (_all, side: string) => `side:${1 - Number(side)}`)),
  )
  return {
    all: [
      ...(roles ? [roles.map((role) => `role:${role}`)] : []),
      ...(traits.class === undefined ? [] : [[`class:${traits.class}`]]),
      ...(traits.tier === undefined ? [] : [[`tier:${traits.tier}`]]),
      ...(traits.cold ? [valued('cold', ['cold:true'])] : []),
      ...(solubility === undefined ? [] : [valued('solubility', solubleIn(solubility))]),
      ...(charge === undefined ? [] : [valued('charge', [`charge:${charge}`])]),
    ],
    none: [...new Set(opposite)],
    within: [
      ...(ph === undefined ? [] : [{ window: 'keeps', value: ph, unknown: unknowns }]),
      // A window of work that nobody stated is no demand: most things do what they do at any pH.
      ...(ph === undefined ? [] : [{ window: 'works', value: ph, unknown: true }]),
      ...(heat_c === undefined ? [] : [{ window: 'heat', value: heat_c, unknown: unknowns }]),
    ],
  }
}

const isSaidToClash = (one: Subject, other: Subject): boolean =>
  one.clashes.some(({ with: selector }) => matches(selector, other))

/** Whether the record of either names the other as one it clashes with. */
export const clashByRecord = (one: Subject, other: Subject): boolean =>
  one.id !== other.id && (isSaidToClash(one, other) || isSaidToClash(other, one))

/** Whether a question asks for a value that may be unknown. */
export const asksForValues = ({ ph, heat_c, cold, solubility, charge }: IngredientTraits): boolean =>
  [ph, heat_c, cold, solubility, charge].some((one) => one !== undefined)
