import { undissociatedShare } from '#engine/chemistry/undissociated-share.ts'
import { linesPlayingHere } from '#engine/formula/build-context.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import { nameOf, sourcesOf } from '#engine/formula/say.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { Say } from '#engine/words/say.ts'
import type { Range } from '#engine/units/range.ts'
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
const undissociatedText = (parts: readonly AcidPart[], ph: number, say: Say): string =>
  parts.map(({ form }) => say`${shareText(shareAt(form, ph), say)} of the ${say.inside(nameOf(form.acid))}`).join(', ')

const acidReasons = (parts: readonly AcidPart[], say: Say): Told['because'] =>
  parts.flatMap(({ form }) => form.claims.map(({ id, says }) => cite(say`${nameOf(form.acid)}: ${says}`, { id })))

const acidSources = (parts: readonly AcidPart[]): string[] => listed(parts.flatMap(({ form }) => form.claims))

function outside(subject: Subject, ph: number, context: FormulaContext): Told[] {
  const window = workingWindow(subject)
  if (!window || windowPosition(subject, ph) !== 'outside') return []
  const parts = ph > (window.range.max ?? 14) ? acidPartsOf(subject, context) : []
  const { say } = context.world
  const range = say.range(window.range)
  const name = nameOf(subject)
  const here = say.short(ph)
  return [
    {
      about: [subject.id],
      message:
        parts.length > 0
          ? say`${name} preserves at pH ${range}; at pH ${here} only ${undissociatedText(parts, ph, say)} is undissociated`
          : say`${name} preserves at pH ${range}; at pH ${here} too little of it is at work`,
      remedy: say`Bring the pH to ${range}, or preserve with something that works at pH ${here}; only a challenge test can tell`,
      because: [
        cite(say`preserves at pH ${range}`, window.claim),
        { fact: say`pH ${here}` },
        ...acidReasons(parts, say),
      ],
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
  const { say } = context.world
  return failed.map((row) => ({
    about: [subject.id],
    message: say`${nameOf(subject)} alone did not preserve a lotion with ${say.text(row.emulsifier)} emulsifier at pH ${say.range(row.ph)}, at the highest level that was tried; this one has pH ${say.short(ph)}`,
    remedy: say`Add a partner or lower the pH; only a challenge test can tell`,
    because: [
      cite(say`not preserved at the highest level tried (${row.source}, ${row.locator})`, row),
      { fact: say`pH ${say.short(ph)}` },
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
  const { say } = context.world
  const [now, drifted] = [ph, ph + EDGE_PH].map((one) => undissociatedText(parts, one, say))
  return [
    {
      about: [subject.id],
      message: say`pH ${say.short(ph)} is the end of the window of ${nameOf(subject)} (${say.range(range)}): ${now ?? ''} is undissociated; ${drifted ?? ''} if the pH drifts up by ${EDGE_PH}`,
      remedy: say`Bring the pH to ${say.short(max - EDGE_PH)} or below, measured after a week, or add a partner that does not hang on the pH`,
      because: [
        cite(say`preserves at pH ${say.range(range)}`, window.claim),
        { fact: say`pH ${say.short(ph)}` },
        ...acidReasons(parts, say),
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
