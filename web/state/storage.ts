import { EMPTY } from './bench.ts'
import type { Bench } from './bench.ts'
import { startHistory } from './history.ts'
import type { History } from './history.ts'

const KEY = 'understudy-bench'
const SET_ASIDE = 'understudy-bench-unreadable'
const VERSION = 1

type Store = Pick<Storage, 'getItem' | 'setItem'>
const isObject = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null

const isLine = (value: unknown): boolean =>
  isObject(value) && typeof value['key'] === 'string' && typeof value['name'] === 'string' && 'share_percent' in value

function isBench(value: unknown): value is Bench {
  if (!isObject(value)) return false
  const sameKeys = Object.keys(EMPTY).every((key) => key in value)
  return sameKeys && Array.isArray(value['lines']) && value['lines'].every(isLine) && isObject(value['settings'])
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
