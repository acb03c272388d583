import { explorer as english } from './en-explorer.ts'
import { german } from './german.ts'
import type { Words } from './words.ts'

export const explorer: Words<typeof english> = german?.explorer ?? english
