import { rangeOfProperty, usedClaim, wordOf } from '#engine/graph/subject.ts'
import { linesPlayingHere } from '#engine/formula/build-context.ts'
import { mainlyPlays, sharePlaying } from '#engine/formula/totals.ts'
import { short } from '#engine/units/round.ts'
import type { Check } from './check.ts'
import { holders } from './emulsifiers.ts'
import { because, nameOf, sourcesOf } from './say.ts'

/** rule:water-in-anhydrous: a water-soluble liquid sweats out of fats. */
export const waterInAnhydrous: Check = (context) => {
  if (context.form !== 'anhydrous' || holders(context).length > 0) return []
  return context.lines
    .filter(
      ({ subject, share_percent }) =>
        wordOf(subject, 'solubility') === 'water' && wordOf(subject, 'form') === 'liquid' && share_percent >= 0.3,
    )
    .map(({ subject }) => ({
      about: [subject.id],
      message: `${nameOf(subject)} does not mix with fats and oils; it sweats out of a product without water and emulsifier`,
      remedy: 'Take an oil-soluble ingredient for the job',
      because: [
        because('dissolves in water, not in oil', usedClaim(subject, 'solubility')),
        because('no emulsifier in the formula'),
      ],
      sources: sourcesOf(usedClaim(subject, 'solubility') ?? { source: 'practice' }),
    }))
}

/** rule:scent-without-solubiliser */
export const scentWithoutSolubiliser: Check = (context) => {
  const clear = context.form === 'solution' || context.form === 'gel'
  if (!clear || context.water_percent < 50 || holders(context).length > 0) return []
  if (sharePlaying(context.lines, 'alcohol-solvent') >= 45) return []
  const floating = context.lines.filter(
    ({ subject, share_percent }) => wordOf(subject, 'solubility') === 'oil' && share_percent >= 0.1,
  )
  if (floating.length === 0) return []
  return [
    {
      about: floating.map(({ subject }) => subject.id).sort(),
      message: `${floating.map((line) => nameOf(line.subject)).join(', ')} float on the water: nothing dissolves them`,
      remedy:
        'Add a solubiliser, for a start as much as there is oil or scent and up to four times as much, until clear',
      because: [because('dissolves in oil, not in water'), because('no solubiliser in the formula')],
      sources: ['practice'],
    },
  ]
}

/** rule:alcohol-tolerance: gums fall out and polymers lose their body in much alcohol. */
export const alcoholTolerance: Check = (context) => {
  const alcohol_percent = sharePlaying(context.lines, 'alcohol-solvent')
  const liquid_percent =
    alcohol_percent +
    context.lines.reduce(
      (sum, { subject, share_percent }) => sum + (subject.allRoles.has('water-phase') ? share_percent : 0),
      0,
    )
  if (alcohol_percent < 5 || liquid_percent === 0) return []
  const share_percent = (alcohol_percent / liquid_percent) * 100
  return context.lines.flatMap(({ subject }) => {
    const limit = rangeOfProperty(subject, 'ethanol_max_percent')?.max
    const claim = usedClaim(subject, 'ethanol_max_percent')
    // The stated figure holds for the usual neutralisers; this amine keeps an acrylic polymer dissolved in nearly all alcohol.
    const amine =
      subject.classes.has('acrylic-polymer') && context.lines.some((line) => line.subject.id === 'aminomethyl-propanol')
    if (limit === undefined || !claim || amine || share_percent <= limit) return []
    return [
      {
        about: [subject.id],
        message: `${nameOf(subject)} bears up to ${short(limit)} % alcohol in the water phase; here are ${short(share_percent)} %`,
        remedy: 'Take a thickener that dissolves in alcohol',
        because: [
          because(`bears up to ${short(limit)} % alcohol`, claim),
          because(`alcohol ${short(share_percent)} % of alcohol and water`),
        ],
        sources: sourcesOf(claim),
      },
    ]
  })
}

/** rule:liquid-in-bar: a bar sets only from dry surfactants. */
export const liquidInBar: Check = (context) => {
  if (context.form !== 'bar') return []
  const wet = context.lines.filter(
    (line) =>
      mainlyPlays(line, 'surfactant', context.world) &&
      wordOf(line.subject, 'form') !== 'powder' &&
      wordOf(line.subject, 'form') !== 'solid',
  )
  const wet_percent = wet.reduce((sum, line) => sum + line.share_percent, 0)
  if (wet_percent <= 20 || linesPlayingHere(context, 'lye').length > 0) return []
  return [
    {
      about: wet.map(({ subject }) => subject.id).sort(),
      message: `${short(wet_percent)} % liquid or pasty surfactant: the bar stays soft`,
      remedy: 'Take the dry form of a surfactant',
      because: wet.map((line) =>
        because(`${nameOf(line.subject)} is ${wordOf(line.subject, 'form') ?? 'not known to be dry'}`),
      ),
      sources: ['practice'],
    },
  ]
}
