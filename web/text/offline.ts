import { offline as english } from './en-offline.ts'
import { german } from './german.ts'
import type { Words } from './words.ts'

export const offline: Words<typeof english> = german?.offline ?? english
