import { levelsAlone } from '#engine/chemistry/preservation/ion-effect.ts'
import { rangeOfProperty, usedClaim } from '#engine/graph/subject.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { Say } from '#engine/words/say.ts'
import type { World } from '#engine/graph/world.ts'
import type { Claim } from '#engine/model/claim.ts'
import type { Range } from '#engine/units/range.ts'
import { figuresOf } from './tables.ts'
import type { Cited, Figures } from './tables.ts'

/** The form of an agent that gives up a proton: itself, or the acid that its salt gives. */
export interface AcidForm {
  acid: Subject
  /** gram of acid in a gram of the pure agent */
  acid_g_per_g: number
  /** constants that were found, least and most */
  pka: { min: number; max: number }
  /** how many times stronger the acid is than its ion; undefined where nothing was found */
  acidOverIon?: { min: number; max: number }
  /** that ratio was found for one organism only: the ion is not surely so strong elsewhere */
  ionOfOneOrganism: boolean
  /** acts by its undissociated form: carboxylic acids do, parabens and other phenols work at any pH of their window */
  needsAcidForm: boolean
  claims: readonly (Pick<Claim, 'id' | 'source'> & { says: string })[]
}

const UNCITED = new Set(['practice', 'memory'])

function pkaOf(
  acid: Subject,
  figures: Figures,
  say: Say,
): { range: AcidForm['pka']; claims: AcidForm['claims'] } | null {
  const own = rangeOfProperty(acid, 'acid_pka')
  const claim = usedClaim(acid, 'acid_pka')
  const rows = figures.pka.get(acid.id) ?? []
  const values = [...rows.map(({ pka }) => pka), ...(own ? [own.min ?? own.max, own.max ?? own.min] : [])].filter(
    (value) => value !== undefined,
  )
  if (values.length === 0) return null
  const range = { min: Math.min(...values), max: Math.max(...values) }
  const seen = [...(claim ? [claim] : []), ...rows].filter(({ source }) => !UNCITED.has(source))
  const claims = seen.map((one) => {
    const [min, max] = 'pka' in one ? [one.pka, one.pka] : [one.min ?? one.value, one.max ?? one.value]
    const own = { ...(min !== undefined && { min }), ...(max !== undefined && { max }) }
    return { id: one.id, source: one.source, says: say`pKa ${say.range(own)}` }
  })
  return { range, claims }
}

/** Strength of the acid over its ion from the inhibitory totals at two pH values, where no ratio is printed. */
function ratioFromLevels(acid: string, pka: number, figures: Figures): { ratio: Range; cited: Cited } | null {
  const halves = (figures.levels.get(acid) ?? []).filter(({ half, ph }) => half && ph.min !== undefined)
  const [first, second] = halves
  if (!first || !second) return null
  const total = (row: typeof first) => ({ ph: row.ph.min ?? 0, total_percent: row.level_percent.min ?? 0 })
  const alone = levelsAlone(total(first), total(second), pka)
  if (!alone) return null
  const ratio = alone.ion_alone_percent / alone.acid_alone_percent
  return { ratio: { min: ratio, max: ratio }, cited: second }
}

function ionOf(
  { acid, pka }: { acid: string; pka: number },
  figures: Figures,
  say: Say,
): Pick<AcidForm, 'acidOverIon' | 'ionOfOneOrganism' | 'claims'> {
  const printed = figures.acidOverIon.get(acid)
  const found = printed ? { ratio: printed.range, cited: printed } : ratioFromLevels(acid, pka, figures)
  if (!found) return { ionOfOneOrganism: false, claims: [] }
  const { min = 1, max = min } = found.ratio
  const text = min === max ? say.figure(min.toPrecision(2)) : say.range({ min, max })
  return {
    acidOverIon: { min, max },
    ionOfOneOrganism: printed === undefined,
    claims: [
      { id: found.cited.id, source: found.cited.source, says: say`the acid is ${text} times as strong as its ion` },
    ],
  }
}

function lookUp(agent: Subject, world: World): AcidForm | null {
  const figures = figuresOf(world)
  const form = figures.acidForms.get(agent.id)
  const acid = form ? world.find(form.acid) : agent
  if (!acid) return null
  const pka = pkaOf(acid, figures, world.say)
  if (!pka) return null
  const ion = ionOf({ acid: acid.id, pka: pka.range.min }, figures, world.say)
  return {
    acid,
    acid_g_per_g: form?.acid_g_per_g ?? 1,
    pka: pka.range,
    ...(ion.acidOverIon && { acidOverIon: ion.acidOverIon }),
    ionOfOneOrganism: ion.ionOfOneOrganism,
    needsAcidForm: (acid.classes.has('organic-acid') || acid.classes.has('fatty-acid')) && pka.range.max < 7,
    claims: [...pka.claims, ...ion.claims],
  }
}

const memo = new WeakMap<World, Map<string, AcidForm | null>>()

/** Acid form of an agent, or null where it does not ionise or its constant is not known. */
export function acidFormOf(agent: Subject, world: World): AcidForm | null {
  const known = memo.get(world) ?? new Map<string, AcidForm | null>()
  memo.set(world, known)
  const found = known.get(agent.id)
  if (found !== undefined) return found
  const form = lookUp(agent, world)
  known.set(agent.id, form)
  return form
}
