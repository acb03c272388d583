import type { Claim, Ingredient, Role } from '#engine/model/records.ts'
import { rolesAbove } from './inherited-claims.ts'

type Chain = readonly [min: number, max: number]

/** Parts of inventory names that name a fatty chain, with its carbon atoms; mixed fats by their main acids. */
const STEMS: readonly (readonly [RegExp, Chain])[] = [
  [/UNDEC/, [11, 11]],
  [/TRIDEC/, [13, 13]],
  [/LAUR|DODECYL|COCO(?!A\b)|COCAM|COCETH|COCAMINE|PALM KERNEL|BABASSU/, [12, 12]],
  [/MYRETH|MYRIST/, [14, 14]],
  [/(?<!A)CETYL|CETETH|CETRIM|CETOLE|PALMIT/, [16, 16]],
  [/CETEAR|TALLOWATE|LARDATE|PALMATE/, [16, 18]],
  [/STEAR|OLE(?=[AOTY])|LINOLE|RICINOLE|OLIV(?=A[MT])/, [18, 18]],
  [/ALMONDAM|AVOCADOATE|CASTOR|COCOA BUTTERATE|SHEA ?BUTTER|RAPESEEDATE|SOYAM|SUNFLOWERSEEDATE|ALMOND GLY/, [18, 18]],
  [/ARACHID|BRASSICAM/, [20, 20]],
  [/BEHEN|ERUC/, [22, 22]],
  [/CAPRYL(?!\/|IC\/|OYL\/)/, [8, 8]],
  [/CAPR(?=IC|O|A[TM])|(?<!TRI|O)DECYL/, [10, 10]],
  [/CAPRYL(?:IC|OYL|YL)?\/CAPR/, [8, 10]],
  [/LAUROYL\/MYRIST/, [12, 14]],
  [/ARACHIDYL\/BEHENYL/, [20, 22]],
]

/** The number in "polysorbate 20" stands for the acid: 2 lauric, 4 palmitic, 6 stearic, 8 oleic. */
const POLYSORBATES: Readonly<Record<string, number>> = { 2: 12, 4: 16, 6: 18, 8: 18 }

/** Carbon atoms of the main fatty chain that an inventory name names, the longest of several; null where it names none. */
export function chainInName(inci: string): Chain | null {
  const acid = POLYSORBATES[/^POLYSORBATE (\d)\d$/.exec(inci)?.[1] ?? '']
  if (acid !== undefined) return [acid, acid]
  const cut = /\bC(\d\d)-(\d\d) /.exec(inci)
  const named = STEMS.filter(([stem]) => stem.test(inci)).map(([, chain]) => chain)
  const all: Chain[] = cut ? [...named, [Number(cut[1]), Number(cut[2])]] : named
  const longest = Math.max(...all.map(([, max]) => max))
  const [first] = all.filter(([, max]) => max === longest).sort((a, b) => a[0] - b[0])
  return first ?? null
}

/** Where a chain decides: surfactants, emulsifiers, conditioners, and fats that are one substance. */
const ROLES = new Set(['surfactant', 'emulsifier', 'solubiliser', 'conditioning-agent'])
const CLASSES = ['fatty-alcohol', 'fatty-acid', 'wax-ester']

const isAmphiphile = (one: Ingredient, roles: ReadonlyMap<string, Role>): boolean =>
  !one.classes.has('silicone') &&
  (rolesAbove(one, roles).some((role) => ROLES.has(role)) || CLASSES.some((id) => one.classes.has(id)))

/** Chain length from the name of a single substance, marked derived; nothing for blends and where no chain is named. */
export function chainClaims(one: Ingredient, roles: ReadonlyMap<string, Role>): Claim[] {
  if (one.facts.get('chain_length')?.some(({ used }) => used) || one.inci.includes(' (and) ')) return []
  const chain = isAmphiphile(one, roles) ? chainInName(one.inci) : null
  if (!chain) return []
  const [min, max] = chain
  return [
    {
      id: `${one.id}#chain_length/derived`,
      property: 'chain_length',
      ...(min === max ? { value: min } : { min, max }),
      unit: 'C',
      kind: 'derived',
      source: 'memory',
      locator: 'worked out from the name by the stems that inventory names use for fatty chains',
      access: 'memory',
      date: '2026-11-27',
      used: true,
    },
  ]
}
