import { rangeOfProperty, usedClaim } from '#engine/graph/subject.ts'
import { short } from '#engine/units/round.ts'
import type { FormulaLine } from '#engine/formula/context.ts'
import type { Check } from './check.ts'
import { because, nameOf, sourcesOf } from './say.ts'

const ALLERGENS: Record<string, string> = {
  'tree-nut': 'tree nut',
  peanut: 'peanut',
  soya: 'soya',
  sesame: 'sesame',
  'wheat-gluten': 'wheat',
  milk: 'milk',
  'lanolin-derived': 'wool wax',
  'bee-derived': 'bee products',
}

const ALLERGEN_LIST = Object.entries(ALLERGENS)

/** rule:allergen-source. A note: which allergy to ask about. */
export const allergenSource: Check = ({ lines }) =>
  lines.flatMap(({ subject }) => {
    const found = ALLERGEN_LIST.filter(([id]) => subject.classes.has(id))
    if (found.length === 0) return []
    return [
      {
        about: [subject.id],
        message: `${nameOf(subject)} comes from ${found.map(([, name]) => name).join(', ')}: ask about allergies and say so on the label`,
        because: [because(found.map(([id]) => id).join(', '))],
        sources: [subject.classProvenance.source],
      },
    ]
  })

/** rule:phototoxic */
export const phototoxic: Check = ({ lines, formula }) => {
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
          ? `${nameOf(subject)} makes skin react to sunlight above about ${short(limit)} % in products left on; here are ${short(share_percent)} %`
          : `${nameOf(subject)} can make skin react to sunlight; from which level is not recorded`,
        remedy: 'Take a distilled or furocoumarin-free oil, or keep it out of sun-exposed products',
        because: [because('phototoxic', claim), because('left on the skin')],
        sources: sourcesOf(claim ?? subject.classProvenance),
      },
    ]
  })
}

const NOT_FOR_INFANTS: Record<string, string> = {
  'infant-airway-risk': "near an infant's nose can stop the breath (menthol, camphor or cineole)",
  peanut: 'comes from peanut: infants can become allergic through the skin',
  'tree-nut': 'comes from a tree nut: infants can become allergic through the skin',
  sesame: 'comes from sesame: infants can become allergic through the skin',
}

/** rule:small-children */
export const smallChildren: Check = ({ lines, areas }) => {
  if (!areas?.includes('under-3')) return []
  return lines.flatMap(({ subject }) => {
    const found = Object.entries(NOT_FOR_INFANTS).find(([id]) => subject.classes.has(id))
    if (!found) return []
    return [
      {
        about: [subject.id],
        message: `${nameOf(subject)} ${found[1]}`,
        remedy: 'Take an unscented, nut-free ingredient for children under 3',
        because: [because(found[0]), because('made for children under 3')],
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

/** rule:irritant-here */
export const irritantHere: Check = ({ lines, areas, formula }) => {
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
          ? `${short(share_percent)} % of ${nameOf(subject)} left on the skin is more than skin bears`
          : `${nameOf(subject)} is a known ${sensitiser ? 'sensitiser' : 'irritant'}${where.length > 0 ? ` (${where.join(', ')})` : ''}`,
        remedy: 'Lower it or leave it out',
        because: [because(sensitiser ? 'known sensitiser' : 'irritant')],
        sources: [subject.classProvenance.source],
      },
    ]
  })
}

/** rule:handle-with-care: the usual cautions of the bench, where the danger is. */
export const handleWithCare: Check = ({ lines }) =>
  lines.flatMap(({ subject }) => {
    const corrosive =
      subject.classes.has('corrosive') || subject.classes.has('strong-base') || subject.classes.has('strong-acid')
    const dust = subject.classes.has('dust-hazard')
    if (!corrosive && !dust) return []
    return [
      {
        about: [subject.id],
        message: corrosive
          ? `${nameOf(subject)} burns skin and eyes as supplied`
          : `Do not breathe in the dust of ${nameOf(subject)}`,
        remedy: corrosive
          ? 'Gloves and goggles; add it to water, never water to it; keep away from children'
          : 'Wear a dust mask while weighing; wet it gently',
        because: [because(corrosive ? 'corrosive' : 'fine powder')],
        sources: [subject.classProvenance.source],
      },
    ]
  })

/** rule:brings-germs */
export const bringsGerms: Check = ({ lines }) =>
  lines
    .filter(({ subject, share_percent }) => subject.classes.has('germ-load') && share_percent >= 1)
    .map(({ subject }) => ({
      about: [subject.id],
      message: `${nameOf(subject)} brings its own germs or food for germs`,
      remedy: 'Buy it preserved and fresh, keep it cold, and do not lower the preservative',
      because: [because('plant water, juice or powder')],
      sources: [subject.classProvenance.source],
    }))

/** rule:colour-list-unknown: which colours are allowed where is in lists that are not on record here. */
export const colourListUnknown: Check = (context) =>
  context.lines
    .filter(({ subject }) => context.rolesOf(subject)[0]?.role.endsWith('colour') === true)
    .map(({ subject }) => ({
      about: [subject.id],
      message: `Whether ${nameOf(subject)} may colour this product is not on record: the ${context.formula.market.toUpperCase()} list of colours is not covered`,
      remedy: 'Look it up in the list of colours allowed for the area of use (eye, lip, other)',
      because: [because('used as a colour'), because('list of colours not covered')],
      sources: [],
    }))
