import { upTo } from '#web/format/number.ts'

/** Words of the swap sheet. */
export const sheet = {
  open: 'Swap sheet',
  title: 'Swap sheet',
  of: (name: string) => `Swap sheet: ${name}`,
  lead: 'What can stand in for each line when it is missing, one line at a time. To hand out, and to keep beside the scale.',
  back: 'Back to the bench',
  print: 'Print',
  empty: 'There is no recipe on the bench yet.',
  lacking: 'The sheet waits until the recipe can be checked:',
  progress: (done: number, all: number) => `${done} of ${all} lines worked out`,
  done: (all: number) => `All ${all} lines are worked out.`,
  caption: 'Each line with its job, its stand-ins and what happens without it',
  columns: { share: '%', line: 'Ingredient and its job here', standIns: 'Stand-ins', without: 'Without it' },
  waiting: 'Searching…',
  failed: 'No answer for this line.',
  irreplaceable: 'Cannot be replaced.',
  notKnown: 'Not known.',
  workable: 'with a difference',
  inAll: (name: string, percent: number) => `${name} is in already: ${upTo(percent, 2)} % in all`,
  openJobs: (jobs: string) => `leaves open: ${jobs}`,
  forAll: (words: string) => `Each: ${words}`,
  leaveOut: { fine: 'Can be left out.', workable: 'Can be left out, with a difference.', no: 'Cannot be left out.' },
  legend:
    'Doses are per cent of the whole recipe and worked out for one swap at a time. Best first; “with a difference” does the job, and the product changes.',
  caution:
    'A swap is a proposal, not a proof. Make a small batch first, measure its pH, watch it for some weeks. Check the label and the allergens anew. With water in it only a challenge test shows that the preservative holds. Local law and your safety assessor have the last word.',
  dangerous: 'Dangerous to handle: goggles and gloves, read its data sheet',
  prices: {
    title: 'Prices, to see what a swap costs',
    hint: 'Price of one kilogram as you buy it. Kept in this browser, the same as on the batch sheet.',
    cost: 'Cost',
    currency: 'Currency',
    dearer: (amount: string) => `${amount} dearer per kg`,
    cheaper: (amount: string) => `${amount} cheaper per kg`,
    same: 'costs the same',
    lacking: (names: string) => `cost not known: no price of ${names}`,
  },
} as const
