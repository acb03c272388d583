import { working as english } from './en-working.ts'
import { german } from './german.ts'
import type { Words } from './words.ts'

export const working: Words<typeof english> = german?.working ?? english
