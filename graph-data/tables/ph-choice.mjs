// What import-ph.mjs takes of the reference rows and what it adds, each with its reason.

/** Without a constant to calculate with. */
export const LEFT_OUT = new Set([
  'water', // always there; its constants stand in the engine
  'caffeine', // below 1: never changes in a cosmetic
  'sodium hydroxymethylglycinate', // no value found
])

/** Where more than one row is fit for use: the source to take, and why. Else the row marked as used there. */
export const PREFERRED = {
  'citric acid': 'BENEZETH1995', // read, with heat and heat capacity; the other quotes the constants and remembers the capacity
  'glycolic acid': 'AQION', // same value; leaves the collection for non-commercial use alone
  'salicylic acid 1': 'MERCK-COPY', // within 0.01 of the collection for non-commercial use
  'glycine NH3+': 'PHREEQC-MINTEQ', // same value, with its heat
  'lauramine oxide': 'JCIS2001', // micelles, as in every wash; 5.0 is for the single molecule
  'boric acid': 'NBS1944', // read, over 0 to 60 °C
}

/** Measured over several temperatures: constant, heat and heat capacity at 25 °C by least squares. */
export const FITTED = new Set([
  'boric acid 1',
  'malic acid 1',
  'malic acid 2',
  'tromethamine BH+',
  'aminomethyl propanol BH+',
  'ethanolamine BH+',
  'isopropanolamine BH+',
])

/** Rows of our own. */
export const OWN = [
  { acid: 'oxalic acid', step: '1', pka: 1.277, dh: -4.1, dcp: -168, source: 'KETTLER1991', locator: 'abstract', access: 'read', note: '±0.010; heat ±1.1, heat capacity ±41' },
  { acid: 'oxalic acid', step: '2', pka: 4.275, dh: -6.8, dcp: -261, source: 'KETTLER1991', locator: 'abstract', access: 'read', note: '±0.006; heat ±0.5, heat capacity ±12' },
  { acid: 'pyrrolidone carboxylic acid', cas: '98-79-3', formula: 'C5H7NO3', step: '1', pka: 3.3, source: 'MEM', locator: 'constant of L-pyroglutamic acid', access: 'memory' },
]

/** Charge of the form with all its protons, where it is not 0 (acids) or 1 (bases). */
export const CHARGE = { arginine: 2, 'betaine (trimethylglycine)': 1, 'cocamidopropyl betaine carboxyl': 1 }

/** Rows that pass a figure on: [source where it stands, locator]. */
export const CITED = {
  'sorbic acid 1': ['SORBWIKI', 'text; 4.8 in ADDBOOK, p. 733'],
  'dehydroacetic acid 1': ['MEM', 'constant known'],
}

/** Short names that people and tables use. */
export const ALSO = {
  'citric acid': 'citric; citrate',
  'lactic acid': 'lactic; lactate',
  'glycolic acid': 'glycolic',
  'malic acid': 'malic',
  'tartaric acid': 'tartaric',
  'gluconic acid': 'gluconic',
  'acetic acid': 'acetic; acetate',
  'phosphoric acid': 'phosphoric; phosphate',
  'boric acid': 'boric; borate',
  'carbonic acid (CO2 in water)': 'carbonic; carbonic acid; carbonate; carbon dioxide',
  'salicylic acid': 'salicylic',
  'mandelic acid': 'mandelic',
  'benzoic acid': 'benzoic; benzoate',
  'sorbic acid': 'sorbic; sorbate',
  'dehydroacetic acid': 'dha; dehydroacetic',
  'levulinic acid': 'levulinic',
  'p-anisic acid': 'anisic; anisic acid',
  'ascorbic acid': 'ascorbic; vitamin c',
  'azelaic acid': 'azelaic',
  'succinic acid': 'succinic',
  'phytic acid': 'phytic',
  'oxalic acid': 'oxalic',
  'phthalic acid': 'phthalic',
  'myristic acid': 'fattymicelle; fatty acid in micelles',
  triethanolamine: 'tea; trolamine',
  tromethamine: 'tris',
  'aminomethyl propanol': 'amp',
  ethanolamine: 'mea',
  ammonia: 'ammonium',
  'betaine (trimethylglycine)': 'betaine; trimethylglycine',
  'cocamidopropyl betaine carboxyl': 'cocamidopropyl betaine',
  'hydrochloric acid': 'hcl',
  'sodium hydroxide': 'naoh',
  'potassium hydroxide': 'koh',
  'pyrrolidone carboxylic acid': 'pca; pyroglutamic acid',
  'hydroquinone (degradation product)': 'hydroquinone',
}

