import { FATTY_ACID_NAME } from '#engine/model/fatty-acid-name.ts'

/** A fatty acid by its short name. */
export interface FattyAcid {
  molar_mass: number
  carbons: number
  doubleBonds: number
  hydroxyl: boolean
}

const NAME = new RegExp(FATTY_ACID_NAME)

/** Reads the short name of a fatty acid (`C18:1`, `C18:3n6`, `C18:1-OH` for ricinoleic acid); null when it is none. Molar mass from atomic weights of three decimals. */
export function readFattyAcid(name: string): FattyAcid | null {
  if (!NAME.test(name)) return null
  const [carbons = 0, doubleBonds = 0] = name.slice(1).split(/[:n-]/).map(Number)
  const hydroxyl = name.endsWith('-OH')
  const molar_mass = carbons * 12.011 + (2 * carbons - 2 * doubleBonds) * 1.008 + 2 * 15.999 + (hydroxyl ? 15.999 : 0)
  return { molar_mass, carbons, doubleBonds, hydroxyl }
}
