import type { FormulaContext } from '#engine/formula/context.ts'
import { nameOf } from '#engine/formula/say.ts'
import { rangeOfProperty } from '#engine/graph/subject.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { World } from '#engine/graph/world.ts'
import { phasesOf } from './phases.ts'
import { acidPartsOf, shareAt } from './ph-findings.ts'
import type { SubstanceState } from './substance.ts'
import { figuresOf } from './tables.ts'
import { shareText } from './texts.ts'
import { cite } from './told.ts'
import type { Told } from './told.ts'
import { EDGE_PH, workingWindow } from './window.ts'
import { agentsHere } from './work.ts'
import type { Work } from './work.ts'

/** Neighbours that do not bear so low a pH. */
const tooAcidFor = (context: FormulaContext, ph: number): string[] =>
  context.lines
    .filter(({ subject }) => (rangeOfProperty(subject, 'ph_stability')?.min ?? -Infinity) > ph)
    .map(({ subject }) => nameOf(subject))

/** A lower pH brings an acid back: how low, and what is then undissociated. */
function lowerPh({ subject }: Work, context: FormulaContext): Told[] {
  const window = workingWindow(subject)
  const {
    ph,
    world: { say },
  } = context
  const parts = acidPartsOf(subject, context)
  if (!window || window.range.max === undefined || ph === null || parts.length === 0) return []
  const target = Math.round((window.range.max - EDGE_PH) * 10) / 10
  if (ph <= target) return []
  const shares = parts.map(({ form }) => {
    const [there, here] = [target, ph].map((one) => shareText(shareAt(form, one), say))
    return say`${there ?? ''} of the ${say.inside(nameOf(form.acid))} (now ${here ?? ''})`
  })
  const blocked = tooAcidFor(context, target)
  return [
    {
      about: [subject.id],
      message: [
        say`At pH ${say.short(target)} or below ${say.list(shares, 'and')} would be undissociated`,
        ...(blocked.length > 0 ? [say`${say.list(blocked, 'and')} would not bear that`] : []),
      ].join('; '),
      because: [
        cite(say`works to pH ${window.range.max}`, window.claim),
        ...parts.flatMap(({ form }) => form.claims.map(({ id, says }) => cite(says, { id }))),
      ],
      sources: [...new Set(parts.flatMap(({ form }) => form.claims.map(({ source }) => source)))].sort(),
    },
  ]
}

const HALF = 0.5

/** Surfactant at which a half of the agent stays free, where the constant of the pair is known. */
function lessSurfactant(state: SubstanceState, context: FormulaContext): Told[] {
  const { free, ratio, takers } = state
  const [taker] = takers.filter(({ rows }) => rows.some(({ binding_per_percent }) => binding_per_percent !== null))
  const row = taker?.rows.find(({ binding_per_percent }) => binding_per_percent !== null)
  if (!free || !ratio || !taker || !row?.binding_per_percent || free.taken.micelles < HALF * 100) return []
  const { oil_to_water, water_percent } = phasesOf(context)
  // free share = 1 / (K · phi + 1 + k · S) is to be one half
  const room = 1 / HALF - 1 - ((ratio.min + ratio.max) / 2) * oil_to_water
  const { say } = context.world
  const name = say.inside(nameOf(state.subject))
  const message =
    room > 0
      ? say`With ${nameOf(taker.surfactant)} at ${say.short(((room / row.binding_per_percent) * water_percent) / 100)} % of the formula half of the ${name} would stay free`
      : say`With this much oil no level of ${nameOf(taker.surfactant)} leaves half of the ${name} free`
  return [
    {
      about: [...new Set([state.subject.id, taker.surfactant.id])].sort(),
      message,
      because: [
        cite(
          say`total over free grows by ${row.binding_per_percent} for each % (${row.source}, ${say.text(row.access)})`,
          row,
        ),
      ],
      sources: [row.source],
    },
  ]
}

/** With less than this in octanol for one in water an agent keeps to the water [log P]. */
const KEEPS_TO_WATER = 1.4

/** Agents of the table that keep to the water, the most usual first. */
function keepToWater(world: World, ph: number | null): Subject[] {
  const figures = figuresOf(world)
  return [...figures.logP]
    .filter(([id, { log_p }]) => {
      const agent = world.find(id)
      const max = agent ? workingWindow(agent)?.range.max : undefined
      return log_p <= KEEPS_TO_WATER && agent?.allRoles.has('preservative') === true && (max ?? 0) >= (ph ?? 0)
    })
    .map(([id]) => id)
    .sort()
    .flatMap((id) => {
      const agent = world.find(id)
      return agent ? [agent] : []
    })
}

/** Where most of an agent is in oil or micelles: one that stays in the water. */
function otherAgent(context: FormulaContext): Told[] {
  const lost = agentsHere(context).filter(({ substances }) =>
    substances.some(({ free }) => free !== null && free.taken.oil + free.taken.micelles > HALF * 100),
  )
  const { say } = context.world
  const others = keepToWater(context.world, context.ph).filter(({ id }) =>
    lost.every(({ subject }) => subject.id !== id),
  )
  if (lost.length === 0 || others.length === 0) return []
  const names = others.map((agent) => say.inside(nameOf(agent)))
  return [
    {
      about: lost.map(({ subject }) => subject.id),
      message: say`Agents that keep to the water lose less: ${say.list(names, 'and')}`,
      because: [
        {
          fact: say`log P of at most ${KEEPS_TO_WATER}: fewer than ${Math.round(10 ** KEEPS_TO_WATER)} parts in octanol for one in water`,
        },
      ],
      sources: ['LOGP_MEM'],
    },
  ]
}

/** What would bring an agent back to work: less acid lost to ions, less taken by micelles, or another agent. */
export const bringBack = (context: FormulaContext): Told[] => [
  ...agentsHere(context).flatMap((work) => [
    ...lowerPh(work, context),
    ...work.substances.flatMap((state) => lessSurfactant(state, context)),
  ]),
  ...otherAgent(context),
]
