import { rangeOfProperty, usedClaim } from '#engine/graph/subject.ts'
import type { FormulaLine } from '#engine/formula/context.ts'
import type { Say } from '#engine/words/say.ts'
import type { Check } from './check.ts'
import { because, nameOf, sourcesOf } from './say.ts'

const ALLERGENS: Record<string, (say: Say) => string> = {
  'tree-nut': (say) => say`tree nut`,
  peanut: (say) => say`peanut`,
  soya: (say) => say`soya`,
  sesame: (say) => say`sesame`,
  'wheat-gluten': (say) => say`wheat`,
  milk: (say) => say`milk`,
  'lanolin-derived': (say) => say`wool wax`,
  'bee-derived': (say) => say`bee products`,
}

const ALLERGEN_LIST = Object.entries(ALLERGENS)

/** rule:allergen-source. A note: which allergy to ask about. */
export const allergenSource: Check = ({ lines, world: { say } }) =>
  lines.flatMap(({ subject }) => {
    const found = ALLERGEN_LIST.filter(([id]) => subject.classes.has(id))
    if (found.length === 0) return []
    return [
      {
        about: [subject.id],
        message: say`${nameOf(subject)} comes from ${found.map(([, name]) => name(say)).join(', ')}: ask about allergies and say so on the label`,
        because: [because(found.map(([id]) => say.text(id)).join(', '))],
        sources: [subject.classProvenance.source],
      },
    ]
  })

/** rule:phototoxic */
export const phototoxic: Check = ({ lines, formula, world: { say } }) => {
  if (formula.product !== 'leave-on') return []
  return lines.flatMap(({ subject, share_percent }) => {
    const limit = rangeOfProperty(subject, 'phototoxic_max_percent')?.max
    const claim = usedClaim(subject, 'phototoxic_max_percent')
    const near = limit !== undefined && share_percent > limit
    const unknown = limit === undefined && subject.classes.has('phototoxic')
    if (!near && !unknown) return []
    return [
      {
        about: [subject.id],
        message: near
          ? say`${nameOf(subject)} makes skin react to sunlight above about ${say.short(limit)} % in products left on; here are ${say.short(share_percent)} %`
          : say`${nameOf(subject)} can make skin react to sunlight; from which level is not recorded`,
        remedy: say`Take a distilled or furocoumarin-free oil, or keep it out of sun-exposed products`,
        because: [because(say`phototoxic`, claim), because(say`left on the skin`)],
        sources: sourcesOf(claim ?? subject.classProvenance),
      },
    ]
  })
}

const NOT_FOR_INFANTS: Record<string, (name: string, say: Say) => string> = {
  'infant-airway-risk': (name, say) =>
    say`${name} near an infant's nose can stop the breath (menthol, camphor or cineole)`,
  peanut: (name, say) => say`${name} comes from peanut: infants can become allergic through the skin`,
  'tree-nut': (name, say) => say`${name} comes from a tree nut: infants can become allergic through the skin`,
  sesame: (name, say) => say`${name} comes from sesame: infants can become allergic through the skin`,
}

/** rule:small-children */
export const smallChildren: Check = ({ lines, areas, world: { say } }) => {
  if (!areas?.includes('under-3')) return []
  return lines.flatMap(({ subject }) => {
    const found = Object.entries(NOT_FOR_INFANTS).find(([id]) => subject.classes.has(id))
    if (!found) return []
    const [id, words] = found
    return [
      {
        about: [subject.id],
        message: words(nameOf(subject), say),
        remedy: say`Take an unscented, nut-free ingredient for children under 3`,
        because: [because(say.text(id)), because(say`made for children under 3`)],
        sources: [subject.classProvenance.source],
      },
    ]
  })
}

const SENSITIVE = ['eye', 'lip', 'intimate', 'under-3'] as const

/** Cleansers of which washes for infants are made: diluted and rinsed off they are borne, as supplied they sting. */
const MILD_WASHERS = ['betaine-surfactant', 'amphoacetate', 'alkyl-glucoside', 'acyl-amino-acid', 'sulfosuccinate']

