import { useEffect, useRef } from 'react'
import { isSameBench } from './bench.ts'
import type { Bench } from './bench.ts'
import { asOwn, loadRecipes } from './recipes.ts'
import { fromFragment, toFragment } from './recipe-link.ts'

const WHILE_TYPING_MS = 400

type Change = (make: (bench: Bench) => Bench) => void

/** What a link brings is a recipe of its own: it never takes the place of one that is kept on this device. */
export function fromLink(now: Bench, linked: Bench): Bench {
  return isSameBench(now, linked) ? now : asOwn(loadRecipes(window.localStorage), linked, new Date())
}

const isOwn = (state: unknown): boolean => typeof state === 'object' && state !== null && 'ownRecipe' in state

/**
 * Keeps the recipe in the address, so that a copied link carries it, and takes in the recipe of a link that is opened.
 * The bench before it is one undo away.
 */
export function useRecipeLink(bench: Bench, change: Change, page = '/', onTaken?: (before: Bench) => void): void {
  const latest = useRef(bench)
  latest.current = bench
  const own = useRef('')
  const ready = useRef(false)
  useEffect(() => {
    const take = () => {
      const { hash } = window.location
      // An address that this page wrote itself may lag behind the kept bench by a moment: after a reload the bench counts.
      if (hash === own.current || isOwn(window.history.state)) {
        ready.current = true
        own.current = hash
        return
      }
      void fromFragment(hash).then((linked) => {
        ready.current = true
        own.current = hash
        if (!linked || isSameBench(latest.current, linked)) return
        onTaken?.(latest.current)
        change((now) => fromLink(now, linked))
      })
    }
    take()
    window.addEventListener('hashchange', take)
    return () => window.removeEventListener('hashchange', take)
  }, [change, onTaken])
  useEffect(() => {
    let isOld = false
    const timer = setTimeout(() => {
      void toFragment(bench).then((fragment) => {
        const { hash, pathname } = window.location
        // A link that is just being read is not written over, nor the address of another page.
        if (isOld || fragment === null || pathname !== page || fragment === hash) return
        if (!ready.current && hash !== '') return
        own.current = fragment
        window.history.replaceState({ ownRecipe: true }, '', `${page}${fragment}`)
      })
    }, WHILE_TYPING_MS)
    return () => {
      isOld = true
      clearTimeout(timer)
    }
  }, [bench, page])
}
