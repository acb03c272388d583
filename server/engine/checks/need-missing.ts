import { matches } from '#engine/knowledge/selector.ts'
import { holdsHere } from '#engine/formula/when.ts'
import type { Check } from './check.ts'
import { because, nameOf, sourcesOf, withArticle } from './say.ts'

/** Ways of working (wet the gum first) are told in the order of work, they are no missing ingredient. */
const NOT_AN_INGREDIENT = 'process'

/** rule:need-missing. Why, severity and worked cases: graph-data/rules/need-missing.yaml */
export const needMissing: Check = (context) =>
  context.lines.flatMap((line) =>
    line.subject.needs.flatMap((need) => {
      if (need.need === NOT_AN_INGREDIENT || need.any_of.length === 0) return []
      if (!holdsHere(need.when, line.subject, context, line.share_percent)) return []
      const met = context.lines.some(
        (other) => other.subject.id !== line.subject.id && need.any_of.some((one) => matches(one, other.subject)),
      )
      if (met) return []
      return [
        {
          about: [line.subject.id],
          message: `${nameOf(line.subject)} needs ${withArticle(need.need.replaceAll('-', ' '))}${need.says ? `: ${need.says}` : ''}`,
          remedy: `Add one of: ${need.any_of.map((one) => one.replace(/^(class|role):/, '').replaceAll('-', ' ')).join(', ')}`,
          because: [because(need.says || need.need), because('none of them is in the formula')],
          sources: sourcesOf(need),
        },
      ]
    }),
  )
