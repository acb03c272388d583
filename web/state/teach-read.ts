import { isBench } from './storage.ts'
import type { Quiz, TeachClass } from './teach.ts'
import { LARGEST_SEED, MOST_QUESTIONS, MOST_ROLES } from './teach.ts'

/** What is wrong with a file, and where; `at` is empty for the file as a whole. */
export interface Fault {
  at: string
  expected:
    | 'json'
    | 'class-file'
    | 'version'
    | 'object'
    | 'text'
    | 'day'
    | 'texts'
    | 'few-roles'
    | 'list'
    | 'recipe'
    | 'seed'
    | 'count'
    | 'kinds'
    | 'yes-no'
}

type Look = (value: unknown, at: string) => Fault | null

export const CLASS_FILE = 'understudy-class'
const VERSION = 1

const KINDS = [
  'plays-role',
  'holds-at-ph',
  'active-matter',
  'find-fault',
  'rule-speaks',
  'what-if',
  'swap-here',
  'order-work',
]

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
const isText = (value: unknown): value is string => typeof value === 'string'
const isTexts = (value: unknown): value is string[] => Array.isArray(value) && value.every(isText)
const isDay = (value: unknown): boolean => value === '' || (isText(value) && /^\d{4}-\d{2}-\d{2}$/.test(value))
const isWhole = (value: unknown, least: number, most: number): boolean =>
  Number.isInteger(value) && Number(value) >= least && Number(value) <= most

const must =
  (holds: (value: unknown) => boolean, expected: Fault['expected']): Look =>
  (value, at) =>
    holds(value) ? null : { at, expected }

const listOf =
  (look: Look): Look =>
  (value, at) => {
    if (!Array.isArray(value)) return { at, expected: 'list' }
    return firstOf(value.map((one: unknown, n) => () => look(one, `${at}[${n}]`)))
  }

const fieldsOf =
  (looks: Record<string, Look>): Look =>
  (value, at) => {
    if (!isObject(value)) return { at, expected: 'object' }
    return firstOf(
      Object.entries(looks).map(
        ([key, look]) =>
          () =>
            look(value[key], `${at}.${key}`),
      ),
    )
  }

function firstOf(looks: readonly (() => Fault | null)[]): Fault | null {
  for (const look of looks) {
    const fault = look()
    if (fault) return fault
  }
  return null
}

const text = must(isText, 'text')
const roles: Look = (value, at) =>
  must(isTexts, 'texts')(value, at) ?? must((list) => (list as string[]).length <= MOST_ROLES, 'few-roles')(value, at)

const quiz = fieldsOf({
  id: text,
  seed: must((value) => isWhole(value, 0, LARGEST_SEED), 'seed'),
  count: must((value) => isWhole(value, 1, MOST_QUESTIONS), 'count'),
  kinds: must((value) => isTexts(value) && value.every((one) => KINDS.includes(one)), 'kinds'),
  roles,
  made: must((value) => value === null || isTexts(value), 'texts'),
  students: listOf(fieldsOf({ name: text, typed: text })),
})

const answered = fieldsOf({
  id: text,
  question: text,
  kind: text,
  role: must((value) => value === null || isText(value), 'text'),
  right: must((value) => typeof value === 'boolean', 'yes-no'),
})

const aClass = fieldsOf({
  id: text,
  name: text,
  date: must(isDay, 'day'),
  roles,
  recipes: listOf(fieldsOf({ from: text, bench: must(isBench, 'recipe') })),
  quizzes: listOf(quiz),
  progress: listOf(fieldsOf({ name: text, last: listOf(answered) })),
})

/** What keeps a value from being a class; null when it is one. */
export const classFault = (value: unknown): Fault | null => aClass(value, 'class')

/** Takes what the format knows and nothing else: a file may hold more. */
const tidyQuiz = ({ id, seed, count, kinds, roles: of, made, students }: Quiz): Quiz => ({
  ...{ id, seed, count, kinds, roles: of, made },
  students: students.map(({ name, typed }) => ({ name, typed })),
})

const tidy = ({ id, name, date, roles: of, recipes, quizzes, progress }: TeachClass): TeachClass => ({
  ...{ id, name, date, roles: of },
  recipes: recipes.map(({ from, bench }) => ({ from, bench })),
  quizzes: quizzes.map(tidyQuiz),
  progress: progress.map(({ name: who, last }) => ({ name: who, last })),
})

/** A class out of a file, or what is wrong with the file. */
export function readClass(words: string): { taken: TeachClass } | { fault: Fault } {
  let value: unknown
  try {
    value = JSON.parse(words)
  } catch {
    return { fault: { at: '', expected: 'json' } }
  }
  if (!isObject(value) || value['file'] !== CLASS_FILE) return { fault: { at: '', expected: 'class-file' } }
  if (value['version'] !== VERSION) return { fault: { at: 'version', expected: 'version' } }
  const fault = classFault(value['class'])
  return fault ? { fault } : { taken: tidy(value['class'] as TeachClass) }
}

/** A class as a file holds it. */
export const classFile = (one: TeachClass): string =>
  JSON.stringify({ file: CLASS_FILE, version: VERSION, class: one }, null, 1)
