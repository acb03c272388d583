import { records as english } from './en-records.ts'
import { german } from './german.ts'
import type { Words } from './words.ts'

export const records: Words<typeof english> = german?.records ?? english
