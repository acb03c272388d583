import { resolveNames } from '#engine/index.ts'
import type { World } from '#engine/index.ts'
import { searchNames } from '#engine/knowledge/search-names.ts'
import { quantile, round, timesOf, used_mb } from './measure.ts'
import { everyName, minisearch, plainTrigrams } from './name-engines.ts'
import { KINDS, makeQueries } from './name-queries.ts'
import type { NameQuery } from './name-queries.ts'
import { openRealWorld } from './real-world.ts'
import type { Row, Section } from './section.ts'

const QUERIES = 2000
const ROUNDS = 3
/** Comparing every name takes a tenth of a second: a part of the questions shows what can be reached. */
const QUERIES_FOR_SLOW = 60
/** A library that takes milliseconds a question. */
const QUERIES_FOR_LIBRARY = 600

interface Engine {
  name: string
  search: (text: string) => string[]
  queries: number
  rounds: number
  build_ms: number
  memory_mb: number
}

/** A library's index over the names of the inventory, answering with ids. */
function overNames(names: readonly string[], idAt: (place: number) => string) {
  return (name: string, build: typeof minisearch, queries = QUERIES, rounds = ROUNDS): Engine => {
    const before_mb = used_mb()
    const start = performance.now()
    const search = build(names)
    const build_ms = performance.now() - start
    const memory_mb = used_mb() - before_mb
    return { name, search: (text) => search(text).map(idAt), queries, rounds, build_ms, memory_mb }
  }
}

function ours(world: World): Engine[] {
  const before_mb = used_mb()
  const start = performance.now()
  const search = (text: string) => searchNames(world.knowledge, text, 5).map(({ id }) => id)
  search('glycerin') // the index is built at the first question
  const built = {
    queries: QUERIES,
    rounds: ROUNDS,
    build_ms: performance.now() - start,
    memory_mb: used_mb() - before_mb,
  }
  const read = (text: string): string[] => {
    const [result] = resolveNames(world, [text])
    if (result?.ingredient) return [result.ingredient]
    return (result?.choices ?? []).slice(0, 5).map(({ ingredient }) => ingredient)
  }
  return [
    { name: 'our pick list', search, ...built },
    { name: 'our reading (answers or asks)', search: read, ...built },
  ]
}

const percent = (part: number, whole: number): number => round((100 * part) / whole)

interface Measured {
  row: Row
  at1_percent: number
  at5_percent: number
  p50_ms: number
  p99_ms: number
}

function measure(engine: Engine, all: readonly NameQuery[], meantId: (query: NameQuery) => string): Measured {
  const queries = all.slice(0, engine.queries)
  const found = queries.map((query) => ({ kind: query.kind, at: engine.search(query.text).indexOf(meantId(query)) }))
  const share = (list: typeof found, most: number) =>
    percent(list.filter(({ at }) => at >= 0 && at < most).length, list.length)
  const times_ms = timesOf(
    queries.map(({ text }) => text),
    engine.search,
    engine.rounds,
  )
  const at1_percent = share(found, 1)
  const at5_percent = share(found, 5)
  const p50_ms = quantile(times_ms, 0.5)
  const p99_ms = quantile(times_ms, 0.99)
  const byKind = KINDS.map((kind) => {
    const list = found.filter((one) => one.kind === kind)
    return [kind, `${Math.round(share(list, 1))}/${Math.round(share(list, 5))}`] as const
  })
  const row = {
    'names: way to look up': engine.name,
    'at 1 %': at1_percent,
    'at 5 %': at5_percent,
    'p50 ms': round(p50_ms),
    'p99 ms': round(p99_ms),
    'build ms': Math.round(engine.build_ms),
    MB: Math.round(engine.memory_mb),
    queries: queries.length,
    ...Object.fromEntries(byKind),
  }
  return { row, at1_percent, at5_percent, p50_ms, p99_ms }
}

/** Look-up of every name of the inventory, mistyped in six ways. */
export function benchNames(): Section {
  const world = openRealWorld()
  const rows = [...world.knowledge.inventory.values()]
  const byName = new Map(rows.map(({ inci, id }) => [inci.trim().toLowerCase(), id]))
  const names = [...byName.keys()]
  const idAt = (place: number): string => world.find(byName.get(names[place] ?? '') ?? '')?.id ?? ''
  const queries = makeQueries(names, QUERIES)
  const over = overNames(names, idAt)
  const [search, reading] = ours(world)
  const plain = over('plain runs of three letters, Dice', plainTrigrams)
  const engines = [search!, reading!, plain, over('minisearch', minisearch, QUERIES_FOR_LIBRARY, 1)]
  engines.push(over('every name by edits', everyName, QUERIES_FOR_SLOW, 1))
  const measured = engines.map((engine) => measure(engine, queries, ({ meant }) => idAt(meant)))
  const [own, , dice] = measured
  const target = (text: string, reached: boolean) => ({ text, reached })
  return {
    title: `Name look-up: ${names.length} names of the inventory, ${QUERIES} seeded questions, the fastest of ${ROUNDS} rounds`,
    rows: measured.map(({ row }) => row),
    targets: [
      target('pick list: at least 90 % first, 99.5 % among five', own!.at1_percent >= 90 && own!.at5_percent >= 99.5),
      target('pick list: half of the questions no slower than by plain runs', own!.p50_ms <= dice!.p50_ms),
      target('pick list: slowest hundredth at most 1.3 times that of plain runs', own!.p99_ms <= 1.3 * dice!.p99_ms),
    ],
  }
}
