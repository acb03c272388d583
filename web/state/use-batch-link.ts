import { useEffect, useRef } from 'react'
import type { Bench } from './bench.ts'
import { fromAddress, partsOf, toAddress } from './batch-inputs.ts'
import type { BatchInputs } from './batch-inputs.ts'
import { fromFragment, toFragment } from './recipe-link.ts'
import { fromLink } from './use-recipe-link.ts'

const WHILE_TYPING_MS = 400
const PAGE = '/batch'

interface Linked {
  bench: Bench
  change: (make: (bench: Bench) => Bench) => void
  inputs: BatchInputs
  setInputs: (make: (inputs: BatchInputs) => BatchInputs) => void
}

/** Keeps recipe and batch in the address, so that a copied link or a reload brings the same sheet. Prices stay out of it. */
export function useBatchLink({ bench, change, inputs, setInputs }: Linked): void {
  const own = useRef('')
  const ready = useRef(false)
  useEffect(() => {
    const take = () => {
      const { hash } = window.location
      if (hash === '') ready.current = true // nothing to be read: what is written here is no one else's
      if (hash === own.current) return
      const { recipe, batch } = partsOf(hash)
      void fromFragment(recipe).then((linked) => {
        ready.current = true
        own.current = hash
        if (linked) change((now) => fromLink(now, linked))
        if (batch !== '') setInputs((now) => fromAddress(batch, now))
      })
    }
    take()
    window.addEventListener('hashchange', take)
    return () => window.removeEventListener('hashchange', take)
  }, [change, setInputs])
  useEffect(() => {
    let isOld = false
    const timer = setTimeout(() => {
      void toFragment(bench).then((recipe) => {
        const { hash, pathname } = window.location
        if (isOld || !recipe || pathname !== PAGE || (!ready.current && hash !== '')) return
        const address = toAddress(recipe, inputs)
        if (address === hash) return
        own.current = address
        window.history.replaceState(window.history.state, '', `${PAGE}${address}`)
      })
    }, WHILE_TYPING_MS)
    return () => {
      isOld = true
      clearTimeout(timer)
    }
  }, [bench, inputs])
}
