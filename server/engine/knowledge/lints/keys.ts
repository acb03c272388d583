/** Keys that a record may have; `*` stands for any key, a list takes the shape of its entries. */
export interface Shape {
  readonly [key: string]: Shape | true
}

const PROVENANCE: Shape = { kind: true, source: true, locator: true, access: true, date: true }
const WHEN: Shape = {
  with: true,
  without: true,
  form: true,
  product: true,
  areas: true,
  min_percent: true,
  max_percent: true,
  ph: { min: true, max: true },
}
const LEVEL: Shape = { min: true, max: true, typical: true }
const CLAIM: Shape = {
  ...PROVENANCE,
  value: true,
  min: true,
  max: true,
  is: true,
  shares: { '*': true },
  gramPositive: true,
  gramNegative: true,
  yeast: true,
  mould: true,
  conditions: true,
  note: true,
  why: true,
}
const RELATION: Shape = {
  ...PROVENANCE,
  with: true,
  says: true,
  mechanism: true,
  severity: true,
  ph: { min: true, max: true },
  min_percent: true,
}

export const INGREDIENT: Shape = {
  id: true,
  inci: true,
  tier: true,
  cas: true,
  cas_note: true,
  names: { exact: true, broad: true, narrow: true, former: true, foreign: true },
  same_as: true,
  not_in_inventory: true,
  seen: PROVENANCE,
  phase: CLAIM,
  solubility: CLAIM,
  form: CLAIM,
  usual: CLAIM,
  classes: true,
  roles: { ...PROVENANCE, role: true, level_percent: LEVEL, when: WHEN, share: true },
  made_of: { ingredient: true, share_percent: true },
  facts: { '*': CLAIM },
  clashes: RELATION,
  boosted_by: RELATION,
  inactivated_by: RELATION,
  needs: { ...PROVENANCE, any_of: true, need: true, says: true, wets_in: true, above_c: true, when: WHEN },
  stands_in_for: { ...PROVENANCE, for: true, ratio: true, grade: true, when: WHEN, says: true },
  does_not_stand_in_for: { ...PROVENANCE, for: true, when: WHEN, why: true, says: true },
  cautions: { says: true, at: true },
  retired: { on: true, why: true, use: true },
}

export const LIMIT: Shape = {
  id: true,
  market: true,
  act: true,
  entry: true,
  title: true,
  kind: true,
  basis: true,
  members: { '*': true },
  member_classes: true,
  members_note: true,
  requires: { '*': true },
  use: true,
  exported: true,
  rows: {
    scope: {
      product: true,
      areas: true,
      not_areas: true,
      form: true,
      not_form: true,
      only: true,
      uses: true,
      not_uses: true,
      professional: true,
      needs: true,
      least_percent: true,
      above_ph: true,
    },
    max_percent: true,
    strict: true,
    prohibited: true,
    ph: { min: true, max: true },
    legal_act: true,
    condition: true,
    warning: true,
    warning_above_percent: true,
    applies_from: true,
    older_stock_until: true,
    note: true,
    source: true,
    locator: true,
    access: true,
  },
  date: true,
}

export const RULE: Shape = {
  id: true,
  title: true,
  why: true,
  severity: true,
  swap: true,
  cost: true,
  status: true,
  fires: true,
  silent: true,
}

const SWAP: Shape = {
  scope: true,
  dose: true,
  lost: true,
  irreplaceable: true,
  ends_at_ph: true,
  must: { property: true, word: true, class: true, one_of: true, buffers: true, why: true },
  criteria: { by: true, property: true, group: true, scale: true, log: true, purpose: true, weight: true, why: true },
}
/** What a class or role states about its members. */
const ABOUT_MEMBERS: Shape = {
  seen: PROVENANCE,
  facts: { '*': { '*': { ...CLAIM, only: { form: true, solubility: true } } } },
}
export const ROLES: Shape = {
  ...ABOUT_MEMBERS,
  roles: {
    '*': {
      label: true,
      says: true,
      broader: true,
      phase: true,
      confused_with: true,
      work: true,
      few: true,
      swap: SWAP,
    },
  },
}
export const CLASSES: Shape = {
  ...ABOUT_MEMBERS,
  groups: { '*': true },
  classes: { '*': { group: true, says: true } },
}
export const PROPERTIES: Shape = { '*': { kind: true, unit: true, words: true, says: true, plausible: true } }
export const CLASHES: Shape = {
  seen: PROVENANCE,
  clashes: {
    ...PROVENANCE,
    id: true,
    between: true,
    mechanism: true,
    severity: true,
    says: true,
    min_percent: true,
    ph: { min: true, max: true },
    unless: WHEN,
  },
}
