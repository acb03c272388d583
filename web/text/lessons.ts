import { lessons as english } from './en-lessons.ts'
import { german } from './german.ts'
import type { Words } from './words.ts'

export const lessons: Words<typeof english> = german?.lessons ?? english
