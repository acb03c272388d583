import { matches } from '#engine/knowledge/selector.ts'
import { numberOf, rangeOfProperty, usedClaim } from '#engine/graph/subject.ts'
import { linesPlayingHere } from '#engine/formula/build-context.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import type { Check, Hit } from './check.ts'
import { because, nameOf, sourcesOf } from './say.ts'

/** Below this pH a fatty acid soap turns back into fatty acid (its dispersion has a pKa of 8 to 10). */
const SOAP_LIVES_FROM_PH = 8.5

/** Below this pH hardly any of a fatty acid in an emulsion is neutralised. */
const IN_SITU_SOAP_FROM_PH = 6

/** Stearic acid and alkali make the emulsifier only when the pH is left where soap lives. */
function inSituSoapInAcid(context: FormulaContext, ph: number): Hit[] {
  const { say } = context.world
  if (ph >= IN_SITU_SOAP_FROM_PH) return []
  const others = linesPlayingHere(context, 'emulsifier').filter(
    ({ subject }) => !subject.allRoles.has('soap-emulsifier'),
  )
  return linesPlayingHere(context, 'soap-emulsifier')
    .filter(() => others.length === 0)
    .map(({ subject }) => ({
      about: [subject.id],
      message: say`${nameOf(subject)} and alkali make the emulsifier; at pH ${say.short(ph)} the soap is acid again and the cream separates`,
      remedy: say`Keep the pH above ${IN_SITU_SOAP_FROM_PH}, or add an emulsifier that bears acid`,
      because: [because(say`emulsifier by neutralisation`), because(say`pH ${say.short(ph)}`)],
      sources: ['practice'],
    }))
}

/** rule:soap-in-acid */
export const soapInAcid: Check = (context) => {
  const { lines, ph, world } = context
  const { say } = world
  if (ph === null || ph >= SOAP_LIVES_FROM_PH) return []
  return [
    ...inSituSoapInAcid(context, ph),
    ...lines
      .filter(
        ({ subject }) =>
          subject.classes.has('soap') && !subject.classes.has('metal-soap') && subject.allRoles.has('surfactant'),
      )
      .map(({ subject }) => ({
        about: [subject.id],
        message: say`${nameOf(subject)} is a soap: at pH ${say.short(ph)} it turns into fatty acid, clouds, loses its foam and separates`,
        remedy: say`Take a surfactant that lives in weak acid`,
        because: [because(say`soap lives from about pH ${SOAP_LIVES_FROM_PH}`), because(say`pH ${say.short(ph)}`)],
        sources: ['practice'],
      })),
  ]
}

const HYDROLYSIS = { below: 2.8, above: 9.5 }

/** rule:ester-hydrolysis. Slow splitting; a stated window says more and is used where there is one. */
export const esterHydrolysis: Check = ({ lines, ph, water_percent, world: { say } }) => {
  if (ph === null || water_percent < 3 || (ph >= HYDROLYSIS.below && ph <= HYDROLYSIS.above)) return []
  return lines
    .filter(
      ({ subject }) =>
        subject.classes.has('ester-bond') &&
        !rangeOfProperty(subject, 'ph_stability') &&
        subject.allRoles.has('emulsifier'),
    )
    .map(({ subject }) => ({
      about: [subject.id],
      message: say`${nameOf(subject)} has an ester bond, which splits slowly at pH ${say.short(ph)}`,
      remedy: say`Take an ether (fatty alcohol ethoxylate, alkyl glucoside) at this pH`,
      because: [because(say`ester bond`), because(say`pH ${say.short(ph)}`)],
      sources: ['practice'],
    }))
}

/** Acids, acid polymers and fatty acids: what a base is there for. */
const BINDS_BASE = [
  'role:acid',
  'role:chemical-exfoliant',
  'role:effervescent-acid',
  'role:acrylic-thickener',
  'role:soap-emulsifier',
  'class:acrylic-polymer&class:anionic',
  'class:organic-acid',
  'class:fatty-acid',
]

/** rule:base-without-partner: a neutraliser whose polymer or fatty acid is gone only drives the pH up. */
export const baseWithoutPartner: Check = (context) => {
  const { ph, lines, world } = context
  const { say } = world
  if (ph === null || ph > 8.5) return []
  const acids = lines.filter(({ subject }) => BINDS_BASE.some((selector) => matches(selector, subject)))
  if (acids.length > 0) return []
  return linesPlayingHere(context, 'base')
    .filter(
      ({ subject, share_percent }) =>
        share_percent >= 0.05 && (subject.classes.has('strong-base') || subject.allRoles.has('neutraliser')),
    )
    .map(({ subject }) => ({
      about: [subject.id],
      message: say`${nameOf(subject)} has nothing left to neutralise here; pH ${say.short(ph)} would not be reached`,
      remedy: say`Leave it out, or dose it by the pH meter`,
      because: [because(say`a base`), because(say`no acid, acid polymer or fatty acid in the formula`)],
      sources: ['practice'],
    }))
}

const DRYING_IODINE = 110
const UNPROTECTED_OIL_PERCENT = 5
/** So much of it that the product is rancid within weeks. */
const MOSTLY_DRYING_PERCENT = 30

/** rule:rancid-soon */
export const rancidSoon: Check = (context) => {
  const oils = context.lines.filter(
    ({ subject }) => (numberOf(subject, 'iodine_value') ?? 0) > DRYING_IODINE && subject.allRoles.has('emollient'),
  )
  const share_percent = oils.reduce((sum, line) => sum + line.share_percent, 0)
  const antioxidants = linesPlayingHere(context, 'antioxidant')
  const oxides = context.lines.filter(
    ({ subject, share_percent: share }) => subject.classes.has('metal-oxide') && share >= 1,
  )
  if (share_percent < UNPROTECTED_OIL_PERCENT || (antioxidants.length > 0 && oxides.length === 0)) return []
  if (linesPlayingHere(context, 'lye').length > 0) return []
  const claims = oils.flatMap(({ subject }) => usedClaim(subject, 'iodine_value') ?? [])
  const { say } = context.world
  return [
    {
      ...(share_percent >= MOSTLY_DRYING_PERCENT && { severity: 'warn' as const }),
      about: oils.map(({ subject }) => subject.id).sort(),
      message:
        oxides.length > 0
          ? say`Metal oxides (${oxides.map((line) => nameOf(line.subject)).join(', ')}) speed up the rancidity of ${oils.map((line) => nameOf(line.subject)).join(', ')}`
          : say`${say.short(share_percent)} % of oils that turn rancid soon, and no antioxidant`,
      remedy: say`Add an oil-soluble antioxidant such as tocopherol, or take a stabler oil`,
      because: claims.map((claim) => because(say`iodine value above ${DRYING_IODINE}`, claim)),
      sources: sourcesOf(...claims),
    },
  ]
}

/** rule:without-record */
export const withoutRecord: Check = ({ lines, world: { say } }) =>
  lines
    .filter(({ subject }) => subject.tier === 'inventory')
    .map(({ subject }) => ({
      about: [subject.id],
      message: say`${nameOf(subject)} is known by name only: its pH and heat windows, levels and clashes are not recorded`,
      remedy: say`Ask the supplier for the data sheet and look there`,
      because: [because(say`only the open inventory knows it`)],
      sources: ['inv'],
    }))
