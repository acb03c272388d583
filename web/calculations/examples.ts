import type { Values } from './form-values.ts'

const citrate = {
  systems: [{ acid: 'citric acid', mol_per_l: '0.05' }],
  ions: [{ charge: '1', mol_per_l: '0.08' }],
  temp_c: '25',
}

/** Figures of our own to start from, one set a calculation: usual sizes, none of them a recommendation. */
export const EXAMPLES: Readonly<Record<string, Values>> = {
  'undissociated-share': { ph: '5', pka: '4.2' },
  'buffer-ph': citrate,
  'acid-dose': { ...citrate, ions: [{ charge: '1', mol_per_l: '0.12' }], add: 'lactic acid', target_ph: '4.5' },
  'dilution-ph': { ...citrate, product_g: '10', water_g: '90' },
  'required-hlb': {
    oils: [
      { share_percent: '14', required_hlb: '7' },
      { share_percent: '4', required_hlb: '15.5' },
    ],
  },
  'blend-hlb': {
    emulsifiers: [
      { share_percent: '3.2', hlb: '15' },
      { share_percent: '1.8', hlb: '4.3' },
    ],
  },
  'emulsifier-pair': { target_hlb: '9', high_hlb: '15', low_hlb: '4.3' },
  'emulsifier-amount': { oil_percent: '18' },
  'hlb-by-oxyethylene': { hydrophobe_molar_mass: '270.5', oxyethylene_units: '20' },
  'hlb-by-saponification': { saponification_value: '160', acid_value: '198' },
  'hlb-by-groups': { hydrophilic: [{ '': '-COONa' }], lipophilic_groups: '17' },
  'creaming-rate': { droplet_um: '4', density_gap_kg_per_m3: '80', viscosity_mpa_s: '1500' },
  'gum-viscosity': { known_percent: '1', known_mpa_s: '1600', wanted_percent: '0.6' },
  'log-reduction': { start_cfu_per_g: '1000000', end_cfu_per_g: '20', detection_limit_cfu_per_g: '10' },
  'd-value': { start_cfu_per_g: '1000000', end_cfu_per_g: '3000', hours: '24' },
  'active-matter-dose': { old_percent: '18', old_active_percent: '30', new_active_percent: '50' },
  'iodine-value': { ingredient: 'olive oil', fatty_acids: [] },
  'saponification-value': { ingredient: 'coconut oil', fatty_acids: [] },
  oxidizability: {
    ingredient: '',
    fatty_acids: [
      { acid: 'C18:1', share_percent: '30' },
      { acid: 'C18:2', share_percent: '60' },
      { acid: 'C16:0', share_percent: '10' },
    ],
  },
  'profile-distance': { from: 'olive oil', to: 'sunflower oil' },
  'lye-for-soap': {
    fats: [
      { ingredient: 'olive oil', share_percent: '70' },
      { ingredient: 'coconut oil', share_percent: '30' },
    ],
    fats_g: '400',
    superfat_percent: '7',
    lye: 'naoh',
    purity_percent: '98',
  },
  'two-phase-partition': {
    total_percent: '0.4',
    partition_ratio: '6',
    oil_to_water: '0.3',
    water_solubility_percent: '',
  },
  'partition-with-micelles': {
    total_percent: '0.3',
    partition_ratio: '6',
    oil_to_water: '0.3',
    binding_per_percent: '0.5',
    surfactant_percent: '3',
  },
  'acid-in-emulsion': {
    undissociated_percent: '0.03',
    ph: '5',
    pka: '4.2',
    partition_ratio: '3',
    oil_to_water: '0.25',
  },
  'acid-solubility': { intrinsic_solubility_percent: '0.3', ph: '5', pka: '4.2' },
  'mixed-micelle-interaction': {
    cmc_1_mmol_per_l: '1',
    cmc_2_mmol_per_l: '5',
    mixed_cmc_mmol_per_l: '1.3',
    mole_fraction_1: '0.5',
  },
  'curvature-of-blend': {
    parts: [
      { share_percent: '55', molar_mass: '288', curvature: '-2.3' },
      { share_percent: '45', molar_mass: '450', curvature: '2.5' },
    ],
  },
  'hydrophilic-lipophilic-deviation': {
    surfactant: 'anionic',
    salt_g_per_100_ml: '2',
    oil_eacn: '7',
    curvature: '-1',
    temp_c: '25',
  },
  'optimum-salinity': { oil_eacn: '7', curvature: '-1', temp_c: '25' },
}
