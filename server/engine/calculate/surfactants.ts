import { curvatureOfBlend, deviationOfAnionic, deviationOfEthoxylate, optimumSalinity } from '#engine/chemistry/hld.ts'
import type { DeviationCoefficients } from '#engine/chemistry/hld.ts'
import { micelleInteraction } from '#engine/chemistry/mixed-micelle.ts'
import type { World } from '#engine/graph/world.ts'
import type { Calculations } from './calculation.ts'
import { figure, step } from './step.ts'

/** Typical coefficients of the table. */
function coefficients(world: World, kind: 'anionic' | 'ethoxylate'): DeviationCoefficients {
  const rows = world.knowledge.tables.get('hld') ?? []
  const value = (name: string): number => Number(rows.find((row) => row['name'] === name)?.['value'] ?? Number.NaN)
  return kind === 'anionic'
    ? { oil: value('K, anionic'), temperature: value('aT, anionic'), salt: Number.NaN }
    : { oil: value('K, nonionic'), temperature: value('cT, nonionic'), salt: value('b, nonionic, NaCl') }
}

const HLD_RANGE =
  'A guide to order and direction: the coefficients are typical ones from memory, the EACN of ester oils differs between scales (isopropyl myristate 7 or 13), no alcohol counted. Negative: oil in water; positive: water in oil; near 0: lowest tension, least stable emulsion.'
const HLD_SOURCES = ['hld-course', 'hld-mem', 'hld-review-2020']

const towards = (hld: number): string =>
  Math.abs(hld) < 0.5 ? 'near the turning point' : hld < 0 ? 'towards oil in water' : 'towards water in oil'

const attraction = (beta: number): string => {
  if (beta > 2) return 'above 2 the model itself falls into two kinds of micelle'
  if (Math.abs(beta) <= 0.5) return 'within the error of technical surfactants: no interaction'
  return beta < 0 ? 'negative: they draw together' : 'positive: they avoid each other'
}

type Names =
  'mixed-micelle-interaction' | 'curvature-of-blend' | 'hydrophilic-lipophilic-deviation' | 'optimum-salinity'

export const SURFACTANTS: Calculations<Names> = {
  'mixed-micelle-interaction': {
    title: 'Do two surfactants help each other to make micelles?',
    run(mixture) {
      const { beta, micelle_fraction_1, ideal_cmc_mmol_per_l } = micelleInteraction(mixture)
      const { cmc_1_mmol_per_l: one, cmc_2_mmol_per_l: two, mixed_cmc_mmol_per_l: mixed, mole_fraction_1: a } = mixture
      const [c1, c2, c, alpha, x] = [one, two, mixed, a, micelle_fraction_1].map(figure)
      const alone = (a * two) / (a * two + (1 - a) * one)
      return {
        values: { beta, micelle_fraction_1, ideal_cmc_mmol_per_l },
        steps: [
          step(
            'CMC if they did not care for each other',
            `1 / (${alpha} / ${c1} + (1 − ${alpha}) / ${c2})`,
            ideal_cmc_mmol_per_l,
            'mmol/L',
          ),
          step(
            'Share of the first in the micelle, in that case',
            `${alpha} × ${c2} / (${alpha} × ${c2} + (1 − ${alpha}) × ${c1})`,
            alone,
            '-',
          ),
          step(
            'Share of the first in the micelle, by trial until both sides agree',
            `x² ln(${alpha} × ${c} / (x × ${c1})) = (1 − x)² ln((1 − ${alpha}) × ${c} / ((1 − x) × ${c2}))`,
            micelle_fraction_1,
            '-',
          ),
          step(`Interaction β; ${attraction(beta)}`, `ln(${alpha} × ${c} / (${x} × ${c1})) / (1 − ${x})²`, beta, '-'),
        ],
        range:
          'Regular solution: one β for all mixtures, ideal solution of single molecules. The CMC of a technical surfactant has one meaningful digit: do not read much into a β between −0.5 and 0.5.',
        sources: ['BMC2011', 'cesio-cmc'],
      }
    },
  },
  'curvature-of-blend': {
    title: 'Which characteristic curvature has this blend of surfactants?',
    run({ parts }) {
      const curvature = curvatureOfBlend(parts)
      const moles = parts.map((part) => part.share_percent / part.molar_mass)
      const all = moles.reduce((sum, mol) => sum + mol, 0)
      return {
        values: { curvature },
        steps: [
          ...parts.map((part, index) =>
            step(
              `Mole fraction of part ${index + 1}`,
              `(${figure(part.share_percent)} / ${figure(part.molar_mass)}) / ${figure(all)}`,
              (moles[index] ?? 0) / all,
              '-',
            ),
          ),
          step(
            'Mean by moles, not by mass',
            parts.map((part, index) => `${figure((moles[index] ?? 0) / all)} × ${figure(part.curvature)}`).join(' + '),
            curvature,
            '-',
          ),
        ],
        range: 'Ideal mixing; not for anionic with cationic surfactants. Shares as active matter.',
        sources: ['hld-mixtures', 'hld-review-2020'],
      }
    },
  },
  'hydrophilic-lipophilic-deviation': {
    title: 'Which kind of emulsion do surfactant, oil, salt and warmth tend to?',
    run({ surfactant, ...here }, world) {
      const by = coefficients(world, surfactant)
      const ionic = surfactant === 'anionic'
      const hld = ionic ? deviationOfAnionic(here, by) : deviationOfEthoxylate(here, by)
      const [salt, eacn, temp] = [here.salt_g_per_100_ml, here.oil_eacn, here.temp_c].map(figure)
      const saltTerm = ionic ? Math.log(here.salt_g_per_100_ml) : by.salt * here.salt_g_per_100_ml
      const warm = (ionic ? -1 : 1) * by.temperature * (here.temp_c - 25)
      return {
        values: { hld },
        steps: [
          step('Salt', ionic ? `ln ${salt}` : `${by.salt} × ${salt}`, saltTerm, '-'),
          step('Oil', `−${by.oil} × ${eacn}`, -by.oil * here.oil_eacn, '-'),
          step('Warmth', `${ionic ? '−' : ''}${by.temperature} × (${temp} − 25)`, warm, '-'),
          step(
            `All together with the surfactant: ${towards(hld)}`,
            `${figure(saltTerm)} − ${figure(by.oil * here.oil_eacn)} + ${figure(warm)} + ${figure(here.curvature)}`,
            hld,
            '-',
          ),
        ],
        range: HLD_RANGE,
        sources: HLD_SOURCES,
      }
    },
  },
  'optimum-salinity': {
    title: 'How much salt brings an anionic surfactant between oil and water?',
    run(here, world) {
      const by = coefficients(world, 'anionic')
      const salt_g_per_100_ml = optimumSalinity(here, by)
      const exponent = by.oil * here.oil_eacn + by.temperature * (here.temp_c - 25) - here.curvature
      return {
        values: { salt_g_per_100_ml },
        steps: [
          step(
            'Exponent: oil, warmth, surfactant',
            `${by.oil} × ${figure(here.oil_eacn)} + ${by.temperature} × (${figure(here.temp_c)} − 25) − ${figure(here.curvature)}`,
            exponent,
            '-',
          ),
          step('Salt at which the deviation is 0', `exp(${figure(exponent)})`, salt_g_per_100_ml, 'g/100 mL'),
        ],
        range: `${HLD_RANGE} A more polar oil (lower EACN) needs less salt.`,
        sources: [...HLD_SOURCES, 'jcs2006-57-316'],
      }
    },
  },
}
