import { UndirectedGraph } from 'graphology'
import { overlap } from '#engine/units/range.ts'
import type { Range } from '#engine/units/range.ts'
import { rangeOfProperty } from './subject.ts'
import type { Subject } from './subject.ts'

/** Edge between two ingredients that state a window: where both ends hold. Null: their windows do not meet. */
export interface HoldsWithEdge {
  ph: Range | null | undefined
  heat_c: Range | null | undefined
}

export type HoldsWith = UndirectedGraph<{ ph?: Range; heat_c?: Range }, HoldsWithEdge>

function heatWindow(subject: Subject): Range | undefined {
  const max = rangeOfProperty(subject, 'heat_max_c')?.max
  return max === undefined ? undefined : { max }
}

/** Everything dissolves or swells in the water phase: only there does a pH window bear on a neighbour. */
export function buildHoldsWith(subjects: readonly Subject[]): HoldsWith {
  const graph: HoldsWith = new UndirectedGraph()
  for (const subject of subjects) {
    const ph = rangeOfProperty(subject, 'ph_stability')
    const heat_c = heatWindow(subject)
    if (ph || heat_c) graph.addNode(subject.id, { ...(ph && { ph }), ...(heat_c && { heat_c }) })
  }
  const nodes = graph.mapNodes((id, attributes) => ({ id, ...attributes }))
  nodes.forEach((a, index) => {
    for (const b of nodes.slice(index + 1)) {
      if (!(a.ph && b.ph)) continue
      graph.addEdge(a.id, b.id, {
        ph: overlap(a.ph, b.ph),
        heat_c: a.heat_c && b.heat_c ? overlap(a.heat_c, b.heat_c) : undefined,
      })
    }
  })
  return graph
}
