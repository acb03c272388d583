import { expect, test } from 'vitest'
import { batch, bench, calculations, explorer, learn, recipes, sources, swaps, teach } from '#web/text/de.ts'

const { time } = batch.batch.steps

// Duden: Einzahl nach 1, Mehrzahl sonst, auch nach 0.
test('one is one, all else is many', () => {
  expect([0, 1, 2].map(bench.recipe.onBench)).toEqual([
    '0 Zeilen auf der Werkbank',
    '1 Zeile auf der Werkbank',
    '2 Zeilen auf der Werkbank',
  ])
  expect([1, 3].map((n) => bench.finding.more(n, false))).toEqual(['1 weitere Bemerkung', '3 weitere Bemerkungen'])
  expect([1, 3].map((n) => bench.finding.more(n, true))).toEqual(['1 Bemerkung', '3 Bemerkungen'])
  expect([1, 2].map(swaps.wishes.active)).toEqual(['1 Wunsch', '2 Wünsche'])
  expect([1, 2].map(swaps.swaps.found)).toEqual(['Ein Ersatz', '2 Ersatzstoffe, der nächste zuerst'])
  expect(sources.restsOn(1, 1)).toBe('1 Aussage, in 1 Datensatz')
  expect(sources.restsOn(3, 2)).toBe('3 Aussagen, in 2 Datensätzen')
  expect(learn.review.due(1, 2)).toBe('1 Frage jetzt fällig, 2 später am Tag.')
  expect(teach.results.left(1)).toMatch(/^1 Zeile ließ sich nicht lesen/)
  expect(teach.results.left(2)).toMatch(/^2 Zeilen ließen sich nicht lesen/)
})

test('what is zero is not counted among the findings', () => {
  expect(bench.check.counts(1, 2, 0)).toBe('1 Stopp, 2 Warnungen')
  expect(bench.check.counts(0, 1, 1)).toBe('1 Warnung, 1 Hinweis')
  expect(bench.check.counts(0, 0, 0)).toBe('')
})

test('figures have a comma, thousands a point', () => {
  expect(bench.sum.short(98.75)).toBe('Die Anteile ergeben 98,75 %: 1,25 % fehlen.')
  expect(recipes.size(3, 250.5)).toBe('3 Zeilen, 250,5 g')
  expect(explorer.more(29000)).toBe('29.000 weitere')
})

test('times by their unit, in the singular where the most is one', () => {
  expect(time(5, 10, 'minutes')).toBe('5 bis 10 Minuten')
  expect(time(1, 1, 'hours')).toBe('1 Stunde')
  expect(time(0.5, 1, 'hours')).toBe('0,5 bis 1 Stunde')
  expect(time(1, 30, 'days')).toBe('1 bis 30 Tage')
  expect(time(4, 6, 'weeks')).toBe('4 bis 6 Wochen')
})

test('what is wrong with a figure of a calculation', () => {
  expect(calculations.fault({ is: 'needed' })).toBe('Diese Angabe wird gebraucht.')
  expect(calculations.fault({ is: 'low', limit: 0, over: true })).toBe('Muss mehr als 0 sein.')
  expect(calculations.fault({ is: 'low', limit: 0.001, over: false })).toBe('Mindestens 0,001.')
  expect(calculations.fault({ is: 'high', limit: 14, under: false })).toBe('Höchstens 14.')
})
