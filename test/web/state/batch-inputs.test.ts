import { describe, expect, test } from 'vitest'
import { fromAddress, loadInputs, NO_INPUTS, partsOf, saveInputs, toAddress } from '#web/state/batch-inputs.ts'
import type { BatchInputs } from '#web/state/batch-inputs.ts'
import { costText, decimalsOf, onScale } from '#web/format/mass.ts'
import { today } from '#web/format/day.ts'

const TODAY = '2026-03-12'
const inputs: BatchInputs = {
  ...{ step_g: 0.01, overage_percent: 5, date: '2026-03-10', code: 'C 7/a~b', currency: 'EUR' },
  prices: { aqua: 0.5 },
}

function memory(kept?: string) {
  let text = kept ?? null
  return { getItem: () => text, setItem: (_: string, value: string) => void (text = value), read: () => text }
}

describe('what this browser keeps', () => {
  test('are scale, overage, currency and prices; day and code belong to one batch', () => {
    const store = memory()
    saveInputs(store, inputs)
    expect(loadInputs(store, TODAY)).toEqual({ ...inputs, date: TODAY, code: '' })
  })
  test('that cannot be read is as if there were nothing', () => {
    const fresh = { ...NO_INPUTS, date: TODAY }
    for (const kept of ['', '{', '[]', '7', '{"step_g":0.3,"overage_percent":-1,"prices":{"aqua":"free"}}'])
      expect(loadInputs(memory(kept), TODAY)).toEqual(fresh)
  })
  test('is not missed where storing is forbidden', () => {
    const store = {
      getItem: () => {
        throw new Error('forbidden')
      },
      setItem: () => {
        throw new Error('forbidden')
      },
    }
    expect(() => saveInputs(store, inputs)).not.toThrow()
    expect(loadInputs(store, TODAY).step_g).toBe(0.1)
  })
})

describe('the address', () => {
  test('carries recipe and batch, and brings both back', () => {
    const address = toAddress('#r1.abc-_', inputs)
    const { recipe, batch } = partsOf(address)
    expect(recipe).toBe('#r1.abc-_')
    expect(fromAddress(batch, { ...NO_INPUTS, currency: 'EUR', prices: inputs.prices })).toEqual(inputs)
  })
  test('never carries prices', () => expect(toAddress('#r1.x', inputs)).not.toMatch(/aqua|EUR/))
  test('without a batch leaves what was there', () => {
    expect(partsOf('#r1.abc')).toEqual({ recipe: '#r1.abc', batch: '' })
    expect(fromAddress('', inputs)).toEqual(inputs)
  })
  test('with nonsense takes nothing of it', () =>
    expect(fromAddress('s=0.5&o=900&d=soon', { ...NO_INPUTS, date: TODAY })).toEqual(NO_INPUTS))
})

describe('figures', () => {
  test('have the decimals of the scale', () => {
    expect([1, 0.1, 0.01, 0.001, 5].map(decimalsOf)).toEqual([0, 1, 2, 3, 0])
    expect([onScale(8, 0.1), onScale(0.6, 0.01), onScale(143.8, 1)]).toEqual(['8.0', '0.60', '144'])
  })
  test('of money have two decimals, small ones three', () =>
    expect([costText(0, ''), costText(0.0231, 'EUR'), costText(12.3, '€')]).toEqual(['0.00', '0.023 EUR', '12.30 €']))
  test('of a day are those of the clock here', () => expect(today(new Date(2026, 0, 5))).toBe('2026-01-05'))
})
