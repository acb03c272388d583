import { expect, test } from 'vitest'
import type { SheetLine } from '#web/client/use-swap-sheet.ts'
import { commonNotes, doseOf, isDangerous, ownNotes } from '#web/state/sheet-notes.ts'

type StandIn = SheetLine['standIns'][number]
const standIn = (id: string, changes: StandIn['changes'], findings: StandIn['findings'] = []): StandIn =>
  ({ lines: [{ ingredient: id, share_percent: 24.6 }], changes, findings }) as unknown as StandIn
const line = (...standIns: StandIn[]): SheetLine => ({ standIns }) as unknown as SheetLine

const WET = { kind: 'order', text: 'wet it first' } as const
const COOL = { kind: 'order', text: 'goes in cool' } as const
const LABEL = { kind: 'label', text: 'The list changes: B in place of A. New allergen to name: soya' } as const

test('what holds for every stand-in of a line is said once', () => {
  const [a, b] = [standIn('a', [WET, COOL]), standIn('b', [WET, LABEL])]
  expect(commonNotes(line(a, b))).toEqual(['wet it first'])
  expect(ownNotes(a, ['wet it first'])).toEqual(['goes in cool'])
  expect(ownNotes(b, ['wet it first'])).toEqual(['New allergen to name: soya'])
})

test('with one stand-in nothing is common', () => expect(commonNotes(line(standIn('a', [WET])))).toEqual([]))

test('the dose is what the swap puts in, not what there is of it in all', () => {
  const dose = { kind: 'dose', text: '', ingredient: 'a', from: 15, to: 14.6, unit: '%' } as const
  expect(doseOf(standIn('a', [dose]), 'a')).toBe(14.6)
  expect(doseOf(standIn('a', []), 'a')).toBe(24.6)
})

test('a stand-in of which the check warns to handle it with care is dangerous; another line of the recipe is not its fault', () => {
  const finding = (about: string[]) => [{ rule: 'handle-with-care', about }] as unknown as StandIn['findings']
  expect(isDangerous(standIn('a', [], finding(['a'])))).toBe(true)
  expect(isDangerous(standIn('a', [], finding(['b'])))).toBe(false)
})
