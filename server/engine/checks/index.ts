import { alcoholTolerance, liquidInBar, scentWithoutSolubiliser, waterInAnhydrous } from './phases.ts'
import {
  baseWithoutPartner,
  esterHydrolysis,
  lyeBalanceRule,
  rancidSoon,
  soapInAcid,
  withoutRecord,
} from './chemistry.ts'
import type { Check } from './check.ts'
import { bindingClash, chargeClash, ionClash, reactionClash } from './clashes.ts'
import { electrolyteLoad } from './electrolyte-load.ts'
import {
  conditionerWithoutBody,
  emulsifierOfWrongKind,
  emulsifierTooLittle,
  hlbOffBalance,
  oilWithoutEmulsifier,
} from './emulsifiers.ts'
import { heatTooHot } from './heat-too-hot.ts'
import { heatTooLow } from './heat-too-low.ts'
import { heatUnknown } from './heat-unknown.ts'
import { inactivated } from './inactivated.ts'
import { lawCondition, lawPh, limitByLaw, limitComing } from './law.ts'
import { levelHigh, levelLow } from './levels.ts'
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
import { phKeeps } from './ph-keeps.ts'
import { phUnknown } from './ph-unknown.ts'
import { phWorks } from './ph-works.ts'
import { preservativeWindow } from './preservative-window.ts'
import { spectrumOpen, unprovenPreservative, waterWithoutPreservative } from './preservation.ts'

/** Every rule with its function; the data of each stand in graph-data/rules under the same name. */
export const CHECKS: Readonly<Record<string, Check>> = {
  'alcohol-tolerance': alcoholTolerance,
  'allergen-source': allergenSource,
  'base-without-partner': baseWithoutPartner,
  'binding-clash': bindingClash,
  'brings-germs': bringsGerms,
  'charge-clash': chargeClash,
  'colour-list-unknown': colourListUnknown,
  'conditioner-without-body': conditionerWithoutBody,
  'electrolyte-load': electrolyteLoad,
  'emulsifier-of-wrong-kind': emulsifierOfWrongKind,
  'emulsifier-too-little': emulsifierTooLittle,
  'ester-hydrolysis': esterHydrolysis,
  'handle-with-care': handleWithCare,
  'heat-too-hot': heatTooHot,
  'heat-too-low': heatTooLow,
  'heat-unknown': heatUnknown,
  'hlb-off-balance': hlbOffBalance,
  inactivated,
  'ion-clash': ionClash,
  'irritant-here': irritantHere,
  'law-condition': lawCondition,
  'law-ph': lawPh,
  'level-high': levelHigh,
  'level-low': levelLow,
  'limit-by-law': limitByLaw,
  'limit-coming': limitComing,
  'liquid-in-bar': liquidInBar,
  'lye-balance': lyeBalanceRule,
  'need-missing': needMissing,
  'no-common-ph': noCommonPh,
  'oil-without-emulsifier': oilWithoutEmulsifier,
  'ph-keeps': phKeeps,
  'ph-unknown': phUnknown,
  'ph-works': phWorks,
  phototoxic,
  'preservative-window': preservativeWindow,
  'rancid-soon': rancidSoon,
  'reaction-clash': reactionClash,
  'scent-without-solubiliser': scentWithoutSolubiliser,
  'small-children': smallChildren,
  'soap-in-acid': soapInAcid,
  'spectrum-open': spectrumOpen,
  'unproven-preservative': unprovenPreservative,
  'water-in-anhydrous': waterInAnhydrous,
  'water-without-preservative': waterWithoutPreservative,
  'without-record': withoutRecord,
}
