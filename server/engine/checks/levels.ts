import type { Level } from '#engine/model/records.ts'
import type { FormulaContext, FormulaLine } from '#engine/formula/context.ts'
import type { Check, Hit } from './check.ts'
import { because, nameOf, sourcesOf } from './say.ts'

/** How far past the usual level it is worth a warning instead of a note. */
const FAR_OVER = 2
const FAR_UNDER = 0.4

/** Widest level over the roles that the line plays here. */
function levelHere(line: FormulaLine, context: FormulaContext) {
  const claims = context
    .rolesOf(line.subject)
    .map(({ claim }) => claim)
    .filter((claim) => claim.level_percent)
  const [first] = claims
  if (!first) return null
  const levels = claims.map((claim) => claim.level_percent as Level)
  return {
    claim: first,
    min: Math.min(...levels.map((level) => level.min ?? 0)),
    max: Math.max(...levels.map((level) => level.max ?? 100)),
  }
}

const total = (line: FormulaLine, { lines }: FormulaContext): number =>
  lines.reduce((sum, other) => sum + (other.subject.id === line.subject.id ? other.share_percent : 0), 0)

const firstOfEach = ({ lines }: FormulaContext): FormulaLine[] =>
  lines.filter((line, index) => lines.findIndex((other) => other.subject.id === line.subject.id) === index)

/** rule:level-high */
export const levelHigh: Check = (context) =>
  firstOfEach(context).flatMap((line) => {
    const level = levelHere(line, context)
    const share_percent = total(line, context)
    if (!level || share_percent <= level.max * 1.05) return []
    const { say } = context.world
    const hit: Hit = {
      severity: share_percent > level.max * FAR_OVER ? 'warn' : 'note',
      about: [line.subject.id],
      message: say`${nameOf(line.subject)} is used up to about ${say.short(level.max)} %; here are ${say.short(share_percent)} %`,
      remedy: say`Lower it to ${say.short(level.max)} % or less`,
      because: [
        because(say`usual level up to ${say.short(level.max)} %`),
        because(say`${say.short(share_percent)} % in the formula`),
      ],
      sources: sourcesOf(level.claim),
    }
    return [hit]
  })

/** rule:level-low */
export const levelLow: Check = (context) =>
  firstOfEach(context).flatMap((line) => {
    const level = levelHere(line, context)
    const share_percent = total(line, context)
    if (!level || share_percent >= level.min * FAR_UNDER) return []
    const { say } = context.world
    return [
      {
        about: [line.subject.id],
        message: say`${nameOf(line.subject)} is used from about ${say.short(level.min)} %; here are ${say.short(share_percent)} %`,
        remedy: say`Raise it to ${say.short(level.min)} % or leave it out`,
        because: [
          because(say`usual level from ${say.short(level.min)} %`),
          because(say`${say.short(share_percent)} % in the formula`),
        ],
        sources: sourcesOf(level.claim),
      },
    ]
  })
