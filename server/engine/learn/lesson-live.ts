import { calculate, CALCULATIONS } from '#engine/calculate/index.ts'
import { usedClaim } from '#engine/graph/subject.ts'
import type { World } from '#engine/graph/world.ts'
import type { Formula } from '#engine/model/formula.ts'
import type { CalculationName } from '#engine/model/inputs/index.ts'
import type { LessonLive } from '#engine/model/lesson-live.ts'
import { changedRecipe, recipeNamed, recipeWith } from './lesson-change.ts'
import { findingsFor, newFindings } from './news.ts'

type Live<K extends LessonLive['kind']> = Extract<LessonLive, { kind: K }>

function breakFaults(world: World, { recipe, breaks, brings, mends }: Live<'break-and-mend'>): string[] {
  const before = findingsFor(world, recipeWith(world, recipe))
  const fired = (findings: ReturnType<typeof newFindings>) => findings.filter(({ rule }) => rule === brings)
  const broken = newFindings(before, findingsFor(world, recipeWith(world, recipe, breaks.change)))
  const mended = newFindings(before, findingsFor(world, recipeWith(world, recipe, breaks.change, mends.change)))
  const rules = broken.map(({ rule, severity }) => `${rule} (${severity})`).join(', ') || 'none'
  const grave = mended.filter(({ severity }) => severity === 'stop' || severity === 'warn')
  return [
    ...(fired(broken).length > 0 ? [] : [`breaks does not bring ${brings}; new findings: ${rules}`]),
    ...fired(mended).map(({ message }) => `mends does not silence ${brings}: ${message}`),
    ...grave.filter(({ rule }) => rule !== brings).map(({ rule, message }) => `mends brings ${rule}: ${message}`),
  ]
}

function levelFaults(world: World, { recipe, ingredient, from_percent, to_percent }: Live<'level-slider'>): string[] {
  const at = (share_percent: number) => {
    const formula = recipeWith(world, recipe, { level: { ingredient, share_percent } })
    return new Set(findingsFor(world, formula).map(({ rule, severity }) => `${rule} ${severity}`))
  }
  if (from_percent >= to_percent) return [`from_percent ${from_percent} is not below to_percent ${to_percent}`]
  const [low, high] = [at(from_percent), at(to_percent)]
  const same = low.size === high.size && [...low].every((one) => high.has(one))
  return same ? ['the findings are the same at both ends of the slider: it shows nothing'] : []
}

const without = (world: World, ids: readonly string[], properties: readonly string[]): string[] =>
  ids.flatMap((id) => {
    const subject = world.find(id)
    if (!subject) return [`no ingredient has the id ${id}`]
    const has = properties.some((property) => usedClaim(subject, property) !== undefined)
    return has ? [] : [`${id} has none of ${properties.join(', ')} on record`]
  })

function sliderFaults(world: World, { ingredients, recipe, from, to, start }: Live<'ph-slider'>): string[] {
  if (recipe !== undefined) recipeWith(world, recipe)
  return [
    ...without(world, ingredients, ['ph_effective', 'ph_stability', 'acid_pka']),
    ...(from < start && start < to ? [] : [`start ${start} does not lie between ${from} and ${to}`]),
  ]
}

function calculationFaults(world: World, { name, inputs, vary }: Live<'calculate'>): string[] {
  if (!(name in CALCULATIONS)) return [`there is no calculation ${name}`]
  const run = (more: Record<string, unknown> = {}) =>
    calculate(world, name as CalculationName, { ...inputs, ...more } as never)
  run()
  for (const end of vary ? [vary.from, vary.to] : []) run({ [vary?.input ?? '']: end })
  return vary && !(vary.input in inputs) ? [`${vary.input} is not one of the inputs`] : []
}

function faultsOfLive(world: World, live: LessonLive): string[] {
  switch (live.kind) {
    case 'break-and-mend':
      return breakFaults(world, live)
    case 'ph-slider':
      return sliderFaults(world, live)
    case 'level-slider':
      return levelFaults(world, live)
    case 'compare-oils':
      return without(world, [live.from, live.to], ['fatty_acids'])
    case 'spectrum':
      return without(world, live.ingredients, ['spectrum'])
    case 'who-plays':
      return world.players(live.role).length > 0 ? [] : [`nothing plays ${live.role}`]
    case 'calculate':
      return calculationFaults(world, live)
  }
}

/** Why the live example of a lesson does not show what it promises; empty when it does. */
export function liveFaults(world: World, live: LessonLive): string[] {
  try {
    return faultsOfLive(world, live)
  } catch (error) {
    if (!(error instanceof Error)) throw error
    return [error.message]
  }
}

export interface LiveRecipes {
  /** of the practice recipe; undefined for one that is written out */
  title: string | undefined
  formulas: { before: Formula; broken?: Formula; mended?: Formula }
}

/** Recipes that a live example shows: as it was, broken, mended. Null when it has none. */
export function recipesOf(world: World, live: LessonLive): LiveRecipes | null {
  if (!('recipe' in live) || live.recipe === undefined) return null
  const { title } = recipeNamed(world, live.recipe)
  const before = recipeWith(world, live.recipe)
  if (live.kind !== 'break-and-mend') return { title, formulas: { before } }
  const broken = changedRecipe(before, live.breaks.change)
  return { title, formulas: { before, broken, mended: changedRecipe(broken, live.mends.change) } }
}