function isMildHere({ subject, share_percent }: FormulaLine, product: string): boolean {
  const most_percent = Math.max(...subject.roles.map(({ level_percent }) => level_percent?.max ?? 0))
  return (
    product === 'rinse-off' && share_percent <= most_percent && MILD_WASHERS.some((one) => subject.classes.has(one))
  )
}

function irritantText(name: string, places: string, sensitiser: boolean, say: Say): string {
  if (places === '') return sensitiser ? say`${name} is a known sensitiser` : say`${name} is a known irritant`
  return sensitiser ? say`${name} is a known sensitiser (${places})` : say`${name} is a known irritant (${places})`
}

/** rule:irritant-here */
export const irritantHere: Check = ({ lines, areas, formula, world: { say } }) => {
  const where = SENSITIVE.filter((area) => areas?.includes(area))
  return lines.flatMap((line) => {
    const { subject, share_percent } = line
    const sensitiser = subject.classes.has('known-sensitiser') && (formula.product === 'leave-on' || where.length > 0)
    const stings = subject.classes.has('skin-irritant') || subject.classes.has('eye-irritant')
    const irritant = stings && where.length > 0 && !isMildHere(line, formula.product)
    const strongScent = subject.allRoles.has('essential-oil') && share_percent > 2 && formula.product === 'leave-on'
    if (!sensitiser && !irritant && !strongScent) return []
    return [
      {
        about: [subject.id],
        message: strongScent
          ? say`${say.short(share_percent)} % of ${nameOf(subject)} left on the skin is more than skin bears`
          : irritantText(nameOf(subject), where.map((area) => say.text(area)).join(', '), sensitiser, say),
        remedy: say`Lower it or leave it out`,
        because: [because(sensitiser ? say`known sensitiser` : say`irritant`)],
        sources: [subject.classProvenance.source],
      },
    ]
  })
}

/** rule:handle-with-care: the usual cautions of the bench, where the danger is. */
export const handleWithCare: Check = ({ lines, world: { say } }) =>
  lines.flatMap(({ subject }) => {
    const corrosive =
      subject.classes.has('corrosive') || subject.classes.has('strong-base') || subject.classes.has('strong-acid')
    const dust = subject.classes.has('dust-hazard')
    if (!corrosive && !dust) return []
    return [
      {
        about: [subject.id],
        message: corrosive
          ? say`${nameOf(subject)} burns skin and eyes as supplied`
          : say`Do not breathe in the dust of ${nameOf(subject)}`,
        remedy: corrosive
          ? say`Gloves and goggles; add it to water, never water to it; keep away from children`
          : say`Wear a dust mask while weighing; wet it gently`,
        because: [because(corrosive ? say`corrosive` : say`fine powder`)],
        sources: [subject.classProvenance.source],
      },
    ]
  })

/** rule:brings-germs */
export const bringsGerms: Check = ({ lines, world: { say } }) =>
  lines
    .filter(({ subject, share_percent }) => subject.classes.has('germ-load') && share_percent >= 1)
    .map(({ subject }) => ({
      about: [subject.id],
      message: say`${nameOf(subject)} brings its own germs or food for germs`,
      remedy: say`Buy it preserved and fresh, keep it cold, and do not lower the preservative`,
      because: [because(say`plant water, juice or powder`)],
      sources: [subject.classProvenance.source],
    }))

/** rule:colour-list-unknown: which colours are allowed where is in lists that are not on record here. */
export const colourListUnknown: Check = (context) => {
  const { say } = context.world
  return context.lines
    .filter(({ subject }) => context.rolesOf(subject)[0]?.role.endsWith('colour') === true)
    .map(({ subject }) => ({
      about: [subject.id],
      message: say`Whether ${nameOf(subject)} may colour this product is not on record: the ${context.formula.market.toUpperCase()} list of colours is not covered`,
      remedy: say`Look it up in the list of colours allowed for the area of use (eye, lip, other)`,
      because: [because(say`used as a colour`), because(say`list of colours not covered`)],
      sources: [],
    }))
}
