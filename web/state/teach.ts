import type { LearnItem, LearnKind } from '#web/client/use-learn.ts'
import type { Bench } from './bench.ts'

/** A recipe of a class: a copy, as it was when it was taken in. */
export interface ClassRecipe {
  /** where it was taken from: `demo:…`, `kept:…` or `bench` */
  from: string
  bench: Bench
}

/** A student and the letters as they were typed. */
export interface Student {
  name: string
  typed: string
}

/** A question sheet: what it was made from makes it again while the data stay the same. */
export interface Quiz {
  id: string
  seed: number
  count: number
  /** none: all kinds */
  kinds: LearnKind[]
  /** none: about all roles */
  roles: string[]
  /** what each question was when the sheet was made; null: not made yet */
  made: string[] | null
  students: Student[]
}

/** How the last answer to a question went. */
export interface LastAnswer {
  id: string
  question: string
  kind: string
  /** role that was asked for; null: about all roles */
  role: string | null
  right: boolean
}

/** What a student's progress file says. */
export interface StudentProgress {
  name: string
  last: LastAnswer[]
}

export interface TeachClass {
  id: string
  name: string
  /** YYYY-MM-DD, or empty */
  date: string
  roles: string[]
  recipes: ClassRecipe[]
  quizzes: Quiz[]
  progress: StudentProgress[]
}

/** All classes of this device; `open` is the one that is worked on. */
export interface Classes {
  open: string | null
  classes: TeachClass[]
}

/** As many roles as one question to the server may name. */
export const MOST_ROLES = 20
/** As many questions as one sheet may have. */
export const MOST_QUESTIONS = 20
export const LARGEST_SEED = 4_294_967_295

/** Kinds that can be asked about one role; the others ask about a whole recipe. */
export const KINDS_OF_A_ROLE: readonly LearnKind[] = ['plays-role', 'holds-at-ph', 'active-matter']

/** An id of this letter that none of them has. */
export function freshId(letter: string, taken: readonly { id: string }[]): string {
  const used = taken.map(({ id }) => Number(id.slice(letter.length))).filter(Number.isInteger)
  return `${letter}${Math.max(0, ...used) + 1}`
}

export const newClass = (classes: readonly TeachClass[], name: string, date: string): TeachClass => ({
  id: freshId('c', classes),
  name,
  date,
  roles: [],
  recipes: [],
  quizzes: [],
  progress: [],
})

export const openClass = ({ open, classes }: Classes): TeachClass | null =>
  classes.find(({ id }) => id === open) ?? classes[0] ?? null

/** With one class changed. */
export const withClass = (all: Classes, id: string, how: (now: TeachClass) => TeachClass): Classes => ({
  ...all,
  classes: all.classes.map((one) => (one.id === id ? how(one) : one)),
})

/** A class taken in from a file, under an id of its own: it never takes the place of another. */
export function withImported(all: Classes, taken: TeachClass): Classes {
  const own = { ...taken, id: freshId('c', all.classes) }
  return { open: own.id, classes: [...all.classes, own] }
}

export function withoutClass(all: Classes, id: string): Classes {
  const classes = all.classes.filter((one) => one.id !== id)
  return { open: classes[0]?.id ?? null, classes }
}

export const withQuiz = (now: TeachClass, id: string, how: (quiz: Quiz) => Quiz): TeachClass => ({
  ...now,
  quizzes: now.quizzes.map((quiz) => (quiz.id === id ? how(quiz) : quiz)),
})

/** A small number for a long text (djb2). */
function hashOf(text: string): string {
  let hash = 5381
  for (const letter of text) hash = (hash * 33 + (letter.codePointAt(0) ?? 0)) % 4_294_967_296
  return hash.toString(36)
}

/** Names a question with the order of its choices: a sheet on paper is marked only against the same. */
export const printOf = ({ id, choices }: LearnItem): string =>
  `${id}-${hashOf(choices.map((one) => one.id).join('\n'))}`

/** Places of questions (from 0) that are not any more what was printed. */
export function changedSince(made: readonly string[] | null, items: readonly LearnItem[]): number[] {
  if (made === null) return []
  return made.flatMap((print, at) => {
    const item = items[at]
    return item && printOf(item) === print ? [] : [at]
  })
}
