import { batchSheet } from '#engine/batch/batch-sheet.ts'
import type { World } from '#engine/graph/world.ts'
import type { BatchSheet, BatchStep } from '#engine/model/batch.ts'
import type { PracticeFormula } from '#engine/model/learn.ts'
import { drawOne, shuffled } from './chance.ts'
import { WRONG_CHOICES } from './draft.ts'
import type { Maker } from './draft.ts'
import { recipeOf } from './recipe-items.ts'

const BATCH_G = 300

/** The sheet of a practice recipe is asked for again and again. */
const sheets = new WeakMap<PracticeFormula, BatchSheet>()

function sheetOf(world: World, practice: PracticeFormula): BatchSheet {
  const known = sheets.get(practice) ?? batchSheet(world, { formula: practice.formula, batch_g: BATCH_G })
  sheets.set(practice, known)
  return known
}

/** Ids of all steps that have to be done before this one, by the order of work. */
export function earlierSteps(step: string, edges: BatchSheet['edges']): Set<string> {
  const earlier = new Set<string>()
  const open = [step]
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    for (const { from, to } of edges) {
      if (to !== next || earlier.has(from)) continue
      earlier.add(from)
      open.push(from)
    }
  }
  return earlier
}

/** Which of these has to be done first? The other steps wait for it in the order of work, each by some way. */
export const orderWork: Maker = (world, chance) => {
  const practice = drawOne(world.knowledge.practice, chance)
  if (!practice) return null
  const { steps, edges } = sheetOf(world, practice)
  const first = drawOne(steps, chance)
  const later = first ? steps.filter(({ id }) => earlierSteps(id, edges).has(first.id)) : []
  const titles = new Set<string>()
  const isNew = ({ title }: BatchStep) => title !== first?.title && !titles.has(title) && titles.add(title)
  const wrong = shuffled(later, chance).filter(isNew).slice(0, WRONG_CHOICES)
  if (!first || wrong.length < WRONG_CHOICES) return null
  return {
    difficulty: steps.indexOf(first) < 2 ? 1 : 2,
    question: `You make ${practice.title.toLowerCase()}. Which of these steps comes first?`,
    recipe: recipeOf(world, practice.title, practice.formula),
    choices: [first, ...wrong].map(({ id, title }) => ({ id, text: title })),
    key: first.id,
    because: `${first.title}: ${first.why} The other three wait for it.`,
    sources: first.sources.length > 0 ? first.sources : ['practice'],
    about: { ingredients: [] },
  }
}
