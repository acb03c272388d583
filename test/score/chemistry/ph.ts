import { calculate } from '#engine/index.ts'
import { realWorld } from '../../helpers.ts'
import { adjustCases, buffers } from '../../reference/ph/cases.ts'
import type { Buffer } from '../../reference/ph/cases.ts'
import { judge } from '../../reference/ph/judge.ts'
import { isWithin } from '../../reference/ph/judged.ts'
import type { Example } from './example.ts'

/** Contested and coarse rows are shown and not counted. */
function ofBuffer({ id, family, expected_ph, standing, mixture }: Buffer): Example {
  const input = { ...mixture, systems: [...mixture.systems], ions: [...mixture.ions] }
  const ph = calculate(realWorld(), 'buffer-ph', input).values['ph'] ?? Number.NaN
  return {
    topic: 'buffer-ph',
    id: `${id} ${family}`,
    flagged: standing !== 'use',
    expected: `pH ${expected_ph} ± 0.10`,
    got: `pH ${ph.toFixed(3)}`,
    within: Math.round(Math.abs(ph - expected_ph) * 100) / 100 <= 0.1,
  }
}

/** Published buffers and worked cases of pH adjustment beside what the program says. */
export const examples = (): Example[] => [
  ...buffers().map(ofBuffer),
  ...adjustCases().flatMap((one) =>
    judge(one).map((figure) => ({
      topic: one.topic,
      id: `${one.id} ${figure.what}`,
      flagged: figure.flagged !== undefined,
      expected: `${figure.expected} ± ${Number(figure.within.toPrecision(3))}`,
      got: String(Number(figure.got.toPrecision(4))),
      within: isWithin(figure),
    })),
  ),
]

export const phExamples = examples
