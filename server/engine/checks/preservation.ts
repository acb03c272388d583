import { usedClaim } from '#engine/graph/subject.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { World } from '#engine/graph/world.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import { sharePlaying } from '#engine/formula/totals.ts'
import { short } from '#engine/units/round.ts'
import type { Check } from './check.ts'
import { because, nameOf } from './say.ts'

export const GROUPS = ['gramPositive', 'gramNegative', 'yeast', 'mould'] as const
export type Group = (typeof GROUPS)[number]

const GROUP_NAME: Record<Group, string> = {
  gramPositive: 'gram-positive bacteria',
  gramNegative: 'gram-negative bacteria',
  yeast: 'yeast',
  mould: 'mould',
}

const STRENGTH: Record<string, number> = { strong: 1, moderate: 0.6, weak: 0.25, none: 0 }

/** A booster counts half: it helps, it does not replace. Two boosters at full level make a borderline system. */
const BOOSTER_WORTH = 0.5

interface Entry {
  subject: Subject
  share_percent: number
}

/** Preserving entries: whole blends by their own record, everything else substance by substance. */
function agents(context: FormulaContext): Entry[] {
  const entries = new Map<string, Entry>()
  const add = (subject: Subject, share_percent: number) => {
    const known = entries.get(subject.id)
    entries.set(subject.id, { subject, share_percent: (known?.share_percent ?? 0) + share_percent })
  }
  for (const line of context.lines) {
    if (preserves(line.subject)) add(line.subject, line.share_percent)
    else for (const part of line.subject.parts) add(part.subject, line.share_percent * part.share)
  }
  for (const { subject, share_percent } of blendsByParts(context, entries)) add(subject, share_percent)
  return [...entries.values()]
}

interface PreservingBlend {
  blend: Subject
  active: Subject['parts']
}

/** Recorded preservative blends by the id of their first preserving part; worked out once for each world. */
const blendsOf = new WeakMap<World, ReadonlyMap<string, PreservingBlend[]>>()

function preservingBlends(world: World): ReadonlyMap<string, PreservingBlend[]> {
  const known = blendsOf.get(world)
  if (known) return known
  const byPart = new Map<string, PreservingBlend[]>()
  for (const blend of world.players('preservative')) {
    const active = blend.parts.filter(({ subject }) => preserves(subject))
    const [first] = active
    if (active.length < 2 || !first) continue
    byPart.set(first.subject.id, [...(byPart.get(first.subject.id) ?? []), { blend, active }])
  }
  blendsOf.set(world, byPart)
  return byPart
}

/** A usual preservative blend whose parts stand as single lines works as that blend: the parts lift each other. */
function blendsByParts({ world }: FormulaContext, entries: ReadonlyMap<string, Entry>): Entry[] {
  if (entries.size < 2) return []
  const byPart = preservingBlends(world)
  return [...entries.keys()].flatMap((id) =>
    (byPart.get(id) ?? []).flatMap(({ blend, active }) => {
      if (entries.has(blend.id)) return []
      const shares = active.map(({ subject, share }) => (entries.get(subject.id)?.share_percent ?? 0) / share)
      const share_percent = Math.min(...shares)
      return share_percent > 0 ? [{ subject: blend, share_percent }] : []
    }),
  )
}

const preserves = ({ allRoles }: Subject): boolean =>
  allRoles.has('preservative') || allRoles.has('preservative-booster')

interface Work {
  subject: Subject
  /** 1: at its typical level as a preservative */
  dose: number
  booster: boolean
}

/** Three rules and the search read it, so it is worked out once for each context. */
const memo = new WeakMap<FormulaContext, Work[]>()

/** Everything that keeps germs down in this formula, with how far it is dosed. */
export function preservingWork(context: FormulaContext): Work[] {
  const known = memo.get(context)
  if (known) return known
  const work = lookForWork(context)
  memo.set(context, work)
  return work
}

function lookForWork(context: FormulaContext): Work[] {
  return agents(context).flatMap(({ subject, share_percent }) => {
    if (subject.classes.has('unproven-preservative')) return []
    // An active or acid that also preserves a little is no preservative system; a booster is meant as one.
    const here = context.rolesOf(subject)
    const claim =
      here.slice(0, 1).find(({ role }) => role === 'preservative')?.claim ??
      here.find(({ role }) => role === 'preservative-booster')?.claim
    if (!claim) return []
    const full_percent = claim.level_percent?.typical ?? claim.level_percent?.max
    if (full_percent === undefined) return []
    return [
      { subject, dose: Math.min(1, share_percent / full_percent), booster: claim.role === 'preservative-booster' },
    ]
  })
}

