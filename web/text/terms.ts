import { terms as english } from './en-terms.ts'
import { german } from './german.ts'
import type { Words } from './words.ts'

export const terms: Words<typeof english> = german?.terms ?? english
