import { decimalReductionTime, logReduction } from '#engine/chemistry/microbial-counts.ts'
import type { Calculations } from './calculation.ts'
import { figure, step } from './step.ts'

const ONLY_A_LABORATORY =
  'Counts come from a laboratory and scatter by about half a log10. Only a full challenge test over 28 days on the finished product says how it stands against germs.'

export const MICROBES: Calculations<'log-reduction' | 'd-value'> = {
  'log-reduction': {
    title: 'By how many powers of ten did the germs fall?',
    run({ start_cfu_per_g, end_cfu_per_g, detection_limit_cfu_per_g }) {
      const log10_reduction = logReduction(start_cfu_per_g, end_cfu_per_g, detection_limit_cfu_per_g)
      const below = detection_limit_cfu_per_g !== undefined && end_cfu_per_g < detection_limit_cfu_per_g
      const counted = below ? detection_limit_cfu_per_g : end_cfu_per_g
      return {
        values: { log10_reduction },
        steps: [
          step(
            below
              ? 'The end lies below what the method sees: the limit is taken, and the reduction is at least this'
              : 'Reduction; negative would mean growth',
            `log10(${figure(start_cfu_per_g)} / ${figure(counted)})`,
            log10_reduction,
            'log10',
          ),
          step(
            'Share of the germs that is left, at most',
            `${figure(counted)} / ${figure(start_cfu_per_g)} × 100`,
            (100 * counted) / start_cfu_per_g,
            '%',
          ),
        ],
        range: `The neutraliser must stop the preservative, or carried-over preservative kills on the plate and the reduction reads too high. ${ONLY_A_LABORATORY}`,
        sources: ['adams-moss-p67', 'iso-11930-mem'],
      }
    },
  },
  'd-value': {
    title: 'In which time do nine of ten germs die?',
    run({ start_cfu_per_g, end_cfu_per_g, hours }) {
      const d_hours = decimalReductionTime(start_cfu_per_g, end_cfu_per_g, hours)
      const reduction = logReduction(start_cfu_per_g, end_cfu_per_g)
      return {
        values: { d_hours },
        steps: [
          step('Powers of ten', `log10(${figure(start_cfu_per_g)} / ${figure(end_cfu_per_g)})`, reduction, 'log10'),
          step('Hours a power of ten', `${figure(hours)} / ${figure(reduction)}`, d_hours, 'h'),
        ],
        range: `Log-linear dying: a lag or a tail makes two counts mislead; take several times and fit a line. An end below the detection limit gives no D-value. ${ONLY_A_LABORATORY}`,
        sources: ['adams-moss-p67', 'log-linear-2009', 'orth-1979-mem'],
      }
    },
  },
}
