import { undissociatedShare } from '#engine/chemistry/undissociated-share.ts'
import { linesPlayingHere } from '#engine/formula/build-context.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import { nameOf, sourcesOf } from '#engine/formula/say.ts'
import type { Subject } from '#engine/graph/subject.ts'
import { rangeText } from '#engine/units/range.ts'
import type { Range } from '#engine/units/range.ts'
import { short } from '#engine/units/round.ts'
import { acidFormOf } from './acid.ts'
import type { AcidForm } from './acid.ts'
import { preserves } from './agents.ts'
import { likeLotions } from './lotions.ts'
import { shareText } from './texts.ts'
import { cite, listed } from './told.ts'
import type { Told } from './told.ts'
import { EDGE_PH, windowPosition, workingWindow } from './window.ts'
import { ENOUGH_DOSE } from './too-little.ts'
import { preservingWork } from './work.ts'

interface AcidPart {
  part: Subject
  form: AcidForm
}

/** Acids in an agent that work undissociated; the agent itself or parts of a blend. */
export const acidPartsOf = (agent: Subject, { world }: FormulaContext): AcidPart[] =>
  agent.parts.flatMap(({ subject: part }) => {
    const form = preserves(part) ? acidFormOf(part, world) : null
    return form?.needsAcidForm ? [{ part, form }] : []
  })

const clampPh = (ph: number): number => Math.min(14, Math.max(0, ph))
export const shareAt = ({ pka }: AcidForm, ph: number): number =>
  undissociatedShare(clampPh(ph), (pka.min + pka.max) / 2)

/** "1.6 % of the benzoic acid" for each acid of an agent at a pH. */
const undissociatedText = (parts: readonly AcidPart[], ph: number): string =>
  parts.map(({ form }) => `${shareText(shareAt(form, ph))} of the ${nameOf(form.acid).toLowerCase()}`).join(', ')

const acidReasons = (parts: readonly AcidPart[]): Told['because'] =>
  parts.flatMap(({ form }) => form.claims.map(({ id, says }) => cite(`${nameOf(form.acid)}: ${says}`, { id })))

const acidSources = (parts: readonly AcidPart[]): string[] => listed(parts.flatMap(({ form }) => form.claims))

function outside(subject: Subject, ph: number, context: FormulaContext): Told[] {
  const window = workingWindow(subject)
  if (!window || windowPosition(subject, ph) !== 'outside') return []
  const parts = ph > (window.range.max ?? 14) ? acidPartsOf(subject, context) : []
  const range = rangeText(window.range)
  const how = parts.length > 0 ? `only ${undissociatedText(parts, ph)} is undissociated` : 'too little of it is at work'
  return [
    {
      about: [subject.id],
      message: `${nameOf(subject)} preserves at pH ${range}; at pH ${short(ph)} ${how}`,
      remedy: `Bring the pH to ${range}, or preserve with something that works at pH ${short(ph)}; only a challenge test can tell`,
      because: [cite(`preserves at pH ${range}`, window.claim), { fact: `pH ${short(ph)}` }, ...acidReasons(parts)],
      sources: [...new Set([...sourcesOf(window.claim), ...acidSources(parts)])].sort(),
    },
  ]
}

/** An agent alone that failed in a lotion with this kind of emulsifier at this pH. */
function failedInLotion(subject: Subject, ph: number, context: FormulaContext): Told[] {
  const failed = likeLotions(subject, context).filter(({ level_percent }) => level_percent === null)
  if (failed.length === 0) return []
  const partner = preservingWork(context).some(
    ({ subject: other, effect }) => other.id !== subject.id && effect.most >= ENOUGH_DOSE,
  )
  if (partner) return []
  return failed.map((row) => ({
    about: [subject.id],
    message: `${nameOf(subject)} alone did not preserve a lotion with ${row.emulsifier} emulsifier at pH ${rangeText(row.ph)}, at the highest level that was tried; this one has pH ${short(ph)}`,
    remedy: 'Add a partner or lower the pH; only a challenge test can tell',
    because: [
      cite(`not preserved at the highest level tried (${row.source}, ${row.locator})`, row),
      { fact: `pH ${short(ph)}` },
    ],
    sources: listed([row]),
  }))
}

/** Preservatives whose window does not hold the pH of the formula. */
export function outsideWindow(context: FormulaContext): Told[] {
  const { ph, water_percent } = context
  if (ph === null || water_percent < 1) return []
  return linesPlayingHere(context, 'preservative').flatMap(({ subject }) => {
    const beyond = outside(subject, ph, context)
    return beyond.length > 0 ? beyond : failedInLotion(subject, ph, context)
  })
}

function atEnd(subject: Subject, ph: number, range: Range, context: FormulaContext): Told[] {
  const window = workingWindow(subject)
  const { max } = range
  if (!window || max === undefined || max - ph > EDGE_PH + 1e-9) return []
  const parts = acidPartsOf(subject, context)
  if (parts.length === 0) return []
  return [
    {
      about: [subject.id],
      message: `pH ${short(ph)} is the end of the window of ${nameOf(subject)} (${rangeText(range)}): ${undissociatedText(parts, ph)} is undissociated; ${undissociatedText(parts, ph + EDGE_PH)} if the pH drifts up by ${EDGE_PH}`,
      remedy: `Bring the pH to ${short(max - EDGE_PH)} or below, measured after a week, or add a partner that does not hang on the pH`,
      because: [
        cite(`preserves at pH ${rangeText(range)}`, window.claim),
        { fact: `pH ${short(ph)}` },
        ...acidReasons(parts),
      ],
      sources: [...new Set([...sourcesOf(window.claim), ...acidSources(parts)])].sort(),
    },
  ]
}

/** Acid preservatives at the upper end of their window, where a little drift leaves them idle. */
export function atWindowEnd(context: FormulaContext): Told[] {
  const { ph, water_percent } = context
  if (ph === null || water_percent < 1) return []
  return linesPlayingHere(context, 'preservative').flatMap(({ subject }) => {
    const range = workingWindow(subject)?.range
    return range && windowPosition(subject, ph) === 'edge' ? atEnd(subject, ph, range, context) : []
  })
}
