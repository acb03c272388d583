import { EMPTY } from './bench.ts'
import type { Bench } from './bench.ts'
import { startHistory } from './history.ts'
import type { History } from './history.ts'

const KEY = 'understudy-bench'
const SET_ASIDE = 'understudy-bench-unreadable'
const VERSION = 1

type Store = Pick<Storage, 'getItem' | 'setItem'>
const isObject = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null

const isText = (value: unknown): boolean => typeof value === 'string'
const isFigure = (value: unknown): boolean => value === null || (typeof value === 'number' && Number.isFinite(value))
const isYesNo = (value: unknown): boolean => typeof value === 'boolean'
const isTexts = (value: unknown): boolean => Array.isArray(value) && value.every(isText)

const isLine = (value: unknown): boolean =>
  isObject(value) &&
  [value['key'], value['name'], value['typed'], value['kind']].every(isText) &&
  [value['fills'], value['aside'], value['missing']].every(isYesNo) &&
  (value['chosen'] === null || isText(value['chosen'])) &&
  isFigure(value['share_percent'])

const isOr = (value: unknown, is: (value: unknown) => boolean): boolean => value === undefined || is(value)

const isAnalysis = (value: unknown): boolean =>
  isObject(value) &&
  isText(value['ingredient']) &&
  isOr(value['complete'], isYesNo) &&
  Array.isArray(value['holds']) &&
  value['holds'].every((one) => isObject(one) && isText(one['substance']) && typeof one['percent'] === 'number')

/** What is said of the product beside the recipe; benches of before know nothing of it. */
const isFacts = (value: Record<string, unknown>): boolean =>
  isOr(value['dispensing'], isText) &&
  isOr(value['professional'], isYesNo) &&
  isOr(value['uses'], isTexts) &&
  isOr(value['analyses'], (all) => Array.isArray(all) && all.every(isAnalysis))

const isSettings = (value: unknown): boolean =>
  isObject(value) &&
  isFacts(value) &&
  isText(value['market']) &&
  isText(value['product']) &&
  isTexts(value['areas']) &&
  [value['ph'], value['hottest_c'], value['batch_g']].every(isFigure)

const isWishes = (value: unknown): boolean =>
  isObject(value) &&
  isTexts(value['without']) &&
  isText(value['shelf']) &&
  [value['cold'], value['keepPh'], value['onlyShelf']].every(isYesNo)

/** Whether this version can show it: a bench comes from storage or from a link, and neither is to be trusted. */
export function isBench(value: unknown): value is Bench {
  if (!isObject(value)) return false
  const sameKeys = Object.keys(EMPTY).every((key) => key in value)
  return (
    sameKeys &&
    isText(value['title']) &&
    isText(value['notes']) &&
    isObject(value['said']) &&
    Array.isArray(value['lines']) &&
    value['lines'].every(isLine) &&
    isSettings(value['settings']) &&
    isWishes(value['wishes'])
  )
}

function isHistory(value: unknown): value is History<Bench> {
  if (!isObject(value) || !Array.isArray(value['past']) || !Array.isArray(value['future'])) return false
  return isBench(value['present']) && [...value['past'], ...value['future']].every(isBench)
}

/** Reads the kept bench. What this version cannot read is put aside under another key, never thrown away. */
export function loadBench(store: Store): History<Bench> {
  let text: string | null = null
  try {
    text = store.getItem(KEY)
    if (text === null) return startHistory(EMPTY)
    const kept: unknown = JSON.parse(text)
    if (isObject(kept) && kept['version'] === VERSION && isHistory(kept['history'])) return kept['history']
    store.setItem(SET_ASIDE, text)
  } catch {
    if (text !== null) keepQuietly(store, SET_ASIDE, text)
  }
  return startHistory(EMPTY)
}

function keepQuietly(store: Store, key: string, text: string): boolean {
  try {
    store.setItem(key, text)
    return true
  } catch {
    return false // storage is full or forbidden: the bench works on, it just does not outlive a reload
  }
}

/** @returns false when the browser refuses to keep it */
export const saveBench = (store: Store, history: History<Bench>): boolean =>
  keepQuietly(store, KEY, JSON.stringify({ version: VERSION, history }))
