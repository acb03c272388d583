import type { Classes, TeachClass } from './teach.ts'
import { classFault } from './teach-read.ts'

const KEY = 'understudy-classes'
const SET_ASIDE = 'understudy-classes-unreadable'
const VERSION = 1
const NONE: Classes = { open: null, classes: [] }

type Store = Pick<Storage, 'getItem' | 'setItem'>

const isObject = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null
const isClass = (value: unknown): value is TeachClass => classFault(value) === null

/** The classes of this device. What cannot be read is put aside, never thrown away. */
export function loadClasses(store: Store): Classes {
  let text: string | null = null
  try {
    text = store.getItem(KEY)
    if (text === null) return NONE
    const kept: unknown = JSON.parse(text)
    const list =
      isObject(kept) && kept['version'] === VERSION && Array.isArray(kept['classes']) ? kept['classes'] : null
    const classes = (list ?? []).filter(isClass)
    if (list === null || classes.length < list.length) store.setItem(SET_ASIDE, text)
    const open = isObject(kept) && typeof kept['open'] === 'string' ? kept['open'] : null
    return { open, classes }
  } catch {
    if (text !== null) keepQuietly(store, SET_ASIDE, text)
    return NONE
  }
}

function keepQuietly(store: Store, key: string, text: string): boolean {
  try {
    store.setItem(key, text)
    return true
  } catch {
    return false // storage is full or forbidden: the page works on, and says that it is not kept
  }
}

/** @returns false when the browser refuses to keep them */
export const saveClasses = (store: Store, all: Classes): boolean =>
  keepQuietly(store, KEY, JSON.stringify({ version: VERSION, ...all }))
