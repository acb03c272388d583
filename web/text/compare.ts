import { compare as english } from './en-compare.ts'
import { german } from './german.ts'
import type { Words } from './words.ts'

export const compare: Words<typeof english> = german?.compare ?? english
