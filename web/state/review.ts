import { createEmptyCard, fsrs, Rating } from 'ts-fsrs'
import type { Card } from 'ts-fsrs'
import type { LearnItem } from '#web/client/use-learn.ts'

/** A card as it is kept: dates are texts. */
export type KeptCard = Omit<Card, 'due' | 'last_review'> & { due: string; last_review?: string }
export interface KeptItem {
  item: LearnItem
  card: KeptCard
}

/** What was answered in this browser and when it comes up again; by id of the item. */
export interface Progress {
  version: 1
  items: Record<string, KeptItem>
}

export const EMPTY_PROGRESS: Progress = { version: 1, items: {} }
const KEY = 'understudy-learn'
const SET_ASIDE = 'understudy-learn-unreadable'
const MOST_ITEMS = 5000

/** The published weights; without fuzz, so that one history has one schedule. */
const SCHEDULER = fsrs({ enable_fuzz: false })

function keptCard({ due, last_review, ...rest }: Card): KeptCard {
  return { ...rest, due: due.toISOString(), ...(last_review && { last_review: last_review.toISOString() }) }
}

/** The progress after an answer: right counts as good, wrong as forgotten. */
export function withAnswer(progress: Progress, item: LearnItem, isRight: boolean, now: Date): Progress {
  const before = progress.items[item.id]?.card ?? createEmptyCard<Card>(now)
  const { card } = SCHEDULER.next(before, now, isRight ? Rating.Good : Rating.Again)
  return { ...progress, items: { ...progress.items, [item.id]: { item, card: keptCard(card) } } }
}

/** Without an item that the graph does not make any more. */
export function withoutItem(progress: Progress, id: string): Progress {
  return { ...progress, items: Object.fromEntries(Object.entries(progress.items).filter(([one]) => one !== id)) }
}

const endOfDay = (now: Date): number => new Date(now.getFullYear(), now.getMonth(), now.getDate() + 1).getTime()

const dueAt = ({ card }: KeptItem): number => Date.parse(card.due)

export interface Due {
  /** to be answered now, the longest due first */
  now: LearnItem[]
  /** how many more come up before the day ends */
  laterToday: number
}

/** The queue of the day. */
export function dueOf(progress: Progress, now: Date): Due {
  const today = Object.values(progress.items)
    .filter((kept) => dueAt(kept) < endOfDay(now))
    .sort((a, b) => dueAt(a) - dueAt(b) || (a.item.id < b.item.id ? -1 : 1))
  const due = today.filter((kept) => dueAt(kept) <= now.getTime())
  return { now: due.map(({ item }) => item), laterToday: today.length - due.length }
}

const isObject = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null
const isText = (value: unknown): value is string => typeof value === 'string'
const isDate = (value: unknown): boolean => isText(value) && Number.isFinite(Date.parse(value))
const FIGURES = ['stability', 'difficulty', 'scheduled_days', 'learning_steps', 'reps', 'lapses', 'state']

const isCard = (value: unknown): boolean =>
  isObject(value) &&
  FIGURES.every((name) => Number.isFinite(value[name])) &&
  isDate(value['due']) &&
  (value['last_review'] === undefined || isDate(value['last_review']))

const isChoice = (value: unknown): boolean => isObject(value) && isText(value['id']) && isText(value['text'])

const isRecipe = (value: unknown): boolean =>
  value === undefined ||
  (isObject(value) &&
    isText(value['title']) &&
    isObject(value['names']) &&
    Array.isArray(value['cautions']) &&
    value['cautions'].every(isText) &&
    isObject(value['formula']) &&
    Array.isArray(value['formula']['lines']) &&
    value['formula']['lines'].every((line) => isObject(line) && isText(line['ingredient'])))

const isItem = (value: unknown): boolean =>
  isObject(value) &&
  [value['id'], value['kind'], value['question']].every(isText) &&
  isObject(value['ref']) &&
  Array.isArray(value['choices']) &&
  value['choices'].every(isChoice) &&
  isRecipe(value['recipe'])

/** Whether this version can go on with it: it comes from storage or from a file, and neither is to be trusted. */
export function isProgress(value: unknown): value is Progress {
  if (!isObject(value) || value['version'] !== 1 || !isObject(value['items'])) return false
  const kept = Object.entries(value['items'])
  return (
    kept.length <= MOST_ITEMS &&
    kept.every(
      ([id, one]) =>
        isObject(one) &&
        isItem(one['item']) &&
        isCard(one['card']) &&
        isObject(one['item']) &&
        one['item']['id'] === id,
    )
  )
}

/** Progress out of a file; null when it is none. */
export function readProgress(text: string): Progress | null {
  try {
    const value: unknown = JSON.parse(text)
    return isProgress(value) ? value : null
  } catch {
    return null
  }
}

const lastReview = ({ card }: KeptItem): number => (card.last_review === undefined ? 0 : Date.parse(card.last_review))

/** Both together; of an item in both the one that was answered last. */
export function together(here: Progress, other: Progress): Progress {
  const newer = Object.entries(other.items).filter(([id, kept]) => {
    const own = here.items[id]
    return own === undefined || lastReview(kept) > lastReview(own)
  })
  return { version: 1, items: { ...here.items, ...Object.fromEntries(newer) } }
}

type Store = Pick<Storage, 'getItem' | 'setItem'>

/** Reads the kept progress; what this version cannot read is put aside, never thrown away. */
export function loadProgress(store: Store): Progress {
  try {
    const text = store.getItem(KEY)
    if (text === null) return EMPTY_PROGRESS
    const progress = readProgress(text)
    if (progress === null) store.setItem(SET_ASIDE, text)
    return progress ?? EMPTY_PROGRESS
  } catch {
    return EMPTY_PROGRESS // storage is forbidden: practice works, it is just not kept
  }
}

/** @returns false when the browser refuses to keep it */
export function saveProgress(store: Store, progress: Progress): boolean {
  try {
    store.setItem(KEY, JSON.stringify(progress))
    return true
  } catch {
    return false
  }
}
