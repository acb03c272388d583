import { sources as english } from './en-sources.ts'
import { german } from './german.ts'
import type { Words } from './words.ts'

export const sources: Words<typeof english> = german?.sources ?? english
