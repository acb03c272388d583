import { ApiError } from './api-error.ts'

/** Most that a page holds. */
const MOST = 200

/** A query is text, and stays text up to here. @throws ApiError 400 above the most that a page holds */
export function limitOf(text: string | undefined): { limit: number } | undefined {
  if (text === undefined) return undefined
  const limit = Number(text)
  if (limit > MOST) throw new ApiError(400, 'bad-request', `limit: must be <= ${MOST}`, { at: '/limit' })
  return { limit }
}

/** Words parted by commas; undefined when there is none. */
export function wordsOf(text: string | undefined): string[] | undefined {
  const words = (text ?? '').split(',').flatMap((word) => (word.trim() === '' ? [] : [word.trim()]))
  return words.length > 0 ? words : undefined
}
