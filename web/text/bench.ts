import { bench as english } from './en-bench.ts'
import { german } from './german.ts'
import type { Words } from './words.ts'

export const bench: Words<typeof english> = german?.bench ?? english
