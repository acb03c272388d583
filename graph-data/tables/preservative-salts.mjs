/** Salt, the acid that it gives, acid molecules in one salt. Phenols count as acids here. */
export const SALTS = [
  ['sodium-benzoate', 'benzoic-acid', 1],
  ['potassium-benzoate', 'benzoic-acid', 1],
  ['ammonium-benzoate', 'benzoic-acid', 1],
  ['calcium-benzoate', 'benzoic-acid', 2],
  ['potassium-sorbate', 'sorbic-acid', 1],
  ['sodium-sorbate', 'sorbic-acid', 1],
  ['calcium-sorbate', 'sorbic-acid', 2],
  ['sodium-dehydroacetate', 'dehydroacetic-acid', 1],
  ['sodium-salicylate', 'salicylic-acid', 1],
  ['tea-salicylate', 'salicylic-acid', 1],
  ['sodium-propionate', 'propionic-acid', 1],
  ['potassium-propionate', 'propionic-acid', 1],
  ['calcium-propionate', 'propionic-acid', 2],
  ['sodium-anisate', 'p-anisic-acid', 1],
  ['sodium-levulinate', 'levulinic-acid', 1],
  ['sodium-formate', 'formic-acid', 1],
  ['sodium-undecylenate', 'undecylenic-acid', 1],
  ['sodium-methylparaben', 'methylparaben', 1],
  ['potassium-methylparaben', 'methylparaben', 1],
  ['sodium-ethylparaben', 'ethylparaben', 1],
  ['sodium-propylparaben', 'propylparaben', 1],
  ['sodium-butylparaben', 'butylparaben', 1],
  ['sodium-o-phenylphenate', 'o-phenylphenol', 1],
]

const METHYL = { agent: 'METHYLPARABEN', applies_to: 'methylparaben' }
const PROPYL = { agent: 'PROPYLPARABEN', applies_to: 'propylparaben' }
const MIXTURE = {
  agent: 'PHENOXYETHANOL + METHYLPARABEN + ETHYLPARABEN + PROPYLPARABEN + BUTYLPARABEN',
  applies_to: 'class:paraben',
}
const LESS = [
  { agent: 'PHENOXYETHANOL', applies_to: 'phenoxyethanol' },
  { agent: 'BENZOIC ACID', applies_to: 'benzoic-acid' },
  { agent: 'CAPRYLYL GLYCOL', applies_to: 'caprylyl-glycol' },
]
export const PAIRS = {
  'bin-005': [{ ...METHYL, surfactant: 'polysorbate-80', property: 'binding_per_percent', level_min: '0', level_max: '5' }],
  'bin-006': [{ ...PROPYL, surfactant: 'polysorbate-80', property: 'binding_per_percent', level_min: '0', level_max: '5' }],
  'bin-007': [{ ...MIXTURE, surfactant: 'polysorbate-80', outcome: 'lost', level_min: '2.5' }],
  'bin-008': [{ ...MIXTURE, surfactant: 'polysorbate-20', outcome: 'partly lost', level_min: '2.5' }],
  'bin-009': [{ ...MIXTURE, surfactant: 'polysorbate-20', outcome: 'partly lost', level_min: '5' }],
  'bin-010': [{ ...MIXTURE, surfactant: 'ceteareth-20', outcome: 'kept', level_max: '2.5' }],
  'bin-011': [{ ...MIXTURE, surfactant: 'ceteareth-20', outcome: 'lost', level_min: '5' }],
  'bin-012': [{ ...MIXTURE, surfactant: 'cetearyl-alcohol', outcome: 'kept', level_max: '5' }],
  'bin-013': [{ ...MIXTURE, surfactant: 'glyceryl-stearate', outcome: 'kept', level_max: '5' }],
  'bin-014': [METHYL, MIXTURE].map((who) => ({ ...who, surfactant: 'peg-40-hydrogenated-castor-oil', outcome: 'lost' })),
  'bin-015': [METHYL, MIXTURE].map((who) => ({ ...who, surfactant: 'polysorbate-80', outcome: 'lost' })),
  'bin-016': LESS.flatMap((who) =>
    ['peg-40-hydrogenated-castor-oil', 'polysorbate-80'].map((surfactant) => ({ ...who, surfactant, outcome: 'less affected' })),
  ),
  'bin-017': [METHYL, ...LESS.slice(0, 2)].map((who) => ({ ...who, surfactant: 'class:ethoxylate', outcome: 'partly lost', level_min: '20' })),
  'bin-019': [{ agent: 'CHLOROXYLENOL', applies_to: 'chloroxylenol', surfactant: 'ceteareth-20', outcome: 'partly lost' }],
  'bin-020': [{ agent: 'P-CHLORO-M-CRESOL', applies_to: 'p-chloro-m-cresol', surfactant: 'class:ethoxylate', outcome: 'partly lost' }],
  'bin-d01': [{ agent: 'SORBIC ACID', applies_to: 'sorbic-acid', surfactant: 'class:ethoxylate', outcome: 'less affected' }],
  'bin-021': [{ agent: 'BENZYL ALCOHOL', applies_to: 'benzyl-alcohol', surfactant: 'polysorbate-80', outcome: 'less affected' }],
}
