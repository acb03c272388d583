import { normalName } from '#engine/knowledge/name-index.ts'
import type { World } from './world.ts'

/** Below this share of common letter triples a name is no help to someone who mistyped. */
const LEAST_LIKENESS = 0.4

interface TripleIndex {
  names: { id: string; size: number }[]
  /** letter triple → positions in `names` */
  byTriple: Map<string, number[]>
}

const INDICES = new WeakMap<World, TripleIndex>()

function triplesOf(text: string): Set<string> {
  const padded = `  ${text} `
  return new Set(Array.from({ length: padded.length - 2 }, (_, at) => padded.slice(at, at + 3)))
}

function buildIndex(world: World): TripleIndex {
  const index: TripleIndex = { names: [], byTriple: new Map() }
  for (const [name, hits] of world.knowledge.names.byName) {
    const hit = hits.find(({ why }) => why === 'inci' || why === 'exact')
    if (!hit) continue
    const triples = triplesOf(name)
    for (const triple of triples) {
      const list = index.byTriple.get(triple)
      if (list) list.push(index.names.length)
      else index.byTriple.set(triple, [index.names.length])
    }
    index.names.push({ id: hit.id, size: triples.size })
  }
  return index
}

/** Built at the first miss: most formulas name what is known. */
function indexOf(world: World): TripleIndex {
  const known = INDICES.get(world)
  if (known) return known
  const built = buildIndex(world)
  INDICES.set(world, built)
  return built
}

/**
 * Ids whose names look most like a text, the likest first, ties by id.
 * Likeness is the Dice share of common letter triples; it says nothing of chemistry and is only ever shown to people.
 */
export function nearestIds(world: World, text: string, most = 5): string[] {
  const { names, byTriple } = indexOf(world)
  const triples = triplesOf(normalName(text))
  const common = new Map<number, number>()
  for (const triple of triples) {
    for (const at of byTriple.get(triple) ?? []) common.set(at, (common.get(at) ?? 0) + 1)
  }
  const best = new Map<string, number>()
  for (const [at, count] of common) {
    const name = names[at]
    if (!name) continue
    const likeness = (2 * count) / (triples.size + name.size)
    if (likeness >= LEAST_LIKENESS && likeness > (best.get(name.id) ?? 0)) best.set(name.id, likeness)
  }
  return [...best]
    .sort(([a, likeA], [b, likeB]) => likeB - likeA || (a < b ? -1 : 1))
    .slice(0, most)
    .map(([id]) => id)
}
