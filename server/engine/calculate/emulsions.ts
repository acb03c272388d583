import { creamingRate, GRAVITY_M_PER_S2, reynoldsOfDroplet } from '#engine/chemistry/creaming-rate.ts'
import { CONCENTRATED_SLOPE, gumViscosity } from '#engine/chemistry/gum-viscosity.ts'
import { emulsifierPair, hlbOfBlend, requiredHlbOfOils } from '#engine/chemistry/hlb-blend.ts'
import type { Calculations } from './calculation.ts'
import { figure, step } from './step.ts'

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)

/** "(35 × 12 + 1 × 10) / 36" */
function meanInWords(parts: readonly (readonly [share: number, figure: number])[]): string {
  const terms = parts.map(([share, value]) => `${figure(share)} × ${figure(value)}`).join(' + ')
  return `(${terms}) / ${figure(sum(parts.map(([share]) => share)))}`
}

const NONIONIC_ONLY =
  'For nonionic emulsifiers. Soaps, lactylates, phosphates, quats, phospholipids, liquid-crystal formers and polymers are not chosen by HLB.'

type Names = 'required-hlb' | 'blend-hlb' | 'emulsifier-pair' | 'emulsifier-amount' | 'creaming-rate' | 'gum-viscosity'

/** Published span of emulsifier to oil by mass. */
const LEAST_TO_OIL = 1 / 6
const MOST_TO_OIL = 1 / 4

