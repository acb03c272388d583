import { explorerLinks as english } from './en-explorer-links.ts'
import { german } from './german.ts'
import type { Words } from './words.ts'

export const explorerLinks: Words<typeof english> = german?.explorerLinks ?? english
