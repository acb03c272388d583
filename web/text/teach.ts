import { teach as english } from './en-teach.ts'
import { german } from './german.ts'
import type { Words } from './words.ts'

export const teach: Words<typeof english> = german?.teach ?? english
