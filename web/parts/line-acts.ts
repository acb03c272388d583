import type { BenchLine } from '#web/state/bench.ts'
import { editLine, moveLine, removeLine, renameLine } from '#web/state/edit.ts'
import type { Picked } from '#web/state/edit.ts'
import { rereadLine } from '#web/state/from-text.ts'
import type { BenchStore } from '#web/state/use-bench.ts'
import { text } from '#web/text/text.ts'
import { announce } from './announcer.tsx'
import { focusSoon, lineSelector } from './focus-soon.ts'

interface Of {
  line: BenchLine
  name: string
  /** place of the line, counted from 0, and how many there are */
  at: number
  count: number
  /** line to go to when this one is gone */
  neighbour: string | null
  change: BenchStore['change']
}

export type LineActs = ReturnType<typeof lineActs>

/** What can be done with a line. Each says what it did and leaves the focus where the person goes on. */
export function lineActs({ line, name, at, count, neighbour, change }: Of) {
  const { key } = line
  const toLine = () => focusSoon(lineSelector(key, '.line-name :is(a, strong), .ask button'))
  const leave = () => focusSoon(neighbour === null ? '.line-add input' : lineSelector(neighbour, '.actions .quiet'))
  return {
    move(to: number, refocus = '.grip') {
      const place = Math.max(0, Math.min(count - 1, to))
      if (place === at) return announce(text.recipe.atEnd(name, at + 1, count))
      change((bench) => moveLine(bench, key, place))
      announce(text.recipe.movedTo(name, place + 1, count))
      focusSoon(lineSelector(key, refocus))
    },
    remove() {
      change((bench) => removeLine(bench, key))
      announce(text.recipe.removed(name))
      leave()
    },
    pick(picked: Picked) {
      change((bench) => renameLine(bench, key, picked))
      announce(text.recipe.changedTo(picked.name))
      toLine()
    },
    read(typed: string) {
      change((bench) => rereadLine(bench, key, typed))
      announce(text.recipe.changedTo(typed))
      toLine()
    },
    choose(chosen: string, label: string) {
      change((bench) => editLine(bench, key, { chosen, aside: false }))
      announce(text.recipe.chosen(line.name, label))
      focusSoon('.recipe .ask li button', lineSelector(key, '.line-name a'))
    },
    setAside(aside: boolean) {
      change((bench) => editLine(bench, key, { aside, missing: false }))
      announce(aside ? text.ask.isAside : text.ask.back)
      focusSoon(lineSelector(key, '.actions .quiet'))
    },
    toNotes() {
      change((bench) => ({
        ...removeLine(bench, key),
        notes: [bench.notes, line.typed || line.name].filter((note) => note !== '').join('\n'),
      }))
      announce(text.ask.noted(line.typed || line.name))
      leave()
    },
  }
}
