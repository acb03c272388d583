import { whatIf as english } from './en-what-if.ts'
import { german } from './german.ts'
import type { Words } from './words.ts'

export const whatIf: Words<typeof english> = german?.whatIf ?? english
