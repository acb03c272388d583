import { facts as english } from './en-facts.ts'
import { german } from './german.ts'
import type { Words } from './words.ts'

export const facts: Words<typeof english> = german?.facts ?? english
