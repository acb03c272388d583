import { describe, expect, test } from 'vitest'
import type { Claim, Ingredient, Provenance } from '#engine/model/records.ts'
import { namesIn } from '#engine/knowledge/selector.ts'
import { isObject } from '#engine/knowledge/expand-claims.ts'
import { UNPRINTED } from '#engine/knowledge/lints/source-is-listed.ts'
import { realRaw, realWorld } from '../helpers.ts'
import { claimsReport } from '../score/data-figures.ts'

const world = realWorld()
const { knowledge } = world
const all = [...knowledge.ingredients.values()]

const statements = (one: Ingredient): Provenance[] => [
  ...one.roles,
  ...one.clashes,
  ...one.needs,
  ...one.boostedBy,
  ...one.inactivatedBy,
  ...one.standsFor,
  ...one.notFor,
]
const claims = (one: Ingredient): Claim[] => [...one.facts.values()].flat()

describe('size', () => {
  const report = claimsReport(world)
  test('there are at least 100 roles', () => expect(knowledge.roles.size).toBeGreaterThanOrEqual(100))
  test('there are at least 550 full and 600 short records, and the inventory behind them', () => {
    expect(report.records.full).toBeGreaterThanOrEqual(550)
    expect(report.records.short).toBeGreaterThanOrEqual(600)
    expect(report.records.inventory_only).toBeGreaterThan(25_000)
  })
  test('of more than 9,000 claims that somebody outside made, 65 in a hundred were read or seen quoted', () => {
    expect(report.claims.from_outside.claims).toBeGreaterThan(9000)
    expect(report.claims.from_outside.seen_share).toBeGreaterThanOrEqual(0.65)
  })
})

describe('provenance', () => {
  const faulty = (of: (one: Ingredient) => readonly Provenance[]) =>
    all.flatMap((one) =>
      of(one)
        .filter(({ source, access, date }) => !source || !access || !/^\d{4}-\d{2}-\d{2}$/.test(date))
        .map(({ source, access, date }) => `${one.id}: ${source} ${access} ${date}`),
    )

  test('every value says source, access and day', () => expect(faulty(claims).slice(0, 20)).toEqual([]))
  test('every statement says source, access and day', () => expect(faulty(statements).slice(0, 20)).toEqual([]))

  test('a printed source comes with the place in it', () => {
    const bare = all.flatMap((one) =>
      [...claims(one), ...statements(one)]
        .filter(({ source, locator }) => !UNPRINTED.has(source) && !locator)
        .map(({ source }) => `${one.id}: ${source}`),
    )
    expect([...new Set(bare)].slice(0, 20)).toEqual([])
  })

  test('a reader is pointed to laws, prints and tables, not to files of a collector', () => {
    const collected = /\b(regulation|preservation|inventory|ph|windows)\/[\w-]+\.[ct]sv|^[\w-]+\.[ct]sv/
    const said = all.flatMap((one) => [...claims(one), ...statements(one)])
    const texts = said.flatMap((one) => [
      one.locator,
      'note' in one ? one.note : undefined,
      'is' in one ? one.is : undefined,
    ])
    const sources = [...knowledge.sources.values()].flatMap(({ title, locator, note }) => [title, locator, note])
    expect([...texts, ...sources].filter((text) => typeof text === 'string' && collected.test(text))).toEqual([])
  })

  test('practice and memory are never called measured or law', () => {
    const bold = all.flatMap((one) =>
      [...claims(one), ...statements(one)]
        .filter(({ kind, source, access }) =>
          kind === 'measured' || kind === 'law' ? source === 'practice' || access === 'common-practice' : false,
        )
        .map(({ kind }) => `${one.id}: ${kind}`),
    )
    expect(bold).toEqual([])
  })

  test('a property has at most one deciding claim', () => {
    const twice = all.flatMap((one) =>
      [...one.facts].filter(([, list]) => list.filter(({ used }) => used).length > 1).map(([p]) => `${one.id} ${p}`),
    )
    expect(twice).toEqual([])
  })

  test('claims have ids of their own within a record', () => {
    const doubled = all.filter((one) => new Set(claims(one).map(({ id }) => id)).size < claims(one).length)
    expect(doubled.map(({ id }) => id)).toEqual([])
  })
})

describe('roles', () => {
  const roles = [...knowledge.roles.values()]

  test('broader roles exist and no role is above itself', () => {
    for (const role of roles) {
      if (role.broader !== undefined) expect(knowledge.roles.has(role.broader)).toBe(true)
      const chain = [role.id]
      for (let at = role.broader; at !== undefined; at = knowledge.roles.get(at)?.broader) {
        expect(chain).not.toContain(at)
        chain.push(at)
      }
    }
  })

  test('what a role is confused with exists', () => {
    expect(roles.flatMap((r) => r.confusedWith.filter((other) => !knowledge.roles.has(other)))).toEqual([])
  })

  test('every role is played by something', () => {
    expect(roles.filter(({ id }) => world.players(id).length === 0).map(({ id }) => id)).toEqual([])
  })

  test('a search for a stand-in goes by roles, properties, groups and classes that exist', () => {
    const groups = new Set([...knowledge.classes.values()].map(({ group }) => group))
    for (const { id, swap } of roles) {
      expect([id, knowledge.roles.has(swap.scope)]).toEqual([id, true])
      for (const must of swap.must) {
        if (must.class) expect(knowledge.classes.has(must.class)).toBe(true)
        if (must.word)
          expect((must.one_of ?? []).filter((w) => !knowledge.properties.get(must.word!)?.words.includes(w))).toEqual(
            [],
          )
      }
      for (const { property, group, weight } of swap.criteria) {
        if (property) expect([id, property, knowledge.properties.has(property)]).toEqual([id, property, true])
        if (group) expect([id, group, groups.has(group)]).toEqual([id, group, true])
        expect(weight).toBeGreaterThan(0)
      }
    }
  })
})

