import { profileCosine } from './oil-constants.ts'

type Profile = Readonly<Record<string, number>>

/** Stands in for "not detected" [%]: a log ratio bears no zero. */
export const FLOOR_PERCENT = 0.05
/** Acids below this in both oils are left out [%]: traces would rule the log ratios. */
const KEPT_FROM_PERCENT = 1

/** C18:3 without suffix is alpha-linolenic acid, and so is C18:3n3; gamma-linolenic acid stays apart. */
const sameAcid = (name: string): string => name.replace(/^(C18:[34])n3$/, '$1')

/** Shares of a profile brought to 100 %, one entry an acid. */
export function scaledProfile(profile: Profile): Record<string, number> {
  const total = Object.values(profile).reduce((sum, share) => sum + share, 0)
  const scaled: Record<string, number> = {}
  if (total <= 0) return scaled
  for (const [name, share] of Object.entries(profile)) {
    const acid = sameAcid(name)
    scaled[acid] = (scaled[acid] ?? 0) + (100 * share) / total
  }
  return scaled
}

/** Acids of at least 1 % in one of two scaled profiles, by name. */
export const acidsCompared = (a: Profile, b: Profile): string[] =>
  [...new Set([...Object.keys(a), ...Object.keys(b)])]
    .filter((acid) => Math.max(a[acid] ?? 0, b[acid] ?? 0) >= KEPT_FROM_PERCENT)
    .sort()

/** Logarithms of the floored shares less their mean. */
function centredLogs(profile: Profile, acids: readonly string[]): number[] {
  const logs = acids.map((acid) => Math.log(Math.max(profile[acid] ?? 0, FLOOR_PERCENT)))
  const mean = logs.reduce((sum, log) => sum + log, 0) / logs.length
  return logs.map((log) => log - mean)
}

/**
 * Two distances between the fatty acids of two oils, each 0 for the same profile.
 *
 *   cosine = 1 − Σ a·b / (|a|·|b|),  Aitchison = |clr(a) − clr(b)|
 *
 * @returns cosine distance [-], 0 to 1, ruled by the main acids; Aitchison distance [-], ruled by ratios and so by small
 *          acids; and the acids compared
 * @throws RangeError when a profile is empty
 *
 * Both profiles are scaled to 100 %, acids under 1 % in both are left out, the rest is floored at 0.05 %. The two often
 * disagree (gamma-linolenic and palmitoleic oils, high-oleic oils against traces of C20 to C24): neither says anything of
 * what is no fatty acid. Source: greenacre-2022 (read); floor and cut are our own choice.
 */
export function profileDistance(from: Profile, to: Profile): { cosine: number; aitchison: number; acids: string[] } {
  const [a, b] = [scaledProfile(from), scaledProfile(to)]
  if (Object.keys(a).length === 0) throw new RangeError('from: expected at least one fatty acid, got none')
  if (Object.keys(b).length === 0) throw new RangeError('to: expected at least one fatty acid, got none')
  const acids = acidsCompared(a, b)
  const [logsA, logsB] = [centredLogs(a, acids), centredLogs(b, acids)]
  const aitchison = Math.sqrt(logsA.reduce((sum, log, index) => sum + (log - (logsB[index] ?? 0)) ** 2, 0))
  return { cosine: Math.max(0, 1 - profileCosine(a, b)), aitchison, acids }
}
