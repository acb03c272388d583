import type { Claim, Ingredient, PlaysRole, Provenance } from '#engine/model/records.ts'
import type { InventoryRow } from '#engine/knowledge/raw.ts'

const SEEN: Provenance = {
  kind: 'derived',
  source: 'inv',
  locator: 'functions and name in the open inventory',
  access: 'read',
  date: '2026-11-25',
}

/** Function word of the inventory → role. Words that say nothing of the job in a formula are left out. */
const ROLE_OF_FUNCTION: Record<string, string> = {
  'SURFACTANT - CLEANSING': 'surfactant',
  CLEANSING: 'surfactant',
  'SURFACTANT - FOAM BOOSTING': 'foam-booster',
  'SURFACTANT - EMULSIFYING': 'emulsifier',
  'SURFACTANT - SOLUBILIZING': 'solubiliser',
  PRESERVATIVE: 'preservative',
  ANTIMICROBIAL: 'preservative-booster',
  CHELATING: 'chelator',
  ANTIOXIDANT: 'antioxidant',
  HUMECTANT: 'humectant',
  MOISTURISING: 'humectant',
  'SKIN CONDITIONING - HUMECTANT': 'humectant',
  'SKIN CONDITIONING - EMOLLIENT': 'emollient',
  REFATTING: 'emollient',
  'VISCOSITY CONTROLLING': 'thickener',
  'GEL FORMING': 'thickener',
  'EMULSION STABILISING': 'thickener',
  'FILM FORMING': 'film-former',
  'HAIR FIXING': 'hair-fixative',
  'HAIR CONDITIONING': 'conditioning-agent',
  ANTISTATIC: 'conditioning-agent',
  DETANGLING: 'conditioning-agent',
  COLORANT: 'colour',
  'UV FILTER': 'uv-filter',
  PERFUMING: 'scent',
  FRAGRANCE: 'scent',
  FLAVOURING: 'scent',
  SOLVENT: 'solvent',
  BUFFERING: 'ph-adjuster',
  'PH ADJUSTERS': 'ph-adjuster',
  ABSORBENT: 'powder-base',
  BULKING: 'powder-base',
  ANTICAKING: 'powder-base',
  ABRASIVE: 'physical-exfoliant',
  EXFOLIATING: 'active',
  KERATOLYTIC: 'active',
  DEODORANT: 'deodorant-active',
  ASTRINGENT: 'active',
  SOOTHING: 'active',
  'SKIN CONDITIONING': 'active',
  'SKIN PROTECTING': 'active',
  OPACIFYING: 'opacifier',
}

/** What the systematic part of a name says of structure. Order matters: the first that fits gives phase and solubility. */
const BY_NAME: { test: RegExp; classes: string[]; role?: string; solubility?: string; form?: string }[] = [
  { test: /(TRIMONIUM|DIMONIUM|QUATERNIUM|ALKONIUM)/, classes: ['cationic'], solubility: 'water' },
  { test: /^(SODIUM|POTASSIUM|AMMONIUM|TEA|DISODIUM|MAGNESIUM) .*SULFATE$/, classes: ['anionic'], solubility: 'water' },
  {
    test: /(SULFOSUCCINATE|SULFONATE|ISETHIONATE|TAURATE|SARCOSINATE|GLUTAMATE|GLYCINATE)$/,
    classes: ['anionic'],
    solubility: 'water',
  },
  { test: /(BETAINE|SULTAINE|AMPHOACETATE|AMPHODIACETATE)$/, classes: ['amphoteric'], solubility: 'water' },
  { test: /GLUCOSIDE$/, classes: ['nonionic', 'alkyl-glucoside'] },
  { test: /^(PEG|PPG)[-/]|[A-Z]ETH-\d+$|^POLYSORBATE/, classes: ['nonionic', 'ethoxylate'] },
  {
    test: /HYDROLYZED .*(PROTEIN|KERATIN|SILK|COLLAGEN)/,
    classes: ['protein-hydrolysate'],
    role: 'protein-conditioner',
    solubility: 'water',
  },
  {
    test: /(DIMETHICONE|SILOXANE|METHICONE|SILICONE)/,
    classes: ['silicone', 'silicone-fluid'],
    solubility: 'silicone',
    form: 'liquid',
  },
  {
    test: /(FLOWER|LEAF|FRUIT|HERB|STEM|BARK|ROOT|SEED) WATER$/,
    classes: ['germ-load'],
    role: 'hydrosol',
    solubility: 'water',
    form: 'liquid',
  },
  {
    test: /(PEEL|LEAF|FLOWER|HERB|BARK|ROOT|WOOD|BUD) OIL$/,
    classes: ['fragrance-allergen-source'],
    role: 'essential-oil',
    solubility: 'oil',
    form: 'liquid',
  },
  {
    test: /(SEED|KERNEL|NUT|FRUIT|GERM|BRAN) OIL$/,
    classes: ['triglyceride', 'polar-oil'],
    role: 'carrier-oil',
    solubility: 'oil',
    form: 'liquid',
  },
  { test: /BUTTER$/, classes: ['triglyceride', 'polar-oil'], role: 'butter', solubility: 'oil', form: 'solid' },
  { test: /(CERA| WAX)$/, classes: [], role: 'wax', solubility: 'oil', form: 'solid' },
  { test: /^CI \d{5}/, classes: [], role: 'colour' },
  { test: /(EXTRACT|FERMENT FILTRATE)$/, classes: ['germ-load'], role: 'plant-extract' },
]

const claim = (id: string, property: string, word: string): [string, Claim[]] => [
  property,
  [{ id: `${id}#${property}/derived`, property, is: word, unit: '', ...SEEN, used: true }],
]

/** A record for a name of which only the inventory is known: role from its functions, class from its name; all marked derived. */
export function deriveFromInventory(row: InventoryRow): Ingredient {
  const byName = BY_NAME.filter((rule) => rule.test.test(row.inci))
  const named = byName.flatMap((rule) => (rule.role ? [rule.role] : []))
  const stated = row.functions.flatMap((word) => ROLE_OF_FUNCTION[word] ?? [])
  const roles: PlaysRole[] = [...new Set([...named, ...stated])].map((role) => ({ role, ...SEEN }))
  const solubility = byName.find((rule) => rule.solubility)?.solubility
  const form = byName.find((rule) => rule.form)?.form
  return {
    id: row.id,
    inci: row.inci,
    tier: 'inventory',
    cas: row.cas,
    names: { exact: [], broad: [], narrow: [], former: [], foreign: [] },
    classes: new Set(byName.flatMap((rule) => rule.classes)),
    classProvenance: SEEN,
    roles,
    facts: new Map([
      ...(solubility ? [claim(row.id, 'solubility', solubility)] : []),
      ...(form ? [claim(row.id, 'form', form)] : []),
    ]),
    madeOf: [],
    clashes: [],
    needs: [],
    boostedBy: [],
    inactivatedBy: [],
    standsFor: [],
    notFor: [],
    cautions: [],
    cautionsAt: {},
  }
}
