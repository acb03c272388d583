import { combobox as english } from './en-combobox.ts'
import { german } from './german.ts'
import type { Words } from './words.ts'

export const combobox: Words<typeof english> = german?.combobox ?? english
