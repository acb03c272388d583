import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { EMPTY } from '#web/state/bench.ts'
import { benchFromText } from '#web/state/from-text.ts'
import { fromFragment, toFragment } from '#web/state/recipe-link.ts'

const recipe = benchFromText('Face gel\nWater to 100\nGlycerin 3 %\nXanthan gum 0,5 %\nSodium benzoate 0.5\npH 4.8')

describe('a link with a recipe', () => {
  test('brings the whole bench back', async () => {
    const fragment = await toFragment(recipe)
    expect(fragment).toMatch(/^#r1\.[\w-]+$/)
    expect(await fromFragment(fragment!)).toEqual(recipe)
  })
  test('brings back any signs that a person typed', async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ unit: 'grapheme', maxLength: 60 }), async (title) => {
        expect((await fromFragment((await toFragment({ ...recipe, title }))!))?.title).toBe(title)
      }),
      { numRuns: 30 },
    )
  })
  test('is not there for an empty bench', async () => expect(await toFragment(EMPTY)).toBe(''))
  test('is not made when it would be cut off on the way', async () => {
    const notes = Array.from({ length: 9000 }, (_, n) => Math.sin(n).toString(36)).join(' ')
    expect(await toFragment({ ...recipe, notes })).toBeNull()
  })
  test.each(['', '#content', '#r1.', '#r1.%%%', '#r1.AAAA', '#r2.abc'])('%j carries no recipe', async (fragment) => {
    expect(await fromFragment(fragment)).toBeNull()
  })
})
