import type { FormulaContext, FormulaLine } from '#engine/formula/context.ts'
import { nameOf } from '#engine/formula/say.ts'
import { acidPartsOf, shareAt } from './ph-findings.ts'
import { shareText } from './texts.ts'
import { cite } from './told.ts'
import type { Told } from './told.ts'

/** With less of its ion an acid has little to pair with. */
const LEAST_ION_SHARE = 0.3

const isQuat = ({ subject }: FormulaLine): boolean =>
  subject.classes.has('cationic') &&
  (subject.allRoles.has('cationic-conditioner') || subject.classes.has('cationic-biocide'))

const preservesByAcid = ({ subject }: FormulaLine): boolean =>
  subject.allRoles.has('preservative') && subject.classes.has('organic-acid')

function pairs(line: FormulaLine, quat: FormulaLine, ph: number, context: FormulaContext): Told[] {
  return acidPartsOf(line.subject, context).flatMap(({ form }) => {
    const ions = 1 - shareAt(form, ph)
    if (ions < LEAST_ION_SHARE) return []
    const { say } = context.world
    const acid = say.inside(nameOf(form.acid))
    return [
      {
        about: [line.subject.id, quat.subject.id].sort(),
        message: say`${shareText(ions, say)} of the ${acid} is charged at pH ${say.short(ph)} and may pair with ${nameOf(quat.subject)}: haze, and less of both at work`,
        remedy: say`Watch a test batch for haze for a week; a lower pH leaves less of it charged; a challenge test decides`,
        because: [
          {
            fact: say`books list quaternary compounds among the incompatibilities of such acids (SUSPBOOK, secondary)`,
          },
          { fact: say`pH ${say.short(ph)}` },
          ...form.claims.map(({ id, says }) => cite(say`${nameOf(form.acid)}: ${says}`, { id })),
        ],
        sources: ['SUSPBOOK'],
      },
    ]
  })
}

/** Ions of acid preservatives beside quats: a hint and a test, no stop. */
export function ionBesideCationic(context: FormulaContext): Told[] {
  const { ph, lines } = context
  if (ph === null) return []
  const quats = lines.filter(isQuat)
  if (quats.length === 0) return []
  return lines
    .filter(preservesByAcid)
    .flatMap((line) => quats.filter((quat) => quat !== line).flatMap((quat) => pairs(line, quat, ph, context)))
}
