import fc from 'fast-check'
import { afterEach, expect, test, vi } from 'vitest'
import { isInstruction } from '#web/recipe/instruction.ts'
import { readNumber } from '#web/recipe/number.ts'
import { parseRecipe } from '#web/recipe/parse-recipe.ts'
import { readProcess } from '#web/recipe/process-notes.ts'

afterEach(() => vi.unstubAllGlobals())

async function germanFigures() {
  vi.resetModules()
  vi.stubGlobal('navigator', { language: 'de' })
  return import('#web/format/number.ts')
}

test('a figure that the German page shows is read back as the same figure', async () => {
  const { upTo } = await germanFigures()
  fc.assert(
    fc.property(fc.double({ min: 0, max: 100_000, noNaN: true }), (value) => {
      expect(readNumber(upTo(value, 4))).toBe(Number(value.toFixed(4)))
    }),
  )
})

test('a recipe copied off the German page is read as it stood there', async () => {
  const { shareText } = await germanFigures()
  const share = fc.integer({ min: 1, max: 999 }).map((thousandths) => thousandths / 1000)
  const more = fc.integer({ min: 100, max: 9000 }).map((hundredths) => hundredths / 100)
  fc.assert(
    fc.property(fc.array(fc.oneof(share, more), { minLength: 1, maxLength: 8 }), (shares) => {
      const names = shares.map((_, at) => `Glycerin ${'abcdefgh'.charAt(at)}x`)
      const text = ['Aqua ad 100', ...shares.map((one, at) => `${names[at]} ${shareText(one)}`)].join('\n')
      const { lines } = parseRecipe(text)
      expect(lines.slice(1).map((line) => (line.kind === 'ingredient' ? line.share_percent : null))).toEqual(shares)
    }),
  )
})

test.each([
  'A und B auf 75 °C erhitzen, zusammengeben, rühren, bis es eindickt',
  'Bei 75 °C zusammen schmelzen, in Hülsen gießen',
  'Unter Rühren auf 40 °C abkühlen lassen.',
  'Ergibt 200 g',
])('"%s" is an instruction', (line) => {
  expect(isInstruction(line)).toBe(true)
})

test.each(['Mandelöl 12', '3 % Glycerin', 'Rizinusöl, kaltgepresst 5 %'])('"%s" is none', (line) => {
  expect(isInstruction(line)).toBe(false)
})

test('heat and size are read from German steps', () => {
  expect(readProcess('Auf 75 °C erhitzen, auf 40 °C abkühlen')).toEqual({ hottest_c: 75 })
  expect(readProcess('Auf 40 °C abkühlen, dann Phase C zugeben')).toEqual({})
  expect(readProcess('Bei 70 °C schmelzen, kühl unter 25 °C lagern')).toEqual({ hottest_c: 70 })
  expect(readProcess('Ergibt 1,5 kg, pH 5,5')).toEqual({ batch_g: 1500, ph: 5.5 })
})
