import type { explorerLinks as english } from './en-explorer-links.ts'
import type { Words } from './words.ts'

/** Words of the links that lead to the explorer, in German. */
export const explorerLinks: Words<typeof english> = {
  nav: 'Erkunden',
  around: 'Im Graphen erkunden',
  way: 'Diesen Weg im Graphen zeigen',
}
