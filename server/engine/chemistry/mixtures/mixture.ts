/** Kinds of surfactant of which mixtures were measured. */
export const SURFACTANT_KINDS = [
  'amphoacetate',
  'betaine',
  'citrate-ester',
  'glucoside',
  'mild-anionic',
  'short-quat',
] as const
export type SurfactantKind = (typeof SURFACTANT_KINDS)[number]

/** Cationic polymers of which mixtures were measured; the number is the charge that they carry per unit of mass, falling. */
export const MIXTURE_POLYMERS = ['polyquaternium-6', 'polyquaternium-16', 'polyquaternium-7'] as const
export type MixturePolymer = (typeof MIXTURE_POLYMERS)[number]

/** Nonionic thickeners of which mixtures were measured: a short ethoxylate alone, or with a large ester of PEG. */
export const MIXTURE_THICKENERS = ['short-ethoxylate', 'peg-ester'] as const
export type MixtureThickener = (typeof MIXTURE_THICKENERS)[number]

/** Surfactants, a cationic polymer and a nonionic thickener in water; shares in per cent of the whole, as supplied. */
export interface Mixture {
  surfactants: readonly { kind: SurfactantKind; share_percent: number }[]
  polymer: MixturePolymer
  polymer_percent: number
  thickener: MixtureThickener
  thickener_percent: number
}

/** A mixture that was made and looked at. */
export interface MeasuredMixture extends Mixture {
  /** ids of the surfactants */
  names: readonly string[]
  held: boolean
}

export const surfactantTotal = ({ surfactants }: Mixture): number =>
  surfactants.reduce((sum, { share_percent }) => sum + share_percent, 0)
