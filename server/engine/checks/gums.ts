import { holdsHere } from '#engine/formula/when.ts'
import { matches } from '#engine/knowledge/selector.ts'
import type { Check, Hit } from './check.ts'
import { because, nameOf, shareFact, sourcesOf } from './say.ts'

const WETTED_BY = 'role:humectant'
/** Alcohol and oil keep the grains apart as well as glycerin does. */
const ALSO_WETS = ['role:alcohol-solvent', 'role:glycol-solvent', 'role:emollient']
const WETS_FROM_PERCENT = 1
const WATER_THAT_HYDRATES_PERCENT = 30

/** rule:gum-not-wetted: a gum that clumps in water, and nothing in the formula to wet it with first. */
export const gumNotWetted: Check = (context) => {
  const { say } = context.world
  if (context.water_percent < WATER_THAT_HYDRATES_PERCENT) return []
  return context.lines.flatMap((line): Hit[] => {
    const ways = line.subject.needs.filter((one) => one.need === 'process')
    const need = ways.find((one) => one.any_of.includes(WETTED_BY))
    // What swells only after a base is added is coated, and can be strewn on water as it is.
    const isCoated = ways.some((one) => one.any_of.includes('role:base'))
    if (!need || isCoated || !holdsHere(need.when, line.subject, context, line.share_percent)) return []
    const wetted = context.lines.some(
      ({ subject, share_percent }) =>
        subject.id !== line.subject.id &&
        share_percent >= WETS_FROM_PERCENT &&
        [...need.any_of, ...ALSO_WETS].some((selector) => matches(selector, subject)),
    )
    if (wetted) return []
    return [
      {
        about: [line.subject.id],
        message: say`${nameOf(line.subject)} clumps when it meets water; nothing here wets it first`,
        remedy: say`Add glycerin, three to five times the gum, and stir the gum into it first; or sift it slowly into a fast vortex and wait`,
        because: [because(need.says, undefined), because(say`no glycerin, diol, alcohol or oil of 1 % or more`)],
        sources: sourcesOf(need),
      },
    ]
  })
}

const GUM_THAT_SETS_PERCENT = 0.1

/** rule:gums-set-together: two gums that only flow alone and make an elastic jelly together. */
export const gumsSetTogether: Check = (context) => {
  const hits = new Map<string, Hit>()
  const { say } = context.world
  for (const first of context.lines) {
    for (const relation of first.subject.boostedBy) {
      if (relation.mechanism !== 'gel') continue
      for (const second of context.lines) {
        if (second === first || !matches(relation.with, second.subject)) continue
        if (Math.min(first.share_percent, second.share_percent) < GUM_THAT_SETS_PERCENT) continue
        const about = [first.subject.id, second.subject.id].sort()
        if (hits.has(about.join(' '))) continue
        hits.set(about.join(' '), {
          about,
          message: say`${nameOf(first.subject)} and ${nameOf(second.subject)} set together: ${relation.says}`,
          remedy: say`Wanted in a jelly; for a fluid product leave one of them out. They set on cooling from about 80 °C`,
          because: [because(relation.says), shareFact(first, say), shareFact(second, say)],
          sources: sourcesOf(relation),
        })
      }
    }
  }
  return [...hits.values()]
}

/** Chains of sugars joined by bonds that acid cuts; xanthan and scleroglucan are guarded by their side chains. */
const CUT_BY_ACID = ['cellulose-ether', 'galactomannan', 'starch']
const CUTS_TO_PH = 3

/** rule:gum-in-acid: thick on the day, thin in half a year. */
export const gumInAcid: Check = ({ ph, lines, water_percent, world: { say } }) => {
  if (ph === null || ph > CUTS_TO_PH || water_percent < WATER_THAT_HYDRATES_PERCENT) return []
  return lines
    .filter(({ subject }) => subject.allRoles.has('thickener') && CUT_BY_ACID.some((one) => subject.classes.has(one)))
    .map((line) => ({
      about: [
        line.subject.id,
        ...lines
          .filter(({ subject }) => subject.allRoles.has('acid') || subject.allRoles.has('chemical-exfoliant'))
          .map(({ subject }) => subject.id),
      ].sort(),
      message: say`${nameOf(line.subject)} thickens at pH ${say.short(ph)} when fresh; acid cuts its chain in storage and the body falls`,
      remedy: say`Take xanthan or sclerotium gum, or watch the viscosity over months before it is given away`,
      because: [because(say`chain of sugars that acid cuts slowly`), because(say`pH ${say.short(ph)}`)],
      sources: ['hpe-mem'],
    }))
}