/** Sum of doses, boosters counted half; from about 0.5 on a system is more than a trace. */
export const preservingDose = (work: readonly Work[]): number =>
  work.reduce((sum, { dose, booster }) => sum + dose * (booster ? BOOSTER_WORTH : 1), 0)

/** Best cover per organism group; undefined where no agent states its spectrum. */
export function coverOf(work: readonly Work[]): Record<Group, number> | undefined {
  const stated = work.filter(({ subject }) => usedClaim(subject, 'spectrum')?.spectrum)
  if (stated.length === 0) return undefined
  const cover = { gramPositive: 0, gramNegative: 0, yeast: 0, mould: 0 }
  for (const { subject, dose, booster } of stated) {
    const spectrum = usedClaim(subject, 'spectrum')?.spectrum ?? {}
    for (const group of GROUPS) {
      const value = (STRENGTH[spectrum[group] ?? 'none'] ?? 0) * Math.min(1, dose * 1.5) * (booster ? BOOSTER_WORTH : 1)
      cover[group] = Math.min(1, cover[group] + value)
    }
  }
  return cover
}

const WATER_THAT_SPOILS_PERCENT = 5

/** Why a formula with water may do without a preservative, or null. Each is a hurdle of its own, said in words. */
export function hurdleWithoutPreservative(context: FormulaContext): string | null {
  const alcohol_percent = sharePlaying(context.lines, 'alcohol-solvent')
  const humectant_percent = sharePlaying(context.lines, 'humectant')
  const wet_percent = context.water_percent + humectant_percent
  if (alcohol_percent >= 20) return `${short(alcohol_percent)} % alcohol`
  if (context.ph !== null && context.ph >= 9.5) return `pH ${short(context.ph)}`
  if (wet_percent > 0 && humectant_percent / wet_percent > 0.6) return 'little free water beside the humectants'
  if (context.form === 'bar' && context.water_percent < 30) return 'a solid bar with little free water'
  return null
}

const ENOUGH_DOSE = 0.45

/** rule:water-without-preservative. Under-preserved water hurts people; a rule of thumb all the same, so it warns. */
export const waterWithoutPreservative: Check = (context) => {
  if (context.water_percent < WATER_THAT_SPOILS_PERCENT || hurdleWithoutPreservative(context)) return []
  const work = preservingWork(context)
  const dose = preservingDose(work)
  if (dose >= ENOUGH_DOSE) return []
  const named = work.map(({ subject }) => nameOf(subject))
  return [
    {
      about: work.map(({ subject }) => subject.id).sort(),
      message:
        named.length === 0
          ? `${short(context.water_percent)} % water and nothing that preserves it`
          : `${short(context.water_percent)} % water and too little that preserves it (${named.join(', ')})`,
      remedy: 'Add a preservative system at its own dose and inside its pH window, and have a challenge test made',
      because: [
        because(`water phase ${short(context.water_percent)} %`),
        because(`preserving dose ${short(dose)} of a full one`),
      ],
      sources: ['practice'],
    },
  ]
}

const COVERED = 0.4

/** Organism groups that the preservatives leave open; empty when nothing is stated. */
export function openGroups(context: FormulaContext): Group[] {
  const cover = coverOf(preservingWork(context))
  return cover ? GROUPS.filter((group) => cover[group] < COVERED) : []
}

/** rule:spectrum-open */
export const spectrumOpen: Check = (context) => {
  if (context.water_percent < WATER_THAT_SPOILS_PERCENT || hurdleWithoutPreservative(context)) return []
  const work = preservingWork(context)
  const open = openGroups(context)
  if (open.length === 0) return []
  return [
    {
      about: work.map(({ subject }) => subject.id).sort(),
      message: `The preservatives leave ${open.map((group) => GROUP_NAME[group]).join(' and ')} weakly covered`,
      remedy: 'Add a partner that covers them; only a challenge test can tell',
      because: work.flatMap(({ subject }) => {
        const claim = usedClaim(subject, 'spectrum')
        return claim ? [because(`spectrum of ${nameOf(subject)}`, claim)] : []
      }),
      sources: work.flatMap(({ subject }) => usedClaim(subject, 'spectrum')?.source ?? []).sort(),
    },
  ]
}

/** rule:unproven-preservative */
export const unprovenPreservative: Check = (context) =>
  context.lines
    .filter(({ subject }) => subject.classes.has('unproven-preservative'))
    .map(({ subject }) => ({
      about: [subject.id],
      message: `${nameOf(subject)} is sold as a preservative on weak or contradicted evidence; it is not counted as one here`,
      remedy: 'Preserve with an agent of known effect',
      because: [because('weak or contradicted evidence')],
      sources: [subject.classProvenance.source],
    }))
