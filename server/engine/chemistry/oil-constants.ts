/** Fatty acids by short name: molar mass [g/mol], double bonds. `C18:1-OH` is ricinoleic acid. */
function acidOf(name: string): { molar_mass: number; doubleBonds: number } | null {
  const match = /^C(\d+):(\d+)/.exec(name)
  if (!match) return null
  const carbons = Number(match[1])
  const doubleBonds = Number(match[2])
  const hydroxyl = name.includes('-OH') ? 15.999 : 0
  const molar_mass = carbons * 12.011 + (2 * carbons - 2 * doubleBonds) * 1.008 + 2 * 15.999 + hydroxyl
  return { molar_mass, doubleBonds }
}

const IODINE_G_PER_MOL = 253.81
const KOH_MG_PER_MOL = 56106
const GLYCERYL_LESS_WATER_G_PER_MOL = 38.049 // C3H2: glycerol less three water

interface Sums {
  share: number
  moles: number
  doubleBondMoles: number
}

function sumUp(shares: Readonly<Record<string, number>>): Sums {
  const sums = { share: 0, moles: 0, doubleBondMoles: 0 }
  for (const [name, share] of Object.entries(shares)) {
    const acid = acidOf(name)
    if (!acid) continue
    sums.share += share
    sums.moles += share / acid.molar_mass
    sums.doubleBondMoles += (share / acid.molar_mass) * acid.doubleBonds
  }
  return sums
}

/**
 * Iodine value of a triglyceride from its fatty acids, each double bond taking up one I2.
 *
 * @param shares  mass share by acid, any scale (`{ 'C18:1': 70 }`)
 * @returns       g I2 per 100 g of oil, or null when no acid is known
 *
 * Holds for triglycerides, not for wax esters or hydrocarbons; ricinoleic acid reads about 3 low against Wijs.
 */
export function iodineValue(shares: Readonly<Record<string, number>>): number | null {
  const { share, moles, doubleBondMoles } = sumUp(shares)
  if (moles === 0) return null
  const oilMass = share + (moles / 3) * GLYCERYL_LESS_WATER_G_PER_MOL
  return (doubleBondMoles * IODINE_G_PER_MOL * 100) / oilMass
}

/**
 * Saponification value of a triglyceride, with the molar average of its acids (the average by weight reads
 * seven units low for lauric oils).
 *
 * @param shares  mass share by acid, any scale
 * @returns       mg KOH per g of oil, or null when no acid is known
 */
export function saponificationValue(shares: Readonly<Record<string, number>>): number | null {
  const { share, moles } = sumUp(shares)
  if (moles === 0) return null
  const oilMass = share + (moles / 3) * GLYCERYL_LESS_WATER_G_PER_MOL
  return (moles * KOH_MG_PER_MOL) / oilMass
}

/** Acids under this share are left out of a comparison unless the other oil has more of them. */
const FLOOR_PERCENT = 1

/** Cosine of the angle between two fatty-acid profiles: 1 for the same proportions, 0 for no acid in common. */
export function profileCosine(a: Readonly<Record<string, number>>, b: Readonly<Record<string, number>>): number {
  const acids = new Set([...Object.keys(a), ...Object.keys(b)])
  let dot = 0
  let squareA = 0
  let squareB = 0
  for (const acid of acids) {
    const [x, y] = [a[acid] ?? 0, b[acid] ?? 0]
    if (Math.max(x, y) < FLOOR_PERCENT) continue
    dot += x * y
    squareA += x * x
    squareB += y * y
  }
  return squareA === 0 || squareB === 0 ? 0 : dot / Math.sqrt(squareA * squareB)
}
