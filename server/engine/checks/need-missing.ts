import { matches } from '#engine/knowledge/selector.ts'
import { holdsHere } from '#engine/formula/when.ts'
import { english } from '#engine/words/say.ts'
import type { Say } from '#engine/words/say.ts'
import type { Check } from './check.ts'
import { because, nameOf, sourcesOf } from './say.ts'

/** Ways of working (wet the gum first) are told in the order of work, they are no missing ingredient. */
const NOT_AN_INGREDIENT = 'process'

const inWords = (id: string): string => id.replace(/^(class|role):/, '').replaceAll('-', ' ')

/** What is needed, looked up with its English article, so that another language can give it its own. */
const needed = (need: string, say: Say): string => say.text(english.article(inWords(need)))

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
      const { say } = context.world
      const [name, partner] = [nameOf(line.subject), needed(need.need, say)]
      const oneOf = need.any_of.map((one) => say.text(inWords(one))).join(', ')
      return [
        {
          about: [line.subject.id],
          message: need.says ? say`${name} needs ${partner}: ${need.says}` : say`${name} needs ${partner}`,
          remedy: say`Add one of: ${oneOf}`,
          because: [because(need.says || say.text(need.need)), because(say`none of them is in the formula`)],
          sources: sourcesOf(need),
        },
      ]
    }),
  )
