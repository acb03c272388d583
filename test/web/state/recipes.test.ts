import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { EMPTY, isSameBench, withoutRecipe } from '#web/state/bench.ts'
import { addPicked, moveLine, renameLine, setGrams } from '#web/state/edit.ts'
import { benchFromText } from '#web/state/from-text.ts'
import { asOwn, benchOf, copyOf, loadRecipes, saveRecipes, withBench, withRecipeId } from '#web/state/recipes.ts'
import type { KeptRecipe } from '#web/state/recipes.ts'
import { fromFragment, toFragment } from '#web/state/recipe-link.ts'

const NOON = new Date('2026-11-27T12:00:00Z')
const LATER = new Date('2026-11-27T13:00:00Z')
const gel = benchFromText('Water to 100\nGlycerin 3 %\nXanthan gum 0,5 %\nMakes 200 g')
const balm = benchFromText('Beeswax 20\nShea butter 30\nSunflower oil 50')

function makeStore(start: Record<string, string> = {}) {
  const kept = new Map(Object.entries(start))
  return {
    kept,
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
  }
}

/** The list after these benches were worked on, one an hour. */
const listOf = (...benches: (typeof gel)[]): readonly KeptRecipe[] =>
  benches.reduce<readonly KeptRecipe[]>((recipes, bench, n) => {
    const now = new Date(NOON.getTime() + n * 3_600_000)
    return withBench(recipes, withRecipeId(recipes, bench, now), now)
  }, [])

describe('the list of recipes', () => {
  test('keeps each under its own id, the one changed last first', () => {
    const recipes = listOf(gel, balm)
    expect(recipes.map(({ bench }) => bench.lines[0]?.name)).toEqual(['Beeswax', 'Water'])
    expect(new Set(recipes.map(({ id }) => id)).size).toBe(2)
  })
  test('comes back from the store as it was saved', () => {
    const store = makeStore()
    expect(saveRecipes(store, listOf(gel, balm))).toBe(true)
    expect(loadRecipes(store)).toEqual(listOf(gel, balm))
  })
  test('a bench that says nothing new keeps its date, a changed one moves to the front', () => {
    const [first, second] = listOf(gel, balm) as [KeptRecipe, KeptRecipe]
    expect(withBench([first, second], benchOf(second), LATER)).toEqual([first, second])
    const changed = { ...benchOf(second), title: 'Face gel' }
    const after = withBench([first, second], changed, new Date('2026-11-28T12:00:00Z'))
    expect(after.map(({ id }) => id)).toEqual([second.id, first.id])
    expect(after[0]?.bench.title).toBe('Face gel')
  })
  test('an emptied bench does not empty the kept recipe', () => {
    const [kept] = listOf(gel) as [KeptRecipe]
    expect(withBench([kept], { ...EMPTY, recipe: kept.id }, LATER)).toEqual([kept])
  })
  test('an empty bench is no recipe yet', () => expect(withRecipeId([], EMPTY, NOON).recipe).toBeUndefined())
  test.each(['not json', '{"version":9}', '{"version":1,"recipes":[{"id":"r1"}]}'])('%s is put aside', (text) => {
    const store = makeStore({ 'understudy-recipes': text })
    expect(loadRecipes(store)).toEqual([])
    if (text.startsWith('{')) expect(store.kept.get('understudy-recipes-unreadable')).toBe(text)
  })
  test('a copy stands beside its original', () => {
    const recipes = listOf(gel)
    const [kept] = recipes as [KeptRecipe]
    const copy = copyOf(recipes, kept, 'Face gel, second try', NOON)
    expect(copy.id).not.toBe(kept.id)
    expect(copy.bench.lines).toEqual(kept.bench.lines)
  })
})

describe('a recipe out of a link', () => {
  test('never takes the id of a recipe that says something else', () => {
    const recipes = listOf(gel)
    const own = asOwn(recipes, { ...gel, title: 'Not mine' }, LATER)
    expect(recipes.map(({ id }) => id)).not.toContain(own.recipe)
  })
  test('is one’s own when it says the same', () => {
    const recipes = listOf(gel, balm)
    const own = asOwn(recipes, withoutRecipe(gel), LATER)
    expect(own.recipe).toBe(recipes.find(({ bench }) => isSameBench(bench, gel))?.id)
  })
  test('carries no id of the device it was made on', async () => {
    const fragment = await toFragment({ ...gel, recipe: 'r1' })
    expect(await fromFragment(fragment!)).toEqual(withoutRecipe(gel))
  })
})

describe('lines', () => {
  const names = ({ lines }: typeof gel) => lines.map(({ name }) => name)
  test('move to a place and close up', () => {
    expect(names(moveLine(balm, balm.lines[2]!.key, 0))).toEqual(['Sunflower oil', 'Beeswax', 'Shea butter'])
    expect(names(moveLine(balm, balm.lines[0]!.key, 1))).toEqual(['Shea butter', 'Beeswax', 'Sunflower oil'])
  })
  test('stay where they are at an end or without a move', () => {
    expect(moveLine(balm, balm.lines[0]!.key, -1)).toBe(balm)
    expect(moveLine(balm, balm.lines[2]!.key, 9)).toBe(balm)
    expect(moveLine(balm, 'none', 0)).toBe(balm)
  })
  test('none is lost or doubled, and the way back leads back', () => {
    fc.assert(
      fc.property(fc.nat(2), fc.nat(2), (from, to) => {
        const key = balm.lines[from]!.key
        const moved = moveLine(balm, key, to)
        expect(moved.lines.map((line) => line.key).sort()).toEqual(balm.lines.map((line) => line.key).sort())
        expect(moveLine(moved, key, from).lines).toEqual(balm.lines)
      }),
    )
  })
  test('grams of a batch become per cent: 8 g of 200 g are 4 %', () => {
    expect(setGrams(gel, gel.lines[1]!.key, 8).lines[1]?.share_percent).toBe(4)
    expect(setGrams(gel, gel.lines[1]!.key, null).lines[1]?.share_percent).toBeNull()
  })
  test('grams say nothing without a batch size', () => {
    expect(setGrams(balm, balm.lines[0]!.key, 8)).toBe(balm)
  })
  test('a picked name needs no reading; share and phase of the line stay', () => {
    const changed = renameLine(gel, gel.lines[1]!.key, { ingredient: 'sorbitol', name: 'Sorbitol' })
    expect(changed.lines[1]).toMatchObject({ name: 'Sorbitol', chosen: 'sorbitol', share_percent: 3 })
  })
  test('a picked line comes last and waits for its share', () => {
    const lines = addPicked(gel, { ingredient: 'urea', name: 'Urea' }).lines
    expect(lines.at(-1)).toMatchObject({ chosen: 'urea', share_percent: null, fills: false })
    expect(new Set(lines.map(({ key }) => key)).size).toBe(lines.length)
  })
})
