import { ionBesideCationic } from '#engine/preservation/ion-findings.ts'
import { drawnIntoOil as drawn } from '#engine/preservation/losses.ts'
import { parabenLoss } from '#engine/preservation/paraben-loss.ts'
import { atWindowEnd } from '#engine/preservation/ph-findings.ts'
import { spectrumOpen as open } from '#engine/preservation/spectrum-findings.ts'
import { tooLittle } from '#engine/preservation/too-little.ts'
import type { Check } from './check.ts'
import { because, nameOf } from './say.ts'

export { preservingDose, preservingWork } from '#engine/preservation/work.ts'

/** rule:water-without-preservative. Under-preserved water hurts people; a rule of thumb all the same, so it warns. */
export const waterWithoutPreservative: Check = tooLittle

/** rule:spectrum-open */
export const spectrumOpen: Check = open

/** rule:drawn-into-oil */
export const drawnIntoOil: Check = drawn

/** rule:preservative-ion-and-cationic */
export const preservativeIonAndCationic: Check = ionBesideCationic

/** rule:paraben-hydrolysis */
export const parabenHydrolysis: Check = parabenLoss

/** rule:preservative-at-window-end */
export const preservativeAtWindowEnd: Check = atWindowEnd

/** rule:unproven-preservative */
export const unprovenPreservative: Check = ({ lines, world: { say } }) =>
  lines
    .filter(({ subject }) => subject.classes.has('unproven-preservative'))
    .map(({ subject }) => ({
      about: [subject.id],
      message: say`${nameOf(subject)} is sold as a preservative on weak or contradicted evidence; it is not counted as one here`,
      remedy: say`Preserve with an agent of known effect`,
      because: [because(say`weak or contradicted evidence`)],
      sources: [subject.classProvenance.source],
    }))
