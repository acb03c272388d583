import { FLOOR_PERCENT, profileDistance } from '#engine/chemistry/profile-distance.ts'
import type { Calculations } from './calculation.ts'
import { oilOfRecord, profileInWords } from './oil-input.ts'
import { figure, listed, step } from './step.ts'

/** Up to here a distance calls two oils near: about the nearest tenth of all pairs of recorded oils, for each figure. */
export const NEAR = { cosine: 0.06, aitchison: 2.5 }

function verdict(cosine: number, aitchison: number): string {
  const main = cosine <= NEAR.cosine
  const small = aitchison <= NEAR.aitchison
  if (main && !small) return 'They disagree: alike in the main acids, apart in the small ones'
  if (!main && small) return 'They disagree: apart in the main acids, alike in their ratios'
  return main ? 'Both call the oils near' : 'Both call the oils apart'
}

export const PROFILE_DISTANCE: Calculations<'profile-distance'> = {
  'profile-distance': {
    title: 'How far apart are two oils in their fatty acids?',
    run({ from, to }, world) {
      const [a, b] = [oilOfRecord('from', from, world), oilOfRecord('to', to, world)]
      const { cosine, aitchison, acids } = profileDistance(a.profile, b.profile)
      return {
        values: { cosine, aitchison },
        steps: [
          step(a.origin, profileInWords(a.profile), 100, '%'),
          step(b.origin, profileInWords(b.profile), 100, '%'),
          step('Acids of at least 1 % in one of the two', acids.join(', '), acids.length, 'acids'),
          step(
            'Cosine distance, ruled by the main acids: 0 the same, 1 no acid in common',
            `1 − ${figure(1 - cosine)}`,
            cosine,
            '-',
          ),
          step(
            `Aitchison distance, ruled by ratios and so by small acids; what is not detected counts as ${FLOOR_PERCENT} %`,
            '√Σ (clr a − clr b)²',
            aitchison,
            '-',
          ),
          step(
            `${verdict(cosine, aitchison)}; near is meant as a cosine distance up to ${NEAR.cosine} and an Aitchison distance up to ${NEAR.aitchison}`,
            `${figure(cosine)} and ${figure(aitchison)}`,
            cosine <= NEAR.cosine === aitchison <= NEAR.aitchison ? 1 : 0,
            '1 agree, 0 disagree',
          ),
        ],
        range:
          'Profiles scaled to 100 %. Says nothing of what is no fatty acid: colour, odour, unsaponifiable matter, cyclopropenoid acids (baobab), neoflavonoids (tamanu), allergenic protein.',
        sources: listed('greenacre-2022', 'aitchison-1986-mem', ...a.sources, ...b.sources),
      }
    },
  },
}