describe('relations', () => {
  const relations = (realRaw().relations.data as { relations: Record<string, { from: string[]; to: string[] }> })
    .relations
  const kindOf = (node: string) => world.graph.getNodeAttribute(node, 'kind')

  test('every edge is in the vocabulary and joins the kinds of ends that it allows', () => {
    const wrong: string[] = []
    world.graph.forEachEdge((key, { relation }, from, to) => {
      const ends = relations[relation]
      if (!ends?.from.includes(kindOf(from)) || !ends.to.includes(kindOf(to))) wrong.push(key)
    })
    expect(wrong).toEqual([])
  })

  test('nothing stands in for itself or clashes with itself', () => {
    for (const { id, standsFor, notFor, clashes } of world.subjects)
      expect([
        ...standsFor.map((one) => one.for),
        ...notFor.map((one) => one.for),
        ...clashes.map((one) => one.with),
      ]).not.toContain(id)
  })

  test('nothing stands in and does not stand in for the same, in all circumstances', () => {
    const both = world.subjects.flatMap(({ id, standsFor, notFor }) =>
      standsFor
        .filter((yes) => !yes.when && notFor.some((no) => !no.when && no.for === yes.for))
        .map((yes) => `${id} for ${yes.for}`),
    )
    expect(both).toEqual([])
  })

  test('circumstances name areas of use that a formula can state', () => {
    const AREAS = ['face', 'eye', 'lip', 'hair', 'hand', 'body', 'deodorant', 'intimate', 'nail', 'under-3']
    const wrong = all.flatMap((one) =>
      [...one.roles, ...one.needs, ...one.standsFor].flatMap(({ when }) =>
        (when?.areas ?? []).filter((area) => !AREAS.includes(area)).map((area) => `${one.id}: ${area}`),
      ),
    )
    expect(wrong).toEqual([])
  })

  test('both sides of every clash of classes are met by something', () => {
    const idle = knowledge.clashes.flatMap(({ id }, index) =>
      ([0, 1] as const).filter((side) => !world.subjects.some((s) => s.clashSides[side].has(index))).map(() => id),
    )
    expect(idle).toEqual([])
  })
})

describe('blends', () => {
  const blends = world.subjects.filter(({ madeOf }) => madeOf.length > 0)

  test('every part is known', () => {
    expect(blends.flatMap(({ madeOf }) => madeOf.filter((part) => !world.find(part.ingredient)))).toEqual([])
  })

  test('no blend is made of itself, however deep', () => {
    const reaches = (id: string, target: string, seen = new Set<string>()): boolean => {
      if (seen.has(id)) return false
      seen.add(id)
      const parts = world.find(id)?.madeOf ?? []
      return parts.some(({ ingredient }) => ingredient === target || reaches(ingredient, target, seen))
    }
    expect(blends.filter(({ id }) => reaches(id, id)).map(({ id }) => id)).toEqual([])
  })

  test('an id of several parts names parts that are in the blend', () => {
    const strange = blends.filter(({ id, madeOf }) => {
      const named = id.split('-and-')
      const parts = new Set(madeOf.map(({ ingredient }) => ingredient))
      return named.length > 1 && named.filter((part) => parts.has(part)).length < named.length
    })
    expect(strange.map(({ id }) => id)).toEqual([])
  })

  test('a blend with a charged part says so: charges are looked up on the line', () => {
    const silent = blends.flatMap(({ id, classes, parts }) =>
      ['anionic', 'cationic']
        .filter((charge) => !classes.has(charge) && !classes.has('amphoteric'))
        .filter((charge) =>
          parts.some(
            ({ subject, share }) => share >= 0.1 && subject.classes.has(charge) && !subject.classes.has('amphoteric'),
          ),
        )
        .map((charge) => `${id}: ${charge}`),
    )
    expect(silent).toEqual([])
  })

  test('a preserving blend states in which pH it works', () => {
    const open = blends.filter(
      (one) =>
        one.roles.some(({ role }) => role === 'preservative') && !one.facts.get('ph_effective')?.some((c) => c.used),
    )
    expect(open.map(({ id }) => id)).toEqual([])
  })
})

test('selectors of the vocabulary files name only known things', () => {
  const unknown = knowledge.clashes.flatMap(({ between }) =>
    between.flatMap((selector) => {
      const { classes, roles, ids } = namesIn(selector)
      return [
        ...classes.filter((one) => !knowledge.classes.has(one)),
        ...roles.filter((one) => !knowledge.roles.has(one)),
        ...ids.filter((one) => !world.find(one)),
      ]
    }),
  )
  expect(unknown).toEqual([])
})

test('no file of the data is empty or no object', () => {
  const raw = realRaw()
  const files = [...raw.ingredients, ...raw.limits, ...raw.rules]
  expect(files.filter(({ data }) => !isObject(data)).map(({ path }) => path)).toEqual([])
})
