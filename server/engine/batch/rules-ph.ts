import { because, nameOf } from '#engine/checks/say.ts'
import { at } from './place-rule.ts'
import { hasAcrylicToNeutralise, makesSoapInside } from './process.ts'
import { practice, roleReason } from './reasons.ts'
import { hasClass, isFirst, playsHere } from './roles-here.ts'
import type { Rule } from './place-rule.ts'

/** Alkali that turns a polymer or a fatty acid into its salt. */
export const neutralises: Rule = ({ line }, { context, say }) => {
  if (!playsHere(context, line, 'neutraliser') && !isFirst(context, line, 'base') && !hasClass(line, 'borate'))
    return null
  if (hasAcrylicToNeutralise(context) && !hasClass(line, 'borate'))
    return at(
      'neutraliser',
      roleReason(context, line),
      practice(say`a polymer is neutralised after it is dispersed, or it lumps`, say),
    )
  return makesSoapInside(context)
    ? at(
        'water',
        roleReason(context, line),
        practice(say`alkali and fatty acid become the emulsifier as the hot phases meet`, say),
      )
    : null
}

/** An amine that turns cationic with acid needs it before the phases meet. */
export const acidPartner: Rule = ({ line }, { context, say }) => {
  if (!isFirst(context, line, 'acid')) return null
  const amine = context.lines.find(
    (other) =>
      playsHere(context, other, 'cationic-conditioner') && other.subject.needs.some(({ need }) => need === 'acid'),
  )
  const need = amine?.subject.needs.find((one) => one.need === 'acid')
  return amine && need ? at('water', because(say`${nameOf(amine.subject)}: ${need.says}`)) : null
}

/** Acid or alkali that sets the pH. */
export const adjustsPh: Rule = ({ line }, { context, say }) =>
  isFirst(context, line, 'ph-adjuster') && !isFirst(context, line, 'buffer')
    ? at('ph', roleReason(context, line), practice(say`moved in steps against the meter, when all else is in`, say))
    : null
