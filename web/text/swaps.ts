import { swaps as english } from './en-swaps.ts'
import { german } from './german.ts'
import type { Words } from './words.ts'

export const swaps: Words<typeof english> = german?.swaps ?? english
