import type { Subject } from '#engine/graph/subject.ts'
import type { Knowledge } from '#engine/knowledge/knowledge.ts'

/** Short forms that are written in capitals. */
const LETTERS =
  /^(peg|ppg|ci|edta|vp|va|dmdm|mea|dea|tea|mipa|dipa|tipa|pca|bht|bha|pvp|tbhq|nta|pg|hdi|ipdi|se|amp|aes|np|ng|ap|eop|as|c\d+)$/
const HYDROCHLORIDE = /^hcl$/

function word(text: string): string {
  if (LETTERS.test(text)) return text.toUpperCase()
  if (HYDROCHLORIDE.test(text)) return 'HCl'
  return text.charAt(0).toUpperCase() + text.slice(1)
}

/** An inventory name as labels write it: "PEG-40 Hydrogenated Castor Oil", "Caprylic/Capric Triglyceride". */
export const titleCase = (inci: string): string =>
  inci.toLowerCase().replace(/\p{L}[\p{L}\p{N}]*/gu, (part) => word(part))

/** A blend by the names of its parts: "Phenoxyethanol and Ethylhexylglycerin". */
export const blendName = (inci: string): string => titleCase(inci).replaceAll(' (And) ', ' and ')

const COLOUR_INDEX = /^CI \d{5}/

interface Names {
  byId: ReadonlyMap<string, string>
  /** number in the colour index of what is sold under another name */
  euColours: ReadonlyMap<string, string>
  colours: ReadonlyMap<string, string>
  /** Latin name of a plant, longest first, with its common name */
  latin: readonly (readonly [string, string])[]
}

const memo = new WeakMap<Knowledge, Names>()

function namesOf(knowledge: Knowledge): Names {
  const known = memo.get(knowledge)
  if (known) return known
  const rows = knowledge.tables.get('label-names') ?? []
  const pairs = (kind: string) =>
    rows.filter((row) => row['kind'] === kind).map((row) => [row['of'] ?? '', row['name'] ?? ''] as const)
  const names = {
    byId: new Map(pairs('ingredient')),
    euColours: new Map(pairs('eu-colour')),
    colours: new Map(
      (knowledge.tables.get('us-colours') ?? []).map((row) => [row['ingredient'] ?? '', row['us_name'] ?? '']),
    ),
    latin: pairs('latin').sort(([a], [b]) => b.length - a.length || (a < b ? -1 : 1)),
  }
  memo.set(knowledge, names)
  return names
}

/**
 * Name in the EU: the common name of the glossary. What colours stands by its number in the colour index, lakes alike; what
 * is sold under another name has its number from memory.
 */
export function euName({ id, inci }: Pick<Subject, 'id' | 'inci'>, knowledge: Knowledge, colours = false): string {
  const number = colours ? namesOf(knowledge).euColours.get(id) : undefined
  return number ?? COLOUR_INDEX.exec(inci)?.[0] ?? titleCase(inci)
}

/** The Latin name with the common one behind it: "Simmondsia Chinensis (Jojoba) Seed Oil". */
function withCommonName(inci: string, latin: Names['latin']): string {
  const lower = inci.toLowerCase()
  const found = latin.find(([name]) => lower.startsWith(`${name} `) || lower === name)
  const rest = titleCase(inci).replace(/\bCera$/, 'Wax')
  if (!found) return rest
  const [name, common] = found
  return `${rest.slice(0, name.length)} (${common})${rest.slice(name.length)}`
}

/**
 * Name in the US: the English common name ("Water", "Fragrance", "Beeswax"), for plants the Latin name with the common one
 * in brackets, for colours the name of the colour additive list. Names from memory of the US convention. Water stands as
 * "Water" alone: the Latin word may follow it in brackets, and is left out here.
 */
export function usName({ id, inci }: Pick<Subject, 'id' | 'inci'>, knowledge: Knowledge): string {
  const { byId, colours, latin } = namesOf(knowledge)
  const own = byId.get(id)
  if (own !== undefined) return own
  const colour = COLOUR_INDEX.test(inci) ? colours.get(id) : undefined
  return colour ?? withCommonName(inci, latin)
}
