import { Link } from 'wouter'
import type { BenchStore } from '#web/state/use-bench.ts'
import { compare } from '#web/text/compare.ts'
import { text } from '#web/text/text.ts'
import { Notice } from './notice.tsx'

/** A stand-in was taken over: the way back, and what it changed. */
export function TakenNotice({ words, store }: { words: string; store: BenchStore }) {
  const { recipe = '' } = store.bench
  return (
    <Notice words={words}>
      <button type="button" onClick={store.undo}>
        {text.swaps.giveBack}
      </button>
      <Link href={`/compare?${new URLSearchParams({ a: 'before', b: recipe })}`} className="button">
        {compare.openAfter}
      </Link>
    </Notice>
  )
}
