import type { IngredientReply } from '#web/client/use-ingredient.ts'
import { language } from '#web/text/language.ts'
import { rangeText, upTo } from './number.ts'
import { unitWords } from './term.ts'

type Claim = IngredientReply['claims'][number]

/** Link to the place where a claim stands; a claim of a shared table is looked up at the ingredient spoken of. */
export function claimHref(claim: string, about?: string): string | null {
  const [ingredient, rest] = claim.includes('#') ? claim.split('#') : [about, claim]
  return ingredient && rest && !ingredient.includes(':') ? `/ingredient/${ingredient}#${rest}` : null
}

/** Anchor of a claim on the page of its ingredient. */
export const claimAnchor = (claim: string): string => claim.slice(claim.indexOf('#') + 1)

/** A comma between figures that have one themselves would be read as part of them. */
const BETWEEN = language === 'de' ? '; ' : ', '

const words = (record: Record<string, string | number>): string =>
  Object.entries(record)
    .map(
      ([key, value]) =>
        `${key.replaceAll(/[A-Z](?=[a-z])/g, (letter) => `-${letter.toLowerCase()}`)}: ${typeof value === 'number' ? upTo(value, 3) : value}`,
    )
    .join(BETWEEN)

/** Value of a claim without its unit. */
export function claimValue(claim: Claim): string {
  if (claim.value !== undefined) return upTo(claim.value, 5)
  if (claim.is !== undefined) return claim.is
  if (claim.spectrum) return words(claim.spectrum)
  return claim.shares ? words(claim.shares) : rangeText(claim)
}

/** Value of a claim with its unit; what is told in words has none. */
export const claimText = (claim: Claim): string =>
  [claimValue(claim), claim.is === undefined ? unitWords(claim.property, claim.unit) : ''].join(' ').trim()
