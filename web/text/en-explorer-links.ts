/** Words of the links that lead to the explorer. */
export const explorerLinks = {
  nav: 'Explore',
  around: 'Explore it in the graph',
  way: 'Show this way in the graph',
} as const
