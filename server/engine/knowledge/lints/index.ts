import type { Problem } from '#engine/model/records.ts'
import type { RawData } from '#engine/knowledge/raw.ts'
import { acidStatesConstant } from './acid-states-constant.ts'
import { allergenMemberIsKnown } from './allergen-member-is-known.ts'
import { blendActiveFitsParts } from './blend-active-fits-parts.ts'
import { blendAddsUp } from './blend-adds-up.ts'
import { blendPartIsKnown } from './blend-part-is-known.ts'
import { blendShowsCharge } from './blend-shows-charge.ts'
import { casHasCheckDigit } from './cas-has-check-digit.ts'
import { casIsOfName } from './cas-is-of-name.ts'
import { chargeIsOne } from './charge-is-one.ts'
import { clashMeetsBothSides } from './clash-meets-both-sides.ts'
import { classHasMember } from './class-has-member.ts'
import { classesAgree } from './classes-agree.ts'
import { dateHasForm } from './date-has-form.ts'
import { emulsifierStatesCharge } from './emulsifier-states-charge.ts'
import { emulsifierStatesHlb } from './emulsifier-states-hlb.ts'
import { fatMeltsBelowItsLimit } from './fat-melts-below-its-limit.ts'
import { formSuitsMelting } from './form-suits-melting.ts'
import { heatWindowIsOpen } from './heat-window-is-open.ts'
import { hlbNearWorkedOut } from './hlb-near-worked-out.ts'
import { idMatchesName } from './id-matches-name.ts'
import { iodineIsReachable } from './iodine-is-reachable.ts'
import { iodineNearDerived } from './iodine-near-derived.ts'
import { keyIsKnown } from './key-is-known.ts'
import { lessonIsWellFormed } from './lesson-is-well-formed.ts'
import { lessonStatesFacts } from './lesson-states-facts.ts'
import { levelIsInOrder } from './level-is-in-order.ts'
import { levelIsLawful } from './level-is-lawful.ts'
import { limitFactorHasReason } from './limit-factor-has-reason.ts'
import { limitHasMembers } from './limit-has-members.ts'
import { limitMemberIsKnown } from './limit-member-is-known.ts'
import { limitRowSaysSomething } from './limit-row-says-something.ts'
import type { Lint, Vocabulary } from './lint.ts'
import { memberPassesOwnRole } from './member-passes-own-role.ts'
import { memoryGivesWay } from './memory-gives-way.ts'
import { namesAreOwn } from './names-are-own.ts'
import { nodeIsReached } from './node-is-reached.ts'
import { preservativeStatesSpectrum } from './preservative-states-spectrum.ts'
import { preservativeStatesWindow } from './preservative-states-window.ts'
import { printedSourceHasPlace } from './printed-source-has-place.ts'
import { rangeIsOrdered } from './range-is-ordered.ts'
import { recordIsComplete } from './record-is-complete.ts'
import { retiredNamesSuccessor } from './retired-names-successor.ts'
import { roleHasFiveMembers } from './role-has-five-members.ts'
import { roleHasLesson } from './role-has-lesson.ts'
import { roleIsWellFormed } from './role-is-well-formed.ts'
import { ruleHasDecoys } from './rule-has-decoys.ts'
import { saponificationFitsAcids } from './saponification-fits-acids.ts'
import { saponificationNearDerived } from './saponification-near-derived.ts'
import { selectorIsKnown } from './selector-is-known.ts'
import { sourceIsListed } from './source-is-listed.ts'
import { sourceIsUsed } from './source-is-used.ts'
import { sourceSuitsAccess } from './source-suits-access.ts'
import { standInIsNotDenied } from './stand-in-is-not-denied.ts'
import { standInSharesCharge } from './stand-in-shares-charge.ts'
import { standInSharesRole } from './stand-in-shares-role.ts'
import { surfactantStatesActiveMatter } from './surfactant-states-active-matter.ts'
import { surfactantStatesCharge } from './surfactant-states-charge.ts'
import { translationHasValues } from './translation-has-values.ts'
import { valueIsPlausible } from './value-is-plausible.ts'
import { valueSuitsProperty } from './value-suits-property.ts'
import { wordIsKnown } from './word-is-known.ts'
import { worksWhereItKeeps } from './works-where-it-keeps.ts'