/** Constants as measured in a salt solution, in micelles or in a dispersion: salt must not move them again. */
export const APPARENT = new Set([
  'phytic acid',
  'lauramine oxide',
  'decylamine oxide',
  'myristamine oxide',
  'myristic acid',
  'stearic acid',
  'oleic acid',
  'linoleic acid',
  'linolenic acid',
])

/** What a reader of a result should hear when this acid is in it. */
export const CAUTION = {
  'phytic acid': 'phytic acid: coarse, its first six steps are one figure and sodium lowers the last six by 2 to 3 units',
  'kojic acid': 'kojic acid: contested, 9.4 here, about 7.9 elsewhere; it does not matter below pH 7',
  'cocamidopropyl betaine carboxyl': 'cocamidopropyl betaine: no measured constant, that of betaine stands in; traces in the raw material buffer more',
  'lauramine oxide': 'lauramine oxide: 5.9 in micelles, about 5.0 as a single molecule',
  'myristic acid': 'myristic acid: dissolved in nonionic micelles',
  'lauric acid': 'lauric acid: below its critical concentration; in soap 6 to 9 and more',
  'stearic acid': 'stearic acid: apparent value of a soap dispersion, no constant of a solution',
  'oleic acid': 'oleic acid: apparent value of a soap dispersion, no constant of a solution',
  'linoleic acid': 'linoleic acid: apparent value of a soap dispersion, no constant of a solution',
  'linolenic acid': 'linolenic acid: apparent value of a soap dispersion, no constant of a solution',
  'boric acid': 'boric acid: polyborates form above about 0.025 mol/L and are not counted',
  'lactobionic acid': 'lactobionic acid: constant from memory, ±0.2',
  'dehydroacetic acid': 'dehydroacetic acid: constant from memory, ±0.1',
  'pyrrolidone carboxylic acid': 'pyrrolidone carboxylic acid: constant from memory',
  'gluconic acid': 'gluconic acid: part of it is lactone in water, so that it reads some 0.1 lower',
  'levulinic acid': 'levulinic acid: the compilers call the constant uncertain',
}

/**
 * What a mole of a salt, hydrate or ingredient brings: [name, ingredient, formula, parts, ions].
 * Parts: acids by name with their number; ions that take no part: charge*number.
 */
