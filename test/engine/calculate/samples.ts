import type { CalculationInput, CalculationName } from '#engine/model/inputs/index.ts'

/** One usual question for every calculation; the type asks for a new one with every new calculation. */
export const SAMPLES: { [N in CalculationName]: CalculationInput<N> } = {
  'two-phase-partition': { total_percent: 0.5, partition_ratio: 3, oil_to_water: 0.25, water_solubility_percent: 2 },
  'partition-with-micelles': {
    total_percent: 0.3,
    partition_ratio: 5,
    oil_to_water: 0.3,
    binding_per_percent: 0.4,
    surfactant_percent: 3,
  },
  'undissociated-share': { ph: 5, pka: 4.2 },
  'acid-in-emulsion': { undissociated_percent: 0.03, ph: 5, pka: 4.2, partition_ratio: 3, oil_to_water: 0.25 },
  'acid-solubility': { intrinsic_solubility_percent: 0.3, ph: 5, pka: 4.2 },
  'required-hlb': {
    oils: [
      { share_percent: 15, required_hlb: 11 },
      { share_percent: 3, required_hlb: 15 },
    ],
  },
  'blend-hlb': {
    emulsifiers: [
      { share_percent: 3, hlb: 14.9 },
      { share_percent: 2, hlb: 4.7 },
    ],
  },
  'emulsifier-pair': { target_hlb: 11, high_hlb: 14.9, low_hlb: 4.7 },
  'emulsifier-amount': { oil_percent: 18 },
  'hlb-by-oxyethylene': { hydrophobe_molar_mass: 256.5, oxyethylene_units: 20 },
  'hlb-by-saponification': { saponification_value: 161, acid_value: 198 },
  'hlb-by-groups': { hydrophilic: ['-COONa'], lipophilic_groups: 17 },
  'iodine-value': { ingredient: 'olea-europaea-fruit-oil' },
  'saponification-value': { ingredient: 'cocos-nucifera-oil' },
  oxidizability: { ingredient: 'linum-usitatissimum-seed-oil' },
  'profile-distance': { from: 'olea-europaea-fruit-oil', to: 'prunus-amygdalus-dulcis-oil' },
  'lye-for-soap': {
    fats: [
      { ingredient: 'olea-europaea-fruit-oil', share_percent: 70 },
      { ingredient: 'cocos-nucifera-oil', share_percent: 30 },
    ],
    fats_g: 500,
    superfat_percent: 6,
    lye: 'naoh',
    purity_percent: 98,
  },
  'mixed-micelle-interaction': {
    cmc_1_mmol_per_l: 0.8,
    cmc_2_mmol_per_l: 4.3,
    mixed_cmc_mmol_per_l: 1.2,
    mole_fraction_1: 0.5,
  },
  'curvature-of-blend': {
    parts: [
      { share_percent: 60, molar_mass: 288, curvature: -2.3 },
      { share_percent: 40, molar_mass: 444, curvature: 2.6 },
    ],
  },
  'hydrophilic-lipophilic-deviation': {
    surfactant: 'ethoxylate',
    salt_g_per_100_ml: 1,
    oil_eacn: 13,
    curvature: -1,
    temp_c: 30,
  },
  'optimum-salinity': { oil_eacn: 7, curvature: -1, temp_c: 25 },
  'buffer-ph': {
    systems: [{ acid: 'citric acid', mol_per_l: 0.05 }],
    ions: [{ charge: 1, mol_per_l: 0.08 }],
    temp_c: 25,
  },
  'acid-dose': {
    systems: [{ acid: 'citric acid', mol_per_l: 0.05 }],
    ions: [{ charge: 1, mol_per_l: 0.12 }],
    temp_c: 25,
    add: 'lactic acid',
    target_ph: 4.5,
  },
  'dilution-ph': {
    systems: [{ acid: 'citric acid', mol_per_l: 0.05 }],
    ions: [{ charge: 1, mol_per_l: 0.08 }],
    temp_c: 25,
    product_g: 10,
    water_g: 90,
  },
  'log-reduction': { start_cfu_per_g: 1e6, end_cfu_per_g: 5, detection_limit_cfu_per_g: 10 },
  'd-value': { start_cfu_per_g: 1e6, end_cfu_per_g: 2e3, hours: 24 },
  'active-matter-dose': { old_percent: 20, old_active_percent: 30, new_active_percent: 50 },
  'creaming-rate': { droplet_um: 5, density_gap_kg_per_m3: 60, viscosity_mpa_s: 500 },
  'gum-viscosity': { known_percent: 1, known_mpa_s: 1800, wanted_percent: 0.7 },
}
