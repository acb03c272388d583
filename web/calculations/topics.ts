/** Calculations by topic, in the order of a course; one that is named nowhere comes last, under `more`. */
const TOPICS = {
  acids: ['undissociated-share', 'buffer-ph', 'acid-dose', 'dilution-ph'],
  preservation: [
    'two-phase-partition',
    'partition-with-micelles',
    'acid-in-emulsion',
    'acid-solubility',
    'log-reduction',
    'd-value',
  ],
  emulsions: [
    'required-hlb',
    'blend-hlb',
    'emulsifier-pair',
    'emulsifier-amount',
    'hlb-by-oxyethylene',
    'hlb-by-saponification',
    'hlb-by-groups',
    'creaming-rate',
    'gum-viscosity',
  ],
  oils: ['iodine-value', 'saponification-value', 'oxidizability', 'profile-distance', 'lye-for-soap'],
  surfactants: [
    'active-matter-dose',
    'mixed-micelle-interaction',
    'curvature-of-blend',
    'hydrophilic-lipophilic-deviation',
    'optimum-salinity',
  ],
} as const

export type Topic = keyof typeof TOPICS | 'more'

/** The calculations that there are, by topic. */
export function byTopic<T extends { name: string }>(all: readonly T[]): { topic: Topic; calculations: T[] }[] {
  const topics = Object.entries(TOPICS) as [Topic, readonly string[]][]
  const named = topics.flatMap(([, names]) => names)
  const listed = topics.map(([topic, names]) => ({
    topic,
    calculations: names.flatMap((name) => all.find((one) => one.name === name) ?? []),
  }))
  const more = all.filter(({ name }) => !named.includes(name))
  return [...listed, { topic: 'more' as const, calculations: more }].filter(({ calculations }) => calculations.length)
}
