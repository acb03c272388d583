import { describe, expect, test } from 'vitest'
import {
  adjustPh,
  findSwaps,
  inLanguage,
  phWindow,
  preservationOf,
  resolveNames,
  standIns,
  swapSheet,
} from '#engine/index.ts'
import type { World } from '#engine/index.ts'
import { readableName } from '#engine/units/readable-name.ts'
import type { Formula } from '#engine/model/formula.ts'
import { FORMULAS } from '../../formulas/read-formulas.ts'
import { realWorld } from '../../helpers.ts'
import { pseudoWorld } from './pseudo.ts'
import { leftover, namesIn } from './unmarked.ts'

const world = realWorld()
const german = inLanguage(world, 'de')
const pseudo = pseudoWorld(world)

/** Keys of replies under which sentences stand; all else is the same in every language. */
const SPOKEN = new Set([
  ...['why', 'text', 'message', 'remedy', 'fact', 'label', 'missing', 'standIn', 'says', 'note', 'then', 'of'],
  ...['uncertainty', 'warnings', 'cautions', 'notes', 'toCheck'],
])

/** A reply with `heard` called for every sentence of it, which it leaves out. */
function bones(reply: unknown, heard: (text: string) => void, key = ''): unknown {
  if (typeof reply === 'string' && SPOKEN.has(key)) return void heard(reply)
  if (Array.isArray(reply)) return reply.map((one) => bones(one, heard, key))
  if (typeof reply !== 'object' || reply === null) return reply
  if ('access' in reply) return reply // a claim is given as its source has it
  return Object.fromEntries(Object.entries(reply).map(([name, value]) => [name, bones(value, heard, name)]))
}

const quiet = (): void => undefined

/** Questions that lead through every layer that speaks. */
function ask(where: World, formula: Formula) {
  const missing = formula.lines.map(({ ingredient }) => ingredient)
  return {
    swaps: missing.slice(0, 6).map((id) => findSwaps(where, { formula, missing: [id], limit: 4 })),
    together: findSwaps(where, {
      formula,
      missing: missing.slice(1, 3),
      limit: 3,
      wishes: { without: ['palm-linked'] },
    }),
    wished: findSwaps(where, {
      formula,
      missing: missing.slice(2, 3),
      wishes: { only: ['aqua'], hottest_c: 20, keepPh: true },
      about: ['glycerin', 'cera-alba', 'sodium-chloride'],
    }),
    alone: missing.slice(0, 3).map((id) => standIns(where, id)),
    preservation: preservationOf(where, formula),
    window: phWindow(where, formula),
    adjust: [4.5, 8].map((target_ph) =>
      adjustPh(where, { formula, batch_g: 300, target_ph, meter: 'strips', diluted: 10, temp_c: 40 }),
    ),
  }
}

/** Names of the law's list of allergens, in sentence case. */
const allergens = world.knowledge.allergens.map(({ label }) => readableName(label))

const formulas = FORMULAS.map(({ formula }) => formula)

describe('swaps, preservation and pH in German', () => {
  test.each(FORMULAS.map(({ name, formula }) => [name, formula] as const))(
    'are those in English for %s',
    (_, formula) => {
      expect(bones(ask(german, formula), quiet)).toEqual(bones(ask(world, formula), quiet))
    },
  )

  test('leave no sentence unmarked', () => {
    const left = new Map<string, string>()
    for (const formula of formulas) {
      const own = [...namesIn(formula, pseudo), ...allergens]
      bones(ask(pseudo, formula), (text) => {
        if (!left.has(text)) left.set(text, leftover(text, own))
      })
    }
    expect(left.size).toBeGreaterThan(1000)
    expect([...left].filter(([, rest]) => rest !== '')).toEqual([])
  })
})

describe('names in German', () => {
  const typed = [
    'glycerine 85%',
    'coconut',
    'xantan gum',
    'methanol',
    'soda',
    'aloe',
    'E 999',
    '50-00-1',
    'rose',
    'lavnder oil',
  ]
  test('are read as in English', () => {
    expect(bones(resolveNames(german, typed), quiet)).toEqual(bones(resolveNames(world, typed), quiet))
  })
  test('leave no note in English', () => {
    const english = new Set<string>()
    bones(resolveNames(world, typed), (text) => void english.add(text))
    const same: string[] = []
    bones(resolveNames(german, typed), (text) => void (english.has(text) && same.push(text)))
    expect(english.size).toBeGreaterThan(8)
    expect(same).toEqual([])
  })
})

test('a sheet of all lines is the same in German', () => {
  const formula = formulas[0]!
  expect(bones(swapSheet(german, { formula }), quiet)).toEqual(bones(swapSheet(world, { formula }), quiet))
})