export const COMPOUNDS = [
  // names of the reference table that are carriers of a mass
  ['sodium bicarbonate', 'sodium-bicarbonate', 'NaHCO3', 'carbonic acid (CO2 in water)*1', '1*1'],
  ['sodium carbonate', 'sodium-carbonate', 'Na2CO3', 'carbonic acid (CO2 in water)*1', '1*2'],
  ['sodium lactate', 'sodium-lactate', 'C3H5NaO3', 'lactic acid*1', '1*1'],
  ['sodium citrate dihydrate', 'sodium-citrate', 'C6H5Na3O7.2H2O', 'citric acid*1', '1*3'],
  ['citric acid monohydrate', '', 'C6H8O7.H2O', 'citric acid*1', ''],
  ['sodium benzoate', 'sodium-benzoate', 'C7H5NaO2', 'benzoic acid*1', '1*1'],
  ['potassium sorbate', 'potassium-sorbate', 'C6H7KO2', 'sorbic acid*1', '1*1'],
  ['disodium EDTA dihydrate', 'disodium-edta', 'C10H14N2Na2O8.2H2O', 'EDTA*1', '1*2'],
  ['gluconolactone', 'gluconolactone', 'C6H10O6', 'gluconic acid*1', ''],
  ['sodium dehydroacetate', 'sodium-dehydroacetate', 'C8H7NaO4', 'dehydroacetic acid*1', '1*1'],
  // further salts and bases of the records
  ['potassium lactate', 'potassium-lactate', 'C3H5KO3', 'lactic acid*1', '1*1'],
  ['ammonium lactate', 'ammonium-lactate', 'C3H9NO3', 'lactic acid*1; ammonia*1', ''],
  ['calcium lactate', 'calcium-lactate', 'C6H10CaO6', 'lactic acid*2', '2*1'],
  ['sodium glycolate', 'sodium-glycolate', 'C2H3NaO3', 'glycolic acid*1', '1*1'],
  ['ammonium glycolate', 'ammonium-glycolate', 'C2H7NO3', 'glycolic acid*1; ammonia*1', ''],
  ['sodium acetate', 'sodium-acetate', 'C2H3NaO2', 'acetic acid*1', '1*1'],
  ['sodium gluconate', 'sodium-gluconate', 'C6H11NaO7', 'gluconic acid*1', '1*1'],
  ['monosodium citrate', 'monosodium-citrate', 'C6H7NaO7', 'citric acid*1', '1*1'],
  ['potassium citrate monohydrate', 'potassium-citrate', 'C6H5K3O7.H2O', 'citric acid*1', '1*3'],
  ['sodium phosphate', 'sodium-phosphate', 'NaH2PO4', 'phosphoric acid*1', '1*1'],
  ['disodium phosphate', 'disodium-phosphate', 'Na2HPO4', 'phosphoric acid*1', '1*2'],
  ['trisodium phosphate', 'trisodium-phosphate', 'Na3PO4', 'phosphoric acid*1', '1*3'],
  ['potassium phosphate', 'potassium-phosphate', 'KH2PO4', 'phosphoric acid*1', '1*1'],
  ['dipotassium phosphate', 'dipotassium-phosphate', 'K2HPO4', 'phosphoric acid*1', '1*2'],
  ['borax', 'sodium-borate', 'Na2B4O7.10H2O', 'boric acid*4', '1*2'],
  ['potassium bitartrate', 'potassium-bitartrate', 'C4H5KO6', 'tartaric acid*1', '1*1'],
  ['potassium sodium tartrate', 'potassium-sodium-tartrate', 'C4H4KNaO6.4H2O', 'tartaric acid*1', '1*2'],
  ['disodium succinate', 'disodium-succinate', 'C4H4Na2O4', 'succinic acid*1', '1*2'],
  ['sodium levulinate', 'sodium-levulinate', 'C5H7NaO3', 'levulinic acid*1', '1*1'],
  ['sodium anisate', 'sodium-anisate', 'C8H7NaO3', 'p-anisic acid*1', '1*1'],
  ['sodium salicylate', 'sodium-salicylate', 'C7H5NaO3', 'salicylic acid*1', '1*1'],
  ['TEA salicylate', 'tea-salicylate', 'C13H21NO6', 'salicylic acid*1; triethanolamine*1', ''],
  ['betaine salicylate', 'betaine-salicylate', 'C12H17NO5', 'salicylic acid*1; betaine (trimethylglycine)*1', ''],
  ['potassium benzoate', 'potassium-benzoate', 'C7H5KO2', 'benzoic acid*1', '1*1'],
  ['ammonium benzoate', 'ammonium-benzoate', 'C7H9NO2', 'benzoic acid*1; ammonia*1', ''],
  ['sodium sorbate', 'sodium-sorbate', 'C6H7NaO2', 'sorbic acid*1', '1*1'],
  ['sodium propionate', 'sodium-propionate', 'C3H5NaO2', 'propionic acid*1', '1*1'],
  ['sodium formate', 'sodium-formate', 'CHNaO2', 'formic acid*1', '1*1'],
  ['trisodium EDTA', 'trisodium-edta', 'C10H13N2Na3O8', 'EDTA*1', '1*3'],
  ['tetrasodium EDTA tetrahydrate', 'tetrasodium-edta', 'C10H12N2Na4O8.4H2O', 'EDTA*1', '1*4'],
  ['potassium bicarbonate', 'potassium-bicarbonate', 'KHCO3', 'carbonic acid (CO2 in water)*1', '1*1'],
  ['potassium carbonate', 'potassium-carbonate', 'K2CO3', 'carbonic acid (CO2 in water)*1', '1*2'],
  ['sodium sesquicarbonate', 'sodium-sesquicarbonate', 'Na3H5C2O8', 'carbonic acid (CO2 in water)*2', '1*3'],
  ['ammonium bicarbonate', 'ammonium-bicarbonate', 'CH5NO3', 'carbonic acid (CO2 in water)*1; ammonia*1', ''],
  ['ammonium chloride', 'ammonium-chloride', 'NH4Cl', 'ammonia*1', '-1*1'],
  ['arginine hydrochloride', 'arginine-hcl', 'C6H15ClN4O2', 'arginine*1', '-1*1'],
  ['sodium PCA', 'sodium-pca', 'C5H6NNaO3', 'pyrrolidone carboxylic acid*1', '1*1'],
  // what never takes part
  ['water', '', 'H2O', '', ''],
  ['caffeine', 'caffeine', 'C8H10N4O2', '', ''],
  // salts of strong acids and bases: they only make the water salty
  ['sodium chloride', 'sodium-chloride', 'NaCl', '', '1*1; -1*1'],
  ['potassium chloride', 'potassium-chloride', 'KCl', '', '1*1; -1*1'],
  ['sodium sulfate', 'sodium-sulfate', 'Na2SO4', '', '1*2; -2*1'],
  ['magnesium sulfate heptahydrate', 'magnesium-sulfate', 'MgSO4.7H2O', '', '2*1; -2*1'],
  ['magnesium chloride hexahydrate', 'magnesium-chloride', 'MgCl2.6H2O', '', '2*1; -1*2'],
  ['calcium chloride dihydrate', 'calcium-chloride', 'CaCl2.2H2O', '', '2*1; -1*2'],
  // strong acids and bases
  ['hydrochloric acid', 'hydrochloric-acid', 'HCl', '', '-1*1'],
  ['sodium hydroxide', 'sodium-hydroxide', 'NaOH', '', '1*1'],
  ['potassium hydroxide', 'potassium-hydroxide', 'KOH', '', '1*1'],
]