/** Faults: data that cannot be right. The server does not start on one. */
export const FAULT_LINTS: Readonly<Record<string, Lint>> = {
  'blend-adds-up': blendAddsUp,
  'blend-part-is-known': blendPartIsKnown,
  'blend-shows-charge': blendShowsCharge,
  'cas-has-check-digit': casHasCheckDigit,
  'cas-is-of-name': casIsOfName,
  'charge-is-one': chargeIsOne,
  'date-has-form': dateHasForm,
  'heat-window-is-open': heatWindowIsOpen,
  'id-matches-name': idMatchesName,
  'key-is-known': keyIsKnown,
  'lesson-is-well-formed': lessonIsWellFormed,
  'lesson-states-facts': lessonStatesFacts,
  'level-is-in-order': levelIsInOrder,
  'limit-row-says-something': limitRowSaysSomething,
  'names-are-own': namesAreOwn,
  'range-is-ordered': rangeIsOrdered,
  'retired-names-successor': retiredNamesSuccessor,
  'role-is-well-formed': roleIsWellFormed,
  'saponification-fits-acids': saponificationFitsAcids,
  'selector-is-known': selectorIsKnown,
  'source-is-listed': sourceIsListed,
  'source-suits-access': sourceSuitsAccess,
  'stand-in-is-not-denied': standInIsNotDenied,
  'stand-in-shares-charge': standInSharesCharge,
  'value-is-plausible': valueIsPlausible,
  'value-suits-property': valueSuitsProperty,
  'word-is-known': wordIsKnown,
  'works-where-it-keeps': worksWhereItKeeps,
}

/**
 * Doubts: something is missing, or probably wrong and may be right. Each is mended or excused with its reason
 * (test/graph-data/known-gaps.ts); the server starts all the same, and the whole walk of the graph is left to the tests.
 */
export const DOUBT_LINTS: Readonly<Record<string, Lint>> = {
  'acid-states-constant': acidStatesConstant,
  'allergen-member-is-known': allergenMemberIsKnown,
  'blend-active-fits-parts': blendActiveFitsParts,
  'clash-meets-both-sides': clashMeetsBothSides,
  'class-has-member': classHasMember,
  'classes-agree': classesAgree,
  'emulsifier-states-charge': emulsifierStatesCharge,
  'emulsifier-states-hlb': emulsifierStatesHlb,
  'fat-melts-below-its-limit': fatMeltsBelowItsLimit,
  'form-suits-melting': formSuitsMelting,
  'hlb-near-worked-out': hlbNearWorkedOut,
  'iodine-is-reachable': iodineIsReachable,
  'iodine-near-derived': iodineNearDerived,
  'level-is-lawful': levelIsLawful,
  'limit-factor-has-reason': limitFactorHasReason,
  'limit-has-members': limitHasMembers,
  'limit-member-is-known': limitMemberIsKnown,
  'member-passes-own-role': memberPassesOwnRole,
  'memory-gives-way': memoryGivesWay,
  'node-is-reached': nodeIsReached,
  'preservative-states-spectrum': preservativeStatesSpectrum,
  'preservative-states-window': preservativeStatesWindow,
  'printed-source-has-place': printedSourceHasPlace,
  'record-is-complete': recordIsComplete,
  'role-has-five-members': roleHasFiveMembers,
  'role-has-lesson': roleHasLesson,
  'rule-has-decoys': ruleHasDecoys,
  'saponification-near-derived': saponificationNearDerived,
  'source-is-used': sourceIsUsed,
  'stand-in-shares-role': standInSharesRole,
  'surfactant-states-active-matter': surfactantStatesActiveMatter,
  'surfactant-states-charge': surfactantStatesCharge,
  'translation-has-values': translationHasValues,
}

export const LINTS: Readonly<Record<string, Lint>> = { ...FAULT_LINTS, ...DOUBT_LINTS }

/** All faults of the data, each with file and path. */
export const lintRawRecords = (raw: RawData, vocabulary: Vocabulary): Problem[] =>
  Object.values(FAULT_LINTS).flatMap((lint) => lint(raw, vocabulary))
