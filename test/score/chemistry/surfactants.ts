import type { Example } from './example.ts'
import { near, readReference, worked } from './say.ts'

interface Check {
  id: string
  topic: string
  inputs: Record<string, number>
  expected: Record<string, number>
}

function ofMicelles({ id, inputs, expected }: Check): Example[] {
  const mixture = {
    cmc_1_mmol_per_l: inputs['cmc1_mM'] ?? Number.NaN,
    cmc_2_mmol_per_l: inputs['cmc2_mM'] ?? Number.NaN,
    mixed_cmc_mmol_per_l: inputs['cmcMeasured_mM'] ?? Number.NaN,
    mole_fraction_1: inputs['moleFraction1'] ?? Number.NaN,
  }
  const beside = (what: string, value: string, tolerance: (printed: number) => number): Example => {
    const printed = expected[what] ?? Number.NaN
    const got = worked('mixed-micelle-interaction', mixture, value)
    return near({ topic: 'mixed-micelle-interaction', id: `${id}, ${what}` }, printed, tolerance(printed), got)
  }
  return [
    beside('cmcIdeal_mM', 'ideal_cmc_mmol_per_l', (printed) => 0.03 * printed),
    beside('x1', 'micelle_fraction_1', () => 0.02),
    beside('beta', 'beta', () => 0.12),
  ]
}

/** EACN of isopropyl myristate and, as lower one by far, of a sebum of polar oils; only the order is asked. */
const EACN = { myristate: 7, sebum: 0 }

/** The more sebum, the lower the EACN and the less salt: only the order of the printed salinities is asked. */
function ofSalinity(checks: readonly Check[]): Example[] {
  const rows = checks.map(({ inputs, expected }) => {
    const sebum = (inputs['sebum_pct'] ?? Number.NaN) / 100
    const oil_eacn = sebum * EACN.sebum + (1 - sebum) * EACN.myristate
    const input = { oil_eacn, curvature: 0, temp_c: inputs['temp_C'] ?? Number.NaN }
    return {
      sebum,
      printed: expected['optimumNaCl_pct'] ?? Number.NaN,
      got: worked('optimum-salinity', input, 'salt_g_per_100_ml'),
    }
  })
  const order = (of: 'printed' | 'got'): string =>
    [...rows]
      .sort((a, b) => a[of] - b[of])
      .map(({ sebum }) => `${sebum * 100} %`)
      .join(' < ')
  const within = order('printed') === order('got')
  return [
    {
      topic: 'optimum-salinity',
      id: 'sebum in isopropyl myristate, order',
      flagged: false,
      expected: order('printed'),
      got: order('got'),
      within,
    },
  ]
}

/** Mixed micelles and optimum salinities as printed. */
export function examples(): Example[] {
  const { checks } = readReference<{ checks: Check[] }>('calculation-checks.json')
  return [
    ...checks.filter(({ topic }) => topic === 'mixed micelles of two surfactants').flatMap(ofMicelles),
    ...ofSalinity(checks.filter(({ topic }) => topic.startsWith('optimum salinity'))),
  ]
}
