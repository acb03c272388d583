import { rangeOfProperty, usedClaim, wordOf } from '#engine/graph/subject.ts'
import { linesPlayingHere } from '#engine/formula/build-context.ts'
import { mainlyPlays, sharePlaying } from '#engine/formula/totals.ts'
import type { Check } from './check.ts'
import { holders } from './emulsifiers.ts'
import { because, nameOf, sourcesOf } from './say.ts'

/** rule:water-in-anhydrous: a water-soluble liquid sweats out of fats. */
export const waterInAnhydrous: Check = (context) => {
  const { say } = context.world
  if (context.form !== 'anhydrous' || holders(context).length > 0) return []
  return context.lines
    .filter(
      ({ subject, share_percent }) =>
        wordOf(subject, 'solubility') === 'water' && wordOf(subject, 'form') === 'liquid' && share_percent >= 0.3,
    )
    .map(({ subject }) => ({
      about: [subject.id],
      message: say`${nameOf(subject)} does not mix with fats and oils; it sweats out of a product without water and emulsifier`,
      remedy: say`Take an oil-soluble ingredient for the job`,
      because: [
        because(say`dissolves in water, not in oil`, usedClaim(subject, 'solubility')),
        because(say`no emulsifier in the formula`),
      ],
      sources: sourcesOf(usedClaim(subject, 'solubility') ?? { source: 'practice' }),
    }))
}

/** rule:scent-without-solubiliser */
export const scentWithoutSolubiliser: Check = (context) => {
  const { say } = context.world
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
      message: say`${floating.map((line) => nameOf(line.subject)).join(', ')} float on the water: nothing dissolves them`,
      remedy: say`Add a solubiliser, for a start as much as there is oil or scent and up to four times as much, until clear`,
      because: [because(say`dissolves in oil, not in water`), because(say`no solubiliser in the formula`)],
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
  const { say } = context.world
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
        message: say`${nameOf(subject)} bears up to ${say.short(limit)} % alcohol in the water phase; here are ${say.short(share_percent)} %`,
        remedy: say`Take a thickener that dissolves in alcohol`,
        because: [
          because(say`bears up to ${say.short(limit)} % alcohol`, claim),
          because(say`alcohol ${say.short(share_percent)} % of alcohol and water`),
        ],
        sources: sourcesOf(claim),
      },
    ]
  })
}

/** rule:liquid-in-bar: a bar sets only from dry surfactants. */
export const liquidInBar: Check = (context) => {
  const { say } = context.world
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
      message: say`${say.short(wet_percent)} % liquid or pasty surfactant: the bar stays soft`,
      remedy: say`Take the dry form of a surfactant`,
      because: wet.map(({ subject }) => {
        const [name, supplied] = [nameOf(subject), wordOf(subject, 'form')]
        return because(
          supplied === undefined ? say`${name} is not known to be dry` : say`${name} is ${say.text(supplied)}`,
        )
      }),
      sources: ['practice'],
    },
  ]
}
