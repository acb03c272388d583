import { shareText, upTo } from '#web/format/number.ts'

const many = (n: number, one: string): string => `${n} ${one}${n === 1 ? '' : 's'}`

/** Words of the page that sets two recipes side by side. */
export const compare = {
  title: 'Two recipes side by side',
  pair: (one: string, other: string) => `${one} and ${other}`,
  lead: 'What differs: lines, doses, what the check says, the pH that suits, and the cost where prices are known.',
  one: 'First',
  other: 'Second',
  choose: 'Choose a recipe',
  stepBack: (name: string) => `${name}, one step before`,
  needTwo:
    'There have to be two recipes. Copy one, or take a stand-in: its recipe before the step can be compared too.',
  waits: (name: string, why: string) => `${name}: ${why}`,
  loading: 'Checking both recipes…',
  open: 'Side by side with the recipe as it is',
  asItIs: 'Recipe as it is',
  withIt: (name: string) => `Recipe with ${name}`,
  openAfter: 'Compare before and after',
  caption: 'Lines of both recipes',
  line: 'Ingredient',
  change: 'Change',
  changes: {
    added: 'new',
    removed: 'gone',
    same: 'the same',
  },
  more: (by_percent: number) => `${shareText(by_percent)} more`,
  less: (by_percent: number) => `${shareText(by_percent)} less`,
  none: 'not in it',
  summary: (added: number, removed: number, dosed: number) =>
    added + removed + dosed === 0
      ? 'Both have the same lines in the same doses.'
      : `${[
          added > 0 ? `${many(added, 'line')} new` : '',
          removed > 0 ? `${many(removed, 'line')} gone` : '',
          dosed > 0 ? `${many(dosed, 'dose')} changed` : '',
        ]
          .filter((part) => part !== '')
          .join(', ')}.`,
  findings: 'What the check says',
  gained: 'New remarks',
  lost: 'Remarks that are gone',
  noneGained: 'The check says nothing new.',
  noneLost: 'Nothing that the check said is gone.',
  kept: (n: number) => `${many(n, 'remark')} the same in both.`,
  ph: 'pH',
  phIs: 'given',
  phSuits: 'suits every line',
  phAny: 'any on record',
  phNone: 'none suits every line',
  phOpen: 'not given',
  verdict: 'Verdict',
  cost: 'Cost of a kilogram',
  costOf: (figure: string, currency: string) => `${figure}${currency === '' ? '' : ` ${currency}`}`,
  costPart: (n: number) => `of the lines with a price; ${many(n, 'line')} without one`,
  costNone: 'no line has a price',
  costWhere: 'Prices are given on the batch sheet.',
  product: 'Taken as',
  percent: (value: number) => `${upTo(value, 3)} %`,
} as const
