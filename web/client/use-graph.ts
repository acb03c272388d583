import { useQueries } from '@tanstack/react-query'
import type { Api } from '#contract/api.ts'
import { call, CallError } from './call.ts'
import { useQuestion } from './question.ts'
import type { Question } from './question.ts'

type GraphReply = Api['GET /api/graph']['reply']
export type GraphNode = GraphReply['nodes'][number]
export type GraphEdge = GraphReply['edges'][number]
export type WholeGraph = Api['GET /api/graph/whole']['reply']

/** One node with all that it is joined to. */
export interface Part {
  /** the node itself; the record where an alias was asked for */
  centre: string
  /** the node and its neighbours, words before things, the usual before the rare */
  nodes: GraphNode[]
  /** edges that begin or end at the node */
  edges: GraphEdge[]
}

const PAGE = '200'
/** The largest node has some 800 neighbours; holds-with about 1,100. */
const MOST_PAGES = 8

async function ask(around: string, relations: string | undefined, signal: AbortSignal): Promise<Part> {
  const nodes: GraphNode[] = []
  const edges: GraphEdge[] = []
  let after: string | undefined
  for (let page = 0; page < MOST_PAGES; page++) {
    const reply = await call('GET /api/graph', { query: { around, relations, limit: PAGE, after }, signal })
    nodes.push(...reply.nodes)
    edges.push(...reply.edges)
    if (reply.next === null) break
    after = reply.next
  }
  const centre = nodes[0]?.id ?? around
  return { centre, nodes, edges: edges.filter(({ from, to }) => from === centre || to === centre) }
}

export interface Parts {
  /** by the id that was asked for */
  ready: ReadonlyMap<string, Part>
  loading: readonly string[]
  failed: readonly { id: string; code: string; message: string; retry: () => void }[]
}

/** The neighbours of several nodes; with whom they hold is asked only when it is shown. */
export function useGraphParts(ids: readonly string[], withHolds: boolean): Parts {
  const asked = withHolds ? ids.flatMap((id) => [[id, undefined] as const, [id, 'holds-with'] as const]) : []
  const all = withHolds ? asked : ids.map((id) => [id, undefined] as const)
  const replies = useQueries({
    queries: all.map(([id, relations]) => ({
      queryKey: ['graph', id, relations ?? ''],
      queryFn: ({ signal }: { signal: AbortSignal }) => ask(id, relations, signal),
    })),
  })
  const ready = new Map<string, Part>()
  const failed: Parts['failed'][number][] = []
  const loading = new Set<string>()
  for (const [at, [id]] of all.entries()) {
    const reply = replies[at]
    if (reply?.data) {
      const before = ready.get(id)
      ready.set(id, before ? joined(before, reply.data) : reply.data)
    } else if (reply?.isError) {
      const code = reply.error instanceof CallError ? reply.error.code : 'no-answer'
      failed.push({ id, code, message: reply.error.message, retry: () => void reply.refetch() })
    } else loading.add(id)
  }
  return { ready, loading: [...loading], failed }
}

/** Two answers about one node as one. */
function joined(a: Part, b: Part): Part {
  const known = new Set(a.nodes.map(({ id }) => id))
  return {
    centre: a.centre,
    nodes: [...a.nodes, ...b.nodes.filter(({ id }) => !known.has(id))],
    edges: [...a.edges, ...b.edges],
  }
}

/** Every node with its place and what joins them; asked when it is to be shown. */
export function useWholeGraph(when: boolean): Question<WholeGraph> {
  return useQuestion({
    key: ['graph', 'whole'],
    ask: (signal) => call('GET /api/graph/whole', { signal }),
    when,
  })
}
