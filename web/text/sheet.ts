import { sheet as english } from './en-sheet.ts'
import { german } from './german.ts'
import type { Words } from './words.ts'

export const sheet: Words<typeof english> = german?.sheet ?? english
