import { batch as english } from './en-batch.ts'
import { german } from './german.ts'
import type { Words } from './words.ts'

export const batch: Words<typeof english> = german?.batch ?? english
