import { alcoholTolerance, liquidInBar, scentWithoutSolubiliser, waterInAnhydrous } from './phases.ts'
import { baseWithoutPartner, esterHydrolysis, rancidSoon, soapInAcid, withoutRecord } from './chemistry.ts'
import { alkalineSurfactant } from './alkaline-surfactant.ts'
import type { Check } from './check.ts'
import { bindingClash, chargeClash, ionClash, reactionClash } from './clashes.ts'
import { electrolyteLoad } from './electrolyte-load.ts'
import {
  conditionerWithoutBody,
  emulsifierOfWrongKind,
  emulsifierTooLittle,
  oilWithoutEmulsifier,
} from './emulsifiers.ts'
import { gumInAcid, gumNotWetted, gumsSetTogether } from './gums.ts'
import { heatTooHot } from './heat-too-hot.ts'
import { heatTooLow } from './heat-too-low.ts'
import { heatUnknown } from './heat-unknown.ts'
import { hlbOffBalance } from './hlb-balance.ts'
import { inactivated } from './inactivated.ts'
import { colourNotListed } from './law-colours.ts'
import { lawCondition } from './law-condition.ts'
import { lawNotCovered } from './law-not-covered.ts'
import { limitByContent, limitComing } from './law-ahead.ts'
import { lawPh, limitByLaw, limitByOpinion } from './law.ts'
import { levelHigh, levelLow } from './levels.ts'
import { mixtureMaySeparate } from './mixture-may-separate.ts'
import { lyeBalanceRule } from './lye-balance.ts'
import { needMissing } from './need-missing.ts'
import {
  allergenSource,
  colourListUnknown,
  bringsGerms,
  handleWithCare,
  irritantHere,
  phototoxic,
  smallChildren,
} from './people.ts'
import { noCommonPh } from './no-common-ph.ts'
import { oilsDoNotMix } from './oils-do-not-mix.ts'
import { phKeeps } from './ph-keeps.ts'
import { phUnknown } from './ph-unknown.ts'
import { phWorks } from './ph-works.ts'
import { preservativeWindow } from './preservative-window.ts'
import { saltResponse } from './salt-response.ts'
import {
  drawnIntoOil,
  parabenHydrolysis,
  preservativeAtWindowEnd,
  preservativeIonAndCationic,
  spectrumOpen,
  unprovenPreservative,
  waterWithoutPreservative,
} from './preservation.ts'

/** Every rule with its function; the data of each stand in graph-data/rules under the same name. */
export const CHECKS: Readonly<Record<string, Check>> = {
  'alcohol-tolerance': alcoholTolerance,
  'alkaline-surfactant': alkalineSurfactant,
  'allergen-source': allergenSource,
  'base-without-partner': baseWithoutPartner,
  'binding-clash': bindingClash,
  'brings-germs': bringsGerms,
  'charge-clash': chargeClash,
  'colour-list-unknown': colourListUnknown,
  'colour-not-listed': colourNotListed,
  'conditioner-without-body': conditionerWithoutBody,
  'drawn-into-oil': drawnIntoOil,
  'electrolyte-load': electrolyteLoad,
  'emulsifier-of-wrong-kind': emulsifierOfWrongKind,
  'emulsifier-too-little': emulsifierTooLittle,
  'ester-hydrolysis': esterHydrolysis,
  'gum-in-acid': gumInAcid,
  'gum-not-wetted': gumNotWetted,
  'gums-set-together': gumsSetTogether,
  'handle-with-care': handleWithCare,
  'heat-too-hot': heatTooHot,
  'heat-too-low': heatTooLow,
  'heat-unknown': heatUnknown,
  'hlb-off-balance': hlbOffBalance,
  inactivated,
  'ion-clash': ionClash,
  'irritant-here': irritantHere,
  'law-condition': lawCondition,
  'law-not-covered': lawNotCovered,
  'law-ph': lawPh,
  'level-high': levelHigh,
  'level-low': levelLow,
  'limit-by-content': limitByContent,
  'limit-by-law': limitByLaw,
  'limit-by-opinion': limitByOpinion,
  'limit-coming': limitComing,
  'liquid-in-bar': liquidInBar,
  'lye-balance': lyeBalanceRule,
  'mixture-may-separate': mixtureMaySeparate,
  'need-missing': needMissing,
  'no-common-ph': noCommonPh,
  'oil-without-emulsifier': oilWithoutEmulsifier,
  'oils-do-not-mix': oilsDoNotMix,
  'paraben-hydrolysis': parabenHydrolysis,
  'ph-keeps': phKeeps,
  'ph-unknown': phUnknown,
  'ph-works': phWorks,
  phototoxic,
  'preservative-at-window-end': preservativeAtWindowEnd,
  'preservative-ion-and-cationic': preservativeIonAndCationic,
  'preservative-window': preservativeWindow,
  'rancid-soon': rancidSoon,
  'reaction-clash': reactionClash,
  'salt-response': saltResponse,
  'scent-without-solubiliser': scentWithoutSolubiliser,
  'small-children': smallChildren,
  'soap-in-acid': soapInAcid,
  'spectrum-open': spectrumOpen,
  'unproven-preservative': unprovenPreservative,
  'water-in-anhydrous': waterInAnhydrous,
  'water-without-preservative': waterWithoutPreservative,
  'without-record': withoutRecord,
}
