import { DirectedGraph } from 'graphology'
import { bfsFromNode } from 'graphology-traversal'
import type { BatchEdge } from '#engine/model/batch.ts'
import type { Draft } from './plan.ts'

const needsBefore = (step: Draft): string[] => [...new Set([...step.after, ...step.uses])]

function whole(steps: readonly Draft[]): DirectedGraph {
  const graph = new DirectedGraph()
  for (const { id } of steps) graph.addNode(id)
  for (const step of steps) {
    const before = needsBefore(step)
    // Work begins when everything is weighed; what ends the work names its own step before.
    const from = before.length === 0 && step.id !== 'clean' ? ['weigh'] : before
    for (const id of from) if (!graph.hasEdge(id, step.id)) graph.addEdge(id, step.id)
  }
  return graph
}

const reaches = (graph: DirectedGraph, from: string, to: string): boolean => {
  let found = false
  bfsFromNode(graph, from, (node) => {
    if (node === to) found = true
    return found
  })
  return found
}

/** Edges "before" that say something: one that follows from others is left out. */
export function edgesOf(steps: readonly Draft[]): BatchEdge[] {
  const graph = whole(steps)
  return graph
    .edges()
    .filter((edge) => {
      const [from, to] = graph.extremities(edge)
      return !graph.outNeighbors(from).some((next) => next !== to && reaches(graph, next, to))
    })
    .map((edge) => graph.extremities(edge))
    .map(([from, to]) => ({ from, relation: 'before' as const, to }))
    .sort((a, b) => (`${a.from} ${a.to}` < `${b.from} ${b.to}` ? -1 : 1))
}

/** All that is in the vessel after a step: what it adds and what the mixtures in it brought, with the kept water by step. */
export function contentsOf(steps: readonly Draft[], id: string): { line: string; step: string }[] {
  const step = steps.find((one) => one.id === id)
  if (!step) return []
  return [...step.uses.flatMap((used) => contentsOf(steps, used)), ...step.adds.map((line) => ({ line, step: id }))]
}
