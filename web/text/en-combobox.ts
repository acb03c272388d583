/** Words of the field that suggests names. */
export const combobox = {
  list: 'Names that fit',
  searching: 'Searching…',
  none: 'No name fits. Enter keeps the text as it is.',
  failed: 'The list of names cannot be reached. Enter keeps the text as it is.',
  count: (n: number) => (n === 1 ? 'One name fits' : `${n} names fit`),
  hint: 'Arrow keys choose, Enter takes. Enter without a choice keeps the text.',
  tiers: { full: 'full record', short: 'short record', inventory: 'name and function only' },
  known: (name: string) => `“${name}”`,
} as const
