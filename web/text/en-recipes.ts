import { upTo } from '#web/format/number.ts'

const lines = (n: number): string => (n === 1 ? '1 line' : `${n} lines`)

/** Words of the list of recipes. */
export const recipes = {
  title: 'My recipes',
  lead: 'They are kept in this browser, on this device, and go nowhere else. A link in the address carries a whole recipe.',
  empty: 'There is no recipe here yet. What you put on the bench is kept by itself.',
  toBench: 'To the bench',
  open: 'Open',
  openOf: (name: string) => `Open ${name}`,
  copy: 'Copy',
  copyOf: (name: string) => `Copy ${name}`,
  copyName: (name: string) => `${name} (copy)`,
  copied: (name: string) => `${name} was made.`,
  rename: 'Rename',
  renameOf: (name: string) => `Rename ${name}`,
  renamed: (name: string) => `The recipe is called ${name} now.`,
  newName: 'New name',
  keep: 'Keep the name',
  remove: 'Remove',
  removeOf: (name: string) => `Remove ${name}`,
  removed: (name: string) => `${name} was removed.`,
  putBack: 'Put it back',
  isBack: (name: string) => `${name} is back.`,
  isOpen: 'on the bench',
  changed: (when: string) => `changed ${when}`,
  size: (n: number, total_g: number | null) => (total_g === null ? lines(n) : `${lines(n)}, ${upTo(total_g, 1)} g`),
  newRecipe: 'New recipe',
  startedNew: 'The bench is empty for a new recipe. The one before stays in your list.',
  compare: 'Compare two',
  full: 'This browser refuses to keep more. Remove a recipe, or copy the address of one to keep it elsewhere.',
  fromLink: 'This recipe came with the link. It is kept beside your own.',
  backToOwn: (name: string) => `Back to ${name}`,
  list: 'Recipes on this device',
  noPlace: 'Your recipes',
} as const
