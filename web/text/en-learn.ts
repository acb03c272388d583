const count = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`

/** Words of the page to practise on. */
export const learn = {
  title: 'Learn',
  lead: 'Questions made of the same facts and rules that check your recipes. Each answer gives its reason and its source.',
  practise: 'Practise',
  about: (roles: string) => `Only about: ${roles}. Choose a kind below for all roles.`,
  kind: 'Ask me about',
  kinds: {
    all: 'Everything',
    'plays-role': 'Who plays a role',
    'holds-at-ph': 'Who holds at a pH',
    'active-matter': 'Doses by active matter',
    'find-fault': 'What is wrong here',
    'rule-speaks': 'What the check says',
    'what-if': 'What happens if',
    'swap-here': 'Does this swap hold',
    'order-work': 'Which step comes first',
  },
  loading: 'Making questions…',
  none: 'No questions of this kind can be made.',
  place: (at: number, of: number) => `Question ${at} of ${of}`,
  difficulty: { 1: 'easy', 2: 'middling', 3: 'hard' } as Record<number, string>,
  choices: 'Your answer',
  answer: 'Answer',
  judging: 'Looking it up…',
  right: 'Right.',
  wrong: (key: string) => `No. It is: ${key}`,
  sources: 'Sources',
  next: 'Next question',
  more: 'Another set',
  finish: 'Back to new questions',
  done: (right: number, of: number) => `${right} of ${of} right in this set.`,
  changed: 'The data have changed since this question was made, so it was taken out of your list.',
  recipe: (title: string) => `Recipe: ${title}`,
  cautions: 'Cautions',
  line: 'Ingredient',
  share: 'Share, %',
  fills: 'to 100',
  conditions: (ph: number | null, hottest_c: number | null) =>
    [ph === null ? 'no pH (no water)' : `pH ${ph}`, hottest_c === null ? null : `hottest point ${hottest_c} °C`]
      .filter((one) => one !== null)
      .join(', '),
  review: {
    title: 'Again',
    lead: 'What you answered comes up again when you are about to forget it. This is kept in this browser only.',
    due: (now: number, later: number) =>
      now + later === 0 ? 'Nothing more comes up today.' : `${count(now, 'question')} due now, ${later} later today.`,
    known: (n: number) => `${count(n, 'question')} answered so far.`,
    start: 'Go through what is due',
    save: 'Save progress to a file',
    file: 'understudy-progress.json',
    load: 'Add progress from a file',
    loaded: (n: number) => `${count(n, 'question')} in the list now.`,
    unreadable: 'This file holds no progress that can be read.',
    notKept: 'This browser does not keep your progress: it will be gone after a reload.',
  },
} as const
