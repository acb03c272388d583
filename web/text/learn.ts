import { learn as english } from './en-learn.ts'
import { german } from './german.ts'
import type { Words } from './words.ts'

export const learn: Words<typeof english> = german?.learn ?? english
