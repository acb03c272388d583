/** A worked case or decoy that is right and that the rule does not meet yet. The list may only shrink. */
export interface KnownGap {
  rule: string
  /** list of the rule file and place in it, from 0 */
  list: 'fires' | 'silent'
  at: number
  reason: string
}

export const KNOWN_GAPS: readonly KnownGap[] = []

/** Places on which a lint of doubt objects and that stay as they are, with the reason. The list may only shrink. */
export interface Excuse {
  lint: string
  /** file, or file and path inside it */
  at: readonly string[]
  reason: string
}

const record = (...ids: string[]): string[] => ids.map((id) => `ingredients/${id}.yaml`)
const limit = (...ids: string[]): string[] => ids.map((id) => `limits/${id}.yaml`)

export const EXCUSED: readonly Excuse[] = [
  {
    lint: 'acid-states-constant',
    at: record('sodium-hydroxymethylglycinate'),
    reason: 'No constant of the substituted glycine was found; that of glycine itself would be a guess.',
  },
  {
    lint: 'allergen-member-is-known',
    at: ['allergens'],
    reason:
      'Names of the law (rose ketones 1, musk rose oil, pinenes) that the inventory does not have; others of the entry are.',
  },
  {
    lint: 'blend-active-fits-parts',
    at: record('sodium-methyl-2-sulfolaurate-and-disodium-2-sulfolaurate'),
    reason: 'Sold as paste and dry; the parts are those of the dry matter, a formula says which by strength_percent.',
  },
  {
    lint: 'emulsifier-states-hlb',
    at: record(
      'capryloyl-caproyl-methyl-glucamide',
      'glyceryl-cocoate',
      'hydrogenated-palm-glycerides',
      'inulin-lauryl-carbamate',
      'peg-45-palm-kernel-glycerides',
      'polyglyceryl-10-pentastearate',
      'polyglyceryl-3-beeswax',
      'polyglyceryl-3-cocoate',
      'polyglyceryl-4-caprylate',
      'polyglyceryl-4-cocoate',
      'polyglyceryl-6-behenate',
      'polyglyceryl-6-caprate',
    ),
    reason: 'No HLB was found in a source and none is remembered; the rules say that it is not known.',
  },
  {
    lint: 'form-suits-melting',
    at: record('retinol'),
    reason: 'Sold dissolved or supercooled; level and melting point are those of the pure substance.',
  },
  {
    lint: 'iodine-near-derived',
    at: record('melia-azadirachta-seed-oil'),
    reason:
      'Wide ranges of an encyclopaedia whose mid-points name 91 % of the acids; the printed value is from memory.',
  },
  {
    lint: 'iodine-near-derived',
    at: ['tables/stated-fats.tsv:749'],
    reason:
      'Measured by Wijs: conjugated trienes (a quarter of manketti oil) take up two of their three halogens only.',
  },
  {
    lint: 'iodine-near-derived',
    at: ['tables/stated-fats.tsv:752'],
    reason: 'Measured alike in Namibia and Zimbabwe (66 to 70); the acids of marula oil are remembered and give more.',
  },
  {
    lint: 'saponification-near-derived',
    at: ['tables/stated-fats.tsv:750'],
    reason:
      'Measured on several lots of manketti oil: what is no fat in it lowers the value, its acids are remembered.',
  },
  {
    lint: 'saponification-near-derived',
    at: record('moringa-oleifera-seed-oil'),
    reason:
      'One sample of the paper whose acids differ from the usual moringa oil; shown beside the usual range, never used.',
  },
  {
    lint: 'level-is-lawful',
    at: record('hydroquinone'),
    reason: 'Prohibited on skin; the level is that of medicines and lets the tool know what it is asked about.',
  },
  {
    lint: 'level-is-lawful',
    at: record(
      'sodium-hydroxymethylglycinate',
      'dmdm-hydantoin',
      'imidazolidinyl-urea',
      'diazolidinyl-urea',
      'methenamine',
      '7-ethylbicyclooxazolidine',
    ),
    reason:
      'The entry counts the most formaldehyde that could be set free; what is set free in use is less and is measured.',
  },
  {
    lint: 'limit-factor-has-reason',
    at: limit('eu-iii-15b'),
    reason:
      'Counted as sodium hydroxide, of which a gram neutralises less than a gram of the lighter lithium hydroxide.',
  },
  {
    lint: 'limit-factor-has-reason',
    at: limit('eu-ii-1669', 'eu-v-preamble-2'),
    reason: 'A gram of methenamine takes up water and gives 1.29 g of formaldehyde: six from one molecule.',
  },
  {
    lint: 'limit-has-members',
    at: limit('eu-art-15', 'eu-art-17', 'us-cfr-740-10', 'us-cfr-740-17', 'us-cfr-740-19'),
    reason: 'A duty that concerns products or classes of substances, not a substance that a line could hold.',
  },
  {
    lint: 'limit-has-members',
    at: limit(
      'eu-ii-1726',
      'eu-ii-356',
      'eu-ii-365',
      'eu-ii-410',
      'us-cfr-700-11',
      'us-cfr-700-15',
      'us-cfr-700-23',
      'us-cfr-700-27',
    ),
    reason:
      'A ban of something that has no name in the inventory, so that no formula can hold it under one; shown in lists.',
  },
  {
    lint: 'limit-member-is-known',
    at: limit(
      'eu-ii-1381',
      'eu-ii-1382',
      'eu-ii-213',
      'eu-ii-343',
      'eu-ii-358-sun',
      'eu-ii-360',
      'eu-iii-372',
      'eu-v-9',
      'eu-vi-27a',
      'eu-vi-27a-bans',
      'eu-vi-30a',
      'eu-vi-30a-bans',
    ),
    reason:
      'Names of the law (traces, nano forms, one salt) that the inventory does not have; the others of the entry are.',
  },
  {
    lint: 'member-passes-own-role',
    at: record('lauroyl-sarcosine'),
    reason:
      'The free acid does not dissolve in water; a base in the formula makes it a surfactant, and its record says so.',
  },
  {
    lint: 'member-passes-own-role',
    at: record('polyethylene'),
    reason:
      'One name for wax grades, which melt into oils, and beads, which do not; the record takes the careful word.',
  },
  {
    lint: 'source-is-used',
    at: ['sources/formulation.tsv', 'sources/ph.tsv', 'sources/preservation.tsv'],
    reason:
      'Lists that came whole with their tables; what nothing cites yet belongs to buffers and formulas kept for checks.',
  },
  {
    lint: 'stand-in-shares-role',
    at: record('aloe-barbadensis-leaf-juice-powder'),
    reason:
      'The powder makes the juice only together with the water put back, and plays no role of a water phase alone.',
  },
  {
    lint: 'surfactant-states-active-matter',
    at: record(
      'potassium-castorate',
      'potassium-laurate',
      'potassium-myristate',
      'potassium-oleate',
      'potassium-olivate',
      'potassium-palm-kernelate',
      'potassium-shea-butterate',
      'potassium-stearate',
      'potassium-sunflowerseedate',
      'sodium-avocadoate',
      'sodium-babassuate',
      'sodium-castorate',
      'sodium-cocoa-butterate',
      'sodium-cocoate',
      'sodium-lardate',
      'sodium-laurate',
      'sodium-myristate',
      'sodium-oleate',
      'sodium-olivate',
      'sodium-palm-kernelate',
      'sodium-palmate',
      'sodium-palmate-and-sodium-palm-kernelate',
      'sodium-palmitate',
      'sodium-rapeseedate',
      'sodium-shea-butterate',
      'sodium-sunflowerseedate',
      'sodium-tallowate',
      'sodium-tallowate-and-sodium-cocoate',
      'tea-cocoate',
      'tea-oleate',
      'tea-stearate',
    ),
    reason: 'Soaps hold as much water as their maker leaves in them; the bottle or the batch says it, no table does.',
  },
  {
    lint: 'surfactant-states-active-matter',
    at: record(
      'quillaja-saponaria-bark-extract',
      'rhamnolipids',
      'sapindus-mukorossi-fruit-extract',
      'saponaria-officinalis-root-extract',
      'yucca-schidigera-root-extract',
    ),
    reason: 'Natural surfactants of any strength: the content of saponins or lipids differs by maker and harvest.',
  },
  {
    lint: 'surfactant-states-active-matter',
    at: record(
      'disodium-2-sulfolaurate',
      'laureth-7-citrate',
      'lauroyl-myristoyl-methyl-glucamide',
      'peg-50-shea-butter',
      'peg-7-glyceryl-cocoate',
      'sodium-decyl-sulfate',
      'sodium-dodecylbenzenesulfonate',
      'sodium-laureth-11-carboxylate',
      'sodium-laureth-13-carboxylate',
      'sodium-laureth-5-carboxylate',
      'sodium-myristyl-sulfate',
      'sucrose-cocoate',
    ),
    reason: 'Sold in several strengths, of which none was found in a source or is remembered as the usual one.',
  },
]