/** Records that are these acids or bases themselves, where the id is not the name. */
export const RECORD_OF = {
  'betaine (trimethylglycine)': 'betaine',
  'cocamidopropyl betaine carboxyl': '',
  'carbonic acid (CO2 in water)': '',
  ammonia: 'ammonium-hydroxide',
  'pyrrolidone carboxylic acid': 'pca',
  'nicotinic acid': 'niacin',
  'phthalic acid': '',
  'trimethylamine oxide': '',
  dimethylaminoethanol: '',
  'hydroquinone (degradation product)': 'hydroquinone',
  'decylamine oxide': '',
  glycine: '',
}

export const SOURCES = [
  {
    source_id: 'KETTLER1991',
    title:
      'Dissociation quotients of oxalic acid in aqueous sodium chloride media to 175 °C. J. Solution Chem. 20 (1991), no. 9 (abstract)',
    locator: 'digitalcommons.unl.edu/geosciencefacpub/195',
    grade: 'B',
    note: 'Abstract read 2026-11-26: log K1 -1.277, -4.1 kJ/mol, -168 J/mol K; log K2 -4.275, -6.8, -261',
  },
  {
    source_id: 'MALMBERG1956',
    title: 'Dielectric constant of water from 0 to 100 °C. J. Res. NBS 56 (1956), 1 to 8',
    locator: 'J. Res. NBS 56, 1',
    grade: 'A',
    note: 'Polynomial seen quoted, the paper itself not opened',
  },
]