export const EMULSIONS: Calculations<Names> = {
  'required-hlb': {
    title: 'Which HLB do these oils ask for?',
    run({ oils }) {
      const required_hlb = requiredHlbOfOils(oils)
      const expression = meanInWords(oils.map((oil) => [oil.share_percent, oil.required_hlb] as const))
      return {
        values: { required_hlb },
        steps: [
          step(
            'Oil phase, the only part that counts',
            oils.map((oil) => figure(oil.share_percent)).join(' + '),
            sum(oils.map((oil) => oil.share_percent)),
            '%',
          ),
          step('Mean of the required HLB by mass, not rounded on the way', expression, required_hlb, '-'),
        ],
        range: `${NONIONIC_ONLY} Required values of one oil differ by one to five units between sources: make trials one unit to either side.`,
        sources: ['hlb-exercise-a', 'ocl2022-t4'],
      }
    },
  },
  'blend-hlb': {
    title: 'Which HLB has this blend of emulsifiers?',
    run({ emulsifiers }) {
      const hlb = hlbOfBlend(emulsifiers)
      const expression = meanInWords(emulsifiers.map((one) => [one.share_percent, one.hlb] as const))
      return {
        values: { hlb },
        steps: [step('Mean of the HLB by mass', expression, hlb, '-')],
        range: NONIONIC_ONLY,
        sources: ['hlb-exercise-a'],
      }
    },
  },
  'emulsifier-pair': {
    title: 'In which ratio do two emulsifiers reach a wanted HLB?',
    run({ target_hlb, high_hlb, low_hlb }) {
      const { high_percent, low_percent } = emulsifierPair(target_hlb, high_hlb, low_hlb)
      const [target, high, low] = [target_hlb, high_hlb, low_hlb].map(figure)
      return {
        values: { high_percent, low_percent },
        steps: [
          step(
            'Share of the more hydrophilic one in the pair',
            `(${target} − ${low}) / (${high} − ${low}) × 100`,
            high_percent,
            '%',
          ),
          step('The rest is the more lipophilic one', `100 − ${figure(high_percent)}`, low_percent, '%'),
          step(
            'Check: HLB of the pair',
            `(${figure(high_percent)} × ${high} + ${figure(low_percent)} × ${low}) / 100`,
            (high_percent * high_hlb + low_percent * low_hlb) / 100,
            '-',
          ),
        ],
        range: `${NONIONIC_ONLY} A target outside of the two cannot be reached. Two emulsifiers far apart in HLB part company: take a middle one in.`,
        sources: ['hlb-exercise-a', 'hlb-exercise-b'],
      }
    },
  },
  'emulsifier-amount': {
    title: 'How much nonionic emulsifier does so much oil take?',
    run({ oil_percent }) {
      const [low_percent, high_percent] = [oil_percent * LEAST_TO_OIL, oil_percent * MOST_TO_OIL]
      return {
        values: { low_percent, high_percent },
        steps: [
          step('At least one part in six parts of oil', `${figure(oil_percent)} / 6`, low_percent, '%'),
          step('At most one part in four', `${figure(oil_percent)} / 4`, high_percent, '%'),
        ],
        range:
          'A rule of design for oil-in-water creams with two or more nonionic emulsifiers, 2 to 5 % together; complete emulsifiers go by the figure of their maker.',
        sources: ['AUTHOREA'],
      }
    },
  },
  'creaming-rate': {
    title: 'How fast do droplets rise?',
    run({ droplet_um, density_gap_kg_per_m3, viscosity_mpa_s }) {
      const mm_per_day = creamingRate(droplet_um, density_gap_kg_per_m3, viscosity_mpa_s)
      const reynolds = reynoldsOfDroplet(droplet_um, mm_per_day, viscosity_mpa_s)
      const brownian = droplet_um < 1 ? '; droplets as small as these are stirred back by Brownian motion' : ''
      const fast = reynolds > 0.1 ? '; above 0.1 the relation overshoots' : ''
      return {
        values: { mm_per_day },
        steps: [
          step(
            mm_per_day < 0 ? 'Speed after Stokes; negative: the droplets sink' : 'Speed after Stokes',
            `(${figure(droplet_um)} × 1e-6)² × ${figure(density_gap_kg_per_m3)} × ${figure(GRAVITY_M_PER_S2)} / (18 × ${figure(viscosity_mpa_s)} × 1e-3)`,
            mm_per_day / 1000 / 86_400,
            'm/s',
          ),
          step('The same in a day', `${figure(mm_per_day / 1000 / 86_400)} × 1000 × 86400`, mm_per_day, 'mm/day'),
          step(
            `Reynolds number, to see whether the flow is slow enough${fast}${brownian}`,
            `1000 × v × d / η`,
            reynolds,
            '-',
          ),
        ],
        range:
          'Single round droplets in a Newtonian liquid: under about 1 % by volume (more hinder one another, and creaming is slower), above about 1 µm, Reynolds number under 0.1. Take the viscosity at rest, not that of a fast spindle; a yield value can stop creaming.',
        sources: ['stokes-emulsion-page', 'stokes-1851-mem'],
      }
    },
  },
  'gum-viscosity': {
    title: 'How thick is a gum solution at another share?',
    run({ known_percent, known_mpa_s, wanted_percent }) {
      const wanted_mpa_s = gumViscosity(known_percent, known_mpa_s, wanted_percent)
      const ratio = (wanted_percent / known_percent) ** CONCENTRATED_SLOPE
      return {
        values: { wanted_mpa_s },
        steps: [
          step(
            'How much the specific viscosity changes',
            `(${figure(wanted_percent)} / ${figure(known_percent)})^${CONCENTRATED_SLOPE}`,
            ratio,
            '-',
          ),
          step(
            'Viscosity at the new share',
            `0.89 × (1 + (${figure(known_mpa_s)} / 0.89 − 1) × ${figure(ratio)})`,
            wanted_mpa_s,
            'mPa·s',
          ),
        ],
        range:
          'Within half to twice the measured share, the same grade, salt, pH, temperature and slow shear. Random coils such as cellulose gum and hydroxyethylcellulose; guar, locust bean gum and hyaluronate rise more steeply, xanthan less. Grades of one gum differ a hundredfold: start from your own bottle.',
        sources: ['morris-1981'],
      }
    },
  },
}
