import { calculations as english } from './en-calculations.ts'
import { german } from './german.ts'
import type { Words } from './words.ts'

export const calculations: Words<typeof english> = german?.calculations ?? english
