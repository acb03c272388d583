import type { Dispensing, Use } from '#engine/model/formula.ts'

/** What a maker states of a product on which a row bears, by the start of the name of the row. */
interface Stated {
  uses?: Use[]
  professional?: boolean
  dispensing?: Dispensing
}

const FRAGRANCE: Stated = { uses: ['fine-fragrance'] }
const SPRAY: Stated = { dispensing: 'aerosol' }
const BY_FACT: Record<string, Stated> = {
  'EU-V-25-': { uses: ['soap'] },
  'EU-V-32-03': { uses: ['foot-care'] },
  'EU-V-61-01': { dispensing: 'pump-spray' },
  'EU-III-2a-01': { uses: ['hair-waving'], professional: false },
  'EU-III-2a-02': { uses: ['hair-straightening'], professional: true },
  'EU-III-2a-03': { uses: ['depilatory'] },
  'EU-III-2a-04': { uses: [] },
  'EU-III-2a-05': { uses: ['eyelash-waving'], professional: true },
  'EU-III-2b-01': { uses: ['hair-waving'], professional: false },
  'EU-III-2b-02': { uses: ['hair-waving'], professional: true },
  'EU-III-3-': { professional: true },
  'EU-III-12-03': { uses: ['nail-hardener'] },
  'EU-III-14-': { uses: ['artificial-nails'], professional: true },
  'EU-III-15a-01': { uses: ['cuticle-softener'] },
  'EU-III-15a-02': { uses: ['hair-straightening'], professional: false },
  'EU-III-15a-03': { uses: ['hair-straightening'], professional: true },
  'EU-III-15a-06': { uses: ['callus-softener'] },
  'EU-III-15a-07': { uses: ['cuticle-softener'] },
  'EU-III-15b-01': { uses: ['hair-straightening'], professional: false },
  'EU-III-15c-01': { uses: ['hair-straightening'] },
  'EU-III-22-01': { uses: [] },
  'EU-III-22-02': { uses: ['oxidative-dye'] },
  'EU-III-49-': { uses: ['anti-dandruff'] },
  'EU-III-70-04': FRAGRANCE,
  'EU-III-70-09': { uses: ['wipe'] },
  'EU-III-75-01': FRAGRANCE,
  'EU-III-75-03': { uses: ['shower'] },
  'EU-III-75-05': SPRAY,
  'EU-III-75-07': { uses: ['make-up'] },
  'EU-III-75-09': SPRAY,
  'EU-III-99-01': { uses: ['oxidative-dye'] },
  'EU-III-99-02': { uses: ['hair-straightening'] },
  'EU-III-99-03': { uses: ['self-tanning'] },
  'EU-III-99-04': { uses: ['self-tanning'] },
  'EU-III-102-01': FRAGRANCE,
  'EU-III-102-02': { uses: ['eau-de-toilette'] },
  'EU-III-102-03': { uses: ['fragrance-cream'] },
  'EU-III-187-': { uses: ['oxidative-dye'] },
  'EU-III-297-01': { uses: ['oxidative-dye'] },
  'EU-III-297-02': { uses: ['non-oxidative-dye'] },
  'EU-III-297-05': { ...SPRAY, ...FRAGRANCE },
  'EU-III-321-02': { ...SPRAY, professional: false },
  'EU-III-321-03': { ...SPRAY, professional: true },
  'EU-III-324-02': { uses: ['make-up'] },
  'EU-III-324-04': SPRAY,
  'EU-III-324-05': SPRAY,
  'EU-III-324-06': { dispensing: 'pump-spray' },
  'EU-III-324-09': FRAGRANCE,
  'EU-III-380-01': FRAGRANCE,
  'EU-III-381-01': { dispensing: 'other' },
  'EU-III-381-02': SPRAY,
  'EU-III-381-08': SPRAY,
  'EU-III-381-10': { uses: ['make-up'] },
  'EU-III-381-11': { uses: ['eyeliner'] },
  'EU-III-381-12': { uses: ['eye-shadow'] },
  'EU-III-381-14': { uses: ['mascara'] },
  'US-CIR-AHA-02': { uses: ['salon-peel'] },
  'US-CIR-AHA-04': { uses: ['salon-peel'] },
  'US-CIR-AHA-01': { uses: [] },
  'US-CIR-AHA-03': { uses: [] },
  'US-CFR-700.14-': SPRAY,
  'US-CFR-700.16-': SPRAY,
  'US-CFR-333.310-': { uses: ['acne'] },
}

/** The statement for a row, or null where the row hangs on none. */
export function statedFor(fact: string): Stated | null {
  const [start] = Object.keys(BY_FACT).filter((one) => fact.startsWith(one))
  return start === undefined ? null : (BY_FACT[start] ?? null)
}
