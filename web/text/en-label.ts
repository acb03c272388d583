import { upTo } from '#web/format/number.ts'

/** Digits that keep a share readable: 12.5, 0.3, 0.0025. */
const figure = (value: number): string => (value >= 1 ? upTo(value, 2) : Number(value.toPrecision(2)).toString())

const range = ({ min, max }: { min: number; max: number }): string =>
  figure(min) === figure(max) ? `${figure(max)} %` : `${figure(min)} to ${figure(max)} %`

/** Words of the label page. */
export const label = {
  open: 'Label',
  title: 'Label',
  of: (name: string) => `Label: ${name}`,
  lead: 'What the law asks on the label, as far as the recipe tells. The rest is listed as questions for you and your suppliers.',
  caution:
    'No legal advice and no approval of a label. The law of your country and your safety assessor have the last word.',
  back: 'Back to the bench',
  print: 'Print',
  empty: 'There is no recipe on the bench yet.',
  lacking: 'The label waits until the recipe can be checked:',
  loading: 'Writing the list…',
  old: 'Writing the list again…',
  placedOn: 'Day on which the goods reach the market',
  placedOnHint: 'Leave empty for the state of the law on record',
  list: {
    title: 'List of ingredients',
    text: 'List ready to copy',
    copy: 'Copy the list',
    copied: 'Copied.',
    notCopied: 'Your browser does not allow copying here. The list is marked: copy it with the keyboard.',
  },
  positions: {
    title: 'Why it stands there',
    caption: 'Each position of the list with its share, its place and what brings it',
    place: 'No.',
    name: 'Name',
    share: 'Share',
    why: 'Why there',
    from: 'From',
  },
  allergens: {
    title: 'Fragrance allergens',
    caption: 'Each allergen with its sum, what brings it and whether it is to be declared',
    none: 'Nothing in the recipe is known to bring a fragrance allergen of the list.',
    name: 'Allergen',
    sum: 'Sum',
    declare: 'Declare',
    yes: 'yes',
    no: 'no',
    from: 'From',
    why: 'Why',
    remark:
      'What essential oils bring is the range of typical lots, from memory. The sum is judged by its upper end; the analysis of your lot decides.',
  },
  warnings: {
    title: 'Words the law prescribes',
    none: 'None of the entries on record prescribes words for this recipe.',
  },
  questions: {
    title: 'What only you or the supplier can tell',
    standing: 'Asked on every label',
  },
  findings: {
    title: 'What the law says about the recipe',
    none: 'No entry on record objects. Entries that are not on record are not judged.',
    notCovered: 'Lists that were not judged',
  },
  rules: { title: 'How the list is made' },
  share: range,
} as const
