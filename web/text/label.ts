import { label as english } from './en-label.ts'
import { german } from './german.ts'
import type { Words } from './words.ts'

export const label: Words<typeof english> = german?.label ?? english
