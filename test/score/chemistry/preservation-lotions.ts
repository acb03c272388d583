import { idOf, preservationOf } from '#engine/index.ts'
import type { World } from '#engine/index.ts'
import type { Formula, Line } from '#engine/model/formula.ts'
import type { PreservationVerdict } from '#engine/model/preservation.ts'

/** Lotions of our own invention with an emulsifier of the printed kind; the compositions of the study were not seen. */
const OIL: Line[] = [
  { ingredient: 'paraffinum-liquidum', share_percent: 15, phase: 'oil' },
  { ingredient: 'cetyl-alcohol', share_percent: 4, phase: 'oil' },
]
const EMULSIFIERS: Record<string, Line[]> = {
  'anionic lotion pH 5.1-5.2': [{ ingredient: 'sodium-lauryl-sulfate', share_percent: 1 }],
  'anionic lotion pH 7.9-8.1': [
    { ingredient: 'stearic-acid', share_percent: 4, phase: 'oil' },
    { ingredient: 'triethanolamine', share_percent: 1.5 },
  ],
  'nonionic lotion pH 5.4-5.7': [
    { ingredient: 'polysorbate-60', share_percent: 2.5 },
    { ingredient: 'sorbitan-stearate', share_percent: 2, phase: 'oil' },
  ],
}
EMULSIFIERS['nonionic lotion pH 7.9-8.3'] = EMULSIFIERS['nonionic lotion pH 5.4-5.7']!

const middleOf = (lotion: string): number => {
  const [, low = '7', high = low] = /pH ([\d.]+)-([\d.]+)/.exec(lotion) ?? []
  return (Number(low) + Number(high)) / 2
}

/** @param agents shares by printed name [%] */
function lotionWith(lotion: string, agents: Record<string, number>): Formula {
  return {
    market: 'us',
    product: 'leave-on',
    form: 'oil-in-water',
    ph: middleOf(lotion),
    hottest_c: 75,
    lines: [
      { ingredient: 'aqua', fills: true },
      ...(EMULSIFIERS[lotion] ?? []),
      ...OIL,
      ...Object.entries(agents).map(([name, share_percent]) => ({ ingredient: idOf(name), share_percent })),
    ],
  }
}

/** What the program says of such a lotion, or null where it does not know an agent. */
export function verdictIn(world: World, lotion: string, agents: Record<string, number>): PreservationVerdict | null {
  if (Object.keys(agents).some((name) => world.find(idOf(name)) === null)) return null
  return preservationOf(world, lotionWith(lotion, agents)).verdict
}

/** A lotion that was preserved must not be said to fail, and one that was not must not be called plausible. */
export const agrees = (verdict: PreservationVerdict | null, preserved: boolean): boolean =>
  verdict !== null && (preserved ? verdict !== 'fails' : verdict !== 'plausible')
