import {
  AROUND,
  CLASSES,
  GLYCERIN,
  OIL,
  SEEN,
  changed,
  fact,
  oleic,
  other,
  parts,
  playing,
  roleOf,
  withRecord,
} from './small-worlds.ts'
import type { Example } from './small-worlds.ts'

/** One good and one bad world for every lint from A to K. */
export const EXAMPLES_A_TO_K: Record<string, Example> = {
  'acid-states-constant': changed(
    { ...roleOf('acid'), facts: { acid_pka: 3.1 } },
    roleOf('acid'),
    /without acid_pka/,
    playing,
  ),
  'allergen-member-is-known': {
    good: withRecord({}, { allergens: [{ label_name: 'A', members: ['glycerin'] }] }),
    bad: withRecord({}, { allergens: [{ label_name: 'A', members: ['glycerine'] }] }),
    at: /^allergens/,
    says: /A: glycerine is not known/,
  },
  'blend-active-fits-parts': changed(
    { ...parts(70, 30), facts: { active_percent: 30 } },
    { ...parts(70, 30), facts: { active_percent: 60 } },
    /states 60 to 60 %, its parts hold 0 or 30 %/,
  ),
  'blend-adds-up': changed(parts(60, 40), parts(60, 20), /80 %, expected 100/),
  'blend-part-is-known': changed(
    parts(60, 40),
    { made_of: [{ ingredient: 'moonstone', share_percent: 100 }] },
    /moonstone is not known/,
  ),
  'blend-shows-charge': changed(
    { classes: ['cationic'], ...parts(60, 40) },
    { classes: ['nonionic'], ...parts(60, 40) },
    /a part is cationic, the blend does not say so/,
    { classes: CLASSES, ingredients: [other({ classes: ['cationic'] })] },
  ),
  'cas-has-check-digit': changed({ cas: ['56-81-5'] }, { cas: ['56-81-6'] }, /56-81-6 is no CAS number/),
  'cas-is-of-name': changed({ cas: ['56-81-5'] }, { cas: ['57-55-6'] }, /the inventory gives 56-81-5 for this name/),
  'charge-is-one': changed(
    { classes: ['anionic'] },
    { classes: ['anionic', 'cationic'] },
    /is anionic and cationic at once/,
    { classes: CLASSES },
  ),
  'clash-meets-both-sides': {
    good: withRecord(
      { classes: ['polyol'] },
      { classes: CLASSES, clashes: [{ id: 'c', between: ['glycerin', 'class:polyol'] }] },
    ),
    bad: withRecord(
      { classes: ['polyol'] },
      { classes: CLASSES, clashes: [{ id: 'c', between: ['glycerin', 'class:anionic'] }] },
    ),
    at: /^clashes\.yaml/,
    says: /c: nothing is met by "class:anionic"/,
  },
  'class-has-member': {
    good: withRecord({ classes: ['polyol'] }, { classes: { polyol: { group: 'chemistry' } } }),
    bad: withRecord(
      { classes: ['polyol'] },
      { classes: { polyol: { group: 'chemistry' }, sterol: { group: 'chemistry' } } },
    ),
    at: /^classes\.yaml\/classes\/sterol/,
    says: /nothing belongs to this class/,
  },
  'classes-agree': changed(
    { classes: ['polyol', 'nonionic'], form: 'solid' },
    { classes: ['polyol', 'nonionic'], form: undefined },
    /class:nonionic and class:polyol differ on form; state its own/,
    { classes: CLASSES, about: { classes: { polyol: { form: 'liquid' }, nonionic: { form: 'solid' } } } },
  ),
  'date-has-form': changed(
    { seen: { ...SEEN, date: '2024-02-29' } },
    { seen: { ...SEEN, date: '2026-02-29' } },
    /2026-02-29 is no day/,
  ),
  'emulsifier-states-charge': changed(
    { ...roleOf('emulsifier'), classes: ['nonionic'] },
    roleOf('emulsifier'),
    /an emulsifier is one of anionic/,
    { ...playing, classes: CLASSES },
  ),
  'emulsifier-states-hlb': changed(
    { ...roleOf('co-emulsifier'), classes: ['nonionic'], facts: { hlb: 3.8 } },
    { ...roleOf('co-emulsifier'), classes: ['nonionic'] },
    /an emulsifier without HLB/,
    { ...playing, classes: CLASSES },
  ),
  'fat-melts-below-its-limit': changed(
    { ...roleOf('structurant'), facts: { melting_c: 62, heat_max_c: 90 } },
    { ...roleOf('structurant'), facts: { melting_c: 62, heat_max_c: 45 } },
    /melts at 62 C and bears only 45 C/,
    playing,
  ),
  'form-suits-melting': changed(
    { form: 'liquid', facts: { melting_c: 18 } },
    { form: 'liquid', facts: { melting_c: 61 } },
    /liquid, and melts only at 61 C/,
  ),
  'heat-window-is-open': fact(
    { heat_min_c: 70, heat_max_c: 90 },
    { heat_min_c: 70, heat_max_c: 60 },
    /bears 60 C and needs 70 C/,
  ),
  'hlb-near-worked-out': {
    good: { ...AROUND, ingredients: [{ ...GLYCERIN, id: 'steareth-20', facts: { hlb: 15.3 } }] },
    bad: { ...AROUND, ingredients: [{ ...GLYCERIN, id: 'steareth-20', facts: { hlb: 5.3 } }] },
    at: /^ingredients\/steareth-20\.yaml\/facts\/hlb/,
    says: /HLB 5\.3 to 5\.3, its oxyethylene gives 15\.3/,
  },
  'id-matches-name': changed({}, { inci: 'GLYCEROL' }, /GLYCEROL gives the id glycerol/),
  'iodine-is-reachable': fact(
    { ...oleic, iodine_value: 86 },
    { ...oleic, iodine_value: 130 },
    /130 to 130, while its acids can only give 86 to 86/,
    OIL,
  ),
  'iodine-near-derived': fact(
    { ...oleic, iodine_value: [80, 88] },
    { ...oleic, iodine_value: [70, 80] },
    /worked out from its acids 86: 6\.0 apart/,
    OIL,
  ),
  'key-is-known': changed({ cautions: ['dusty'] }, { caution: ['dusty'] }, /the key "caution" means nothing here/),
}
