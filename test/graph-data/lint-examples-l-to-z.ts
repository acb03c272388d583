import {
  AROUND,
  CLASSES,
  OIL,
  casesOf,
  changed,
  fact,
  limit,
  lessonWorld,
  limits,
  oleic,
  other,
  playing,
  roleOf,
  rule,
  withRecord,
} from './small-worlds.ts'
import type { Example } from './small-worlds.ts'

const meltingTable = {
  path: 'tables/by-hand.tsv',
  rows: [
    { inci: 'Glycerin', property: 'melting_c', min: '18', max: '18', unit: 'C', source_id: 'S-1', access: 'read' },
  ],
}

/** One good and one bad world for every lint from L to Z. */
export const EXAMPLES_L_TO_Z: Record<string, Example> = {
  'lesson-is-well-formed': {
    good: lessonWorld(),
    bad: lessonWorld({ parts: [{ text: 'word '.repeat(351) }] }),
    at: /^lessons\/roles\/humectant\.yaml/,
    says: /351 words, expected 60 to 350/,
  },
  'lesson-states-facts': {
    good: lessonWorld(),
    bad: lessonWorld({ states: [{ says: 'It is none.', not_plays: { ingredient: 'glycerin', role: 'humectant' } }] }),
    at: /^lessons\/roles\/humectant\.yaml\/states\/0/,
    says: /"It is none\.": glycerin plays humectant/,
  },
  'level-is-in-order': changed(
    roleOf('humectant', { level_percent: { min: 1, max: 10, typical: 3 } }),
    roleOf('humectant', { level_percent: { min: 1, max: 10, typical: 12 } }),
    /typical 12 lies outside 1 to 10/,
  ),
  'level-is-lawful': {
    // 20 % of a salt that counts half are 10 % of the acid.
    good: withRecord(roleOf('humectant', { level_percent: { max: 20 } }), {
      limits: [limit({ members: { glycerin: 0.5 } })],
    }),
    bad: withRecord(roleOf('humectant', { level_percent: { max: 24 } }), {
      limits: [limit({ members: { glycerin: 0.5 } })],
    }),
    at: /^ingredients\/glycerin\.yaml\/roles\/0\/level_percent/,
    says: /up to 12 %; eu-x-1 allows at most 10 %/,
  },
  'limit-factor-has-reason': limits(
    { members: { glycerin: 0.9 } },
    { members: { glycerin: 1.2 } },
    /counts 1\.2 g a gram/,
  ),
  'limit-has-members': limits({}, { members: {} }, /the entry counts nothing/),
  'limit-member-is-known': limits({}, { members: { glycerine: 1 } }, /glycerine is not known/),
  'limit-row-says-something': limits(
    {},
    { rows: [{ scope: {}, source: 'S-1', locator: 'no 1', access: 'read' }] },
    /the row demands nothing/,
  ),
  'member-passes-own-role': changed(
    { form: 'solid', ...roleOf('wax') },
    { form: 'liquid', ...roleOf('wax') },
    /wax demands form solid: a liquid gives no body/,
    {
      roles: {
        wax: { label: 'Wax', swap: { must: [{ word: 'form', one_of: ['solid'], why: 'a liquid gives no body' }] } },
      },
    },
  ),
  'memory-gives-way': changed(
    { facts: { melting_c: 30 } },
    { facts: { melting_c: 17 } },
    /melting_c is remembered here and seen in a table/,
    { tables: [meltingTable] },
  ),
  'names-are-own': changed(
    { names: { exact: ['glycerol'] } },
    { names: { exact: ['lysine'] } },
    /"lysine" is also a name/,
    {
      ingredients: [other({ names: { exact: ['lysine'] } })],
    },
  ),
  'node-is-reached': {
    good: withRecord({ classes: ['polyol'] }, { classes: { polyol: { group: 'chemistry' } } }),
    bad: withRecord({}, { classes: { polyol: { group: 'chemistry' } } }),
    at: /^classes\.yaml\/classes\/polyol/,
    says: /no relation leads to it/,
  },
  'preservative-states-spectrum': changed(
    { ...roleOf('preservative'), facts: { spectrum: { gramPositive: 'strong' } } },
    roleOf('preservative'),
    /a preservative without spectrum/,
    playing,
  ),
  'preservative-states-window': changed(
    { ...roleOf('preservative'), facts: { ph_effective: [3, 6] } },
    roleOf('preservative'),
    /without the pH at which it works/,
    playing,
  ),
  'printed-source-has-place': fact(
    { ph_stability: { min: 3, max: 8, source: 'S-1', locator: 'p. 3', access: 'read' } },
    { ph_stability: { min: 3, max: 8, source: 'S-1', access: 'read' } },
    /S-1 is named without a place in it/,
  ),
  'range-is-ordered': fact({ ph_stability: [3, 8] }, { ph_stability: [8, 3] }, /8 is above 3/),
  'record-is-complete': changed({}, { form: undefined, phase: 'water' }, /form is missing/),
  'retired-names-successor': changed(
    { retired: { on: '2026-01-31', why: 'two substances under one name', use: ['betaine'] } },
    { retired: { on: '2026-01-31', why: 'two substances under one name', use: ['betayne'] } },
    /betayne, to be used instead, is not known/,
  ),
  'role-has-five-members': {
    good: withRecord({}, { roles: { humectant: { label: 'Humectant', few: 'a small world' } } }),
    bad: withRecord({}, { roles: { humectant: { label: 'Humectant' } } }),
    at: /^roles\.yaml\/roles\/humectant/,
    says: /1 play this role; add members or say in "few" why/,
  },
  'role-has-lesson': {
    good: lessonWorld(),
    bad: withRecord({}),
    at: /^roles\.yaml\/roles\/humectant/,
    says: /no lesson explains this role/,
  },
  'role-is-well-formed': {
    good: withRecord({}, { roles: { humectant: { label: 'Humectant' } } }),
    bad: withRecord({}, { roles: { humectant: { label: 'Humectant', confused_with: ['moistener'] } } }),
    at: /^roles\.yaml\/roles\/humectant/,
    says: /confused with the unknown role moistener/,
  },
  'rule-has-decoys': {
    good: withRecord({}, { rules: [rule({})] }),
    bad: withRecord({}, { rules: [rule({ silent: casesOf(1) })] }),
    at: /^rules\/r\.yaml/,
    says: /1 decoys; at least 2/,
  },
  'saponification-fits-acids': fact(
    { ...oleic, saponification_value: 192 },
    { ...oleic, saponification_value: 250 },
    /250 mg\/g is too much for an oil of C18 acids/,
    OIL,
  ),
  'saponification-near-derived': fact(
    { ...oleic, saponification_value: [188, 194] },
    { ...oleic, saponification_value: [194, 198] },
    /worked out from its acids 190\.1: 3\.9 apart/,
    OIL,
  ),
  'selector-is-known': changed(
    { clashes: [{ with: 'class:polyol' }] },
    { clashes: [{ with: 'class:poliol' }] },
    /poliol in "class:poliol" is not known/,
    { classes: CLASSES },
  ),
  'source-is-listed': fact(
    { ph_stability: { min: 3, max: 8, source: 'S-1', access: 'read' } },
    { ph_stability: { min: 3, max: 8, source: 'S-2', access: 'read' } },
    /S-2 is in no list of sources/,
  ),
  'source-is-used': {
    good: withRecord({ facts: { ph_stability: { min: 3, max: 8, source: 'S-1', access: 'read' } } }),
    bad: withRecord({}),
    at: /^sources\/by-hand\.tsv\/S-1/,
    says: /nothing cites S-1/,
  },
  'source-suits-access': fact(
    { ph_stability: { min: 3, max: 8, source: 'memory', access: 'memory' } },
    { ph_stability: { min: 3, max: 8, source: 'memory', access: 'read' } },
    /what is known from memory is not read/,
  ),
  'stand-in-is-not-denied': changed(
    { stands_in_for: [{ for: 'betaine' }], does_not_stand_in_for: [{ for: 'betaine', when: { product: 'leave-on' } }] },
    { stands_in_for: [{ for: 'betaine' }], does_not_stand_in_for: [{ for: 'betaine' }] },
    /betaine is also in does_not_stand_in_for/,
  ),
  'stand-in-shares-charge': changed(
    { classes: ['cationic'], stands_in_for: [{ for: 'betaine' }] },
    { classes: ['anionic'], stands_in_for: [{ for: 'betaine' }] },
    /glycerin is anionic, betaine is cationic/,
    { classes: CLASSES, ingredients: [other({ classes: ['cationic'] })] },
  ),
  'stand-in-shares-role': changed(
    { ...roleOf('acid'), stands_in_for: [{ for: 'betaine' }] },
    { ...roleOf('wax'), stands_in_for: [{ for: 'betaine' }] },
    /glycerin and betaine have no role in common/,
    { ...playing, ingredients: [other(roleOf('acid'))] },
  ),
  'surfactant-states-active-matter': changed(
    { ...roleOf('surfactant'), facts: { active_percent: 30 } },
    roleOf('surfactant'),
    /a surfactant without active matter/,
    playing,
  ),
  'surfactant-states-charge': changed(
    { ...roleOf('co-surfactant'), classes: ['amphoteric'] },
    roleOf('co-surfactant'),
    /a surfactant is one of anionic/,
    { roles: { surfactant: { label: 'S' }, 'co-surfactant': { label: 'C', broader: 'surfactant' } }, classes: CLASSES },
  ),
  'translation-has-values': {
    good: { ...AROUND, german: [{ en: '{1} at {2} %', de: 'bei {2} % {1}' }] },
    bad: { ...AROUND, german: [{ en: '{1} at {2} %', de: '{1} in Menge' }] },
    at: /^languages\/de\/by-hand\.yaml\/0/,
    says: /"\{1\}" where the English has "\{1\} \{2\}"/,
  },
  'value-is-plausible': fact(
    { ph_stability: [3, 8] },
    { ph_stability: [3, 80] },
    /80 lies outside what is plausible, -1 to 15/,
  ),
  'value-suits-property': fact({ ph_stability: [3, 8] }, { ph_stability: 'wide' }, /ph_stability is of the kind range/),
  'word-is-known': changed({ solubility: 'water' }, { solubility: 'watery' }, /watery is not one of/),
  'works-where-it-keeps': fact(
    { ph_stability: [3, 8], ph_effective: [4, 6] },
    { ph_stability: [3, 8], ph_effective: [2, 6] },
    /works at pH 2 to 6 and keeps at pH 3 to 8/,
  ),
}
