import { Anchors, readFlow } from './plain-flow.ts'
import { endOfQuoted, giveUp, NotPlain, plainKey, plainValue, put, quotedValue } from './plain-scalar.ts'

/** What `plainYaml` gives for a text that it does not surely understand. */
export const NOT_PLAIN = Symbol('not plain')

interface Line {
  indent: number
  text: string
  /** the same with the spaces at its end */
  whole: string
  /** neither an empty line nor a comment stands before it */
  follows: boolean
}

/** Lines that say something; comments that fill a line are left out. */
function linesOf(text: string): Line[] {
  const lines: Line[] = []
  let follows = false
  for (const line of text.split('\n')) {
    let indent = 0
    while (line.charCodeAt(indent) === SPACE) indent++
    const says = indent < line.length && line.charCodeAt(indent) !== HASH
    const whole = line.slice(indent)
    if (says) lines.push({ indent, text: whole.trimEnd(), whole, follows })
    follows = says
  }
  return lines
}

const FLOW = new Set('{[&*')
/** Tabs, carriage returns and the like: YAML takes them otherwise than a space. */
const OTHER_SPACE = /[^\S \n]/

const SPACE = 32
const HASH = 35

/** Nothing but a comment may follow. */
function mustEnd(text: string, end: number): void {
  if (end < text.length && !/^ +(?:#|$)/.test(text.slice(end))) giveUp()
}

/** A value that begins behind its key, on one line. */
function valueOf(text: string, anchors: Anchors): unknown {
  const first = text.charAt(0)
  if (FLOW.has(first)) {
    const { value, end } = readFlow(text, anchors)
    mustEnd(text, end)
    return value
  }
  if (first === '"' || first === "'") {
    const end = endOfQuoted(text, 0)
    mustEnd(text, end)
    return quotedValue(text.slice(0, end))
  }
  const comment = text.indexOf(' #')
  const plain = comment < 0 ? text : text.slice(0, comment).trimEnd()
  if (plain.includes(': ') || plain.endsWith(':')) giveUp()
  return plainValue(plain)
}

/** Key and the rest of a line of a map; undefined when the line holds no key. */
function entryOf(text: string): { key: string; rest: string } | undefined {
  if (FLOW.has(text.charAt(0))) return undefined
  const quoted = text.startsWith('"') || text.startsWith("'")
  const end = quoted ? endOfQuoted(text, 0) : text.search(KEY_END)
  if (end < 0 || (quoted && text.slice(end).search(KEY_END) !== 0)) return undefined
  const key = quoted ? quotedValue(text.slice(0, end)) : plainKey(text.slice(0, end).trimEnd())
  const rest = text.slice(end + 1).trimStart()
  return { key, rest: rest.startsWith('#') ? '' : rest }
}

const KEY_END = /:(?: |$)/

const NO_LINES: Line[] = []

/** Lines as one; a comment would end only its own line. */
const joined = (lines: readonly string[]): string =>
  lines.some((line) => line.includes(' #')) ? giveUp() : lines.join(' ')

class BlockReader {
  private at = 0
  private readonly anchors = new Anchors()

  constructor(private readonly lines: Line[]) {}

  /** The whole text: one map or list. */
  document(): unknown {
    const [first] = this.lines
    if (!first || first.indent > 0) return giveUp()
    const value = first.text.startsWith('- ') ? this.list(0) : this.map(0)
    return this.at === this.lines.length ? value : giveUp()
  }

  /** Lines that go on from this one because they hang deeper. */
  private deeper(indent: number): Line[] {
    const start = ++this.at
    while ((this.lines[this.at]?.indent ?? 0) > indent) this.at++
    const lines = this.at === start ? NO_LINES : this.lines.slice(start, this.at)
    return lines.every(({ follows }) => follows) ? lines : giveUp()
  }

  /** A value that begins behind its key; where it goes on, an end of line counts as a space. */
  private single(text: string, indent: number): unknown {
    const more = this.deeper(indent)
    if (more.length === 0) return valueOf(text, this.anchors)
    if (text !== '>-') return valueOf(joined([text, ...more.map((line) => line.text)]), this.anchors)
    return more.every((line) => line.indent === more[0]?.indent) ? more.map((line) => line.whole).join(' ') : giveUp()
  }

  private list(indent: number): unknown[] {
    const list: unknown[] = []
    for (let line = this.lines[this.at]; line?.indent === indent; line = this.lines[this.at]) {
      if (!line.text.startsWith('- ')) break
      const text = line.text.slice(2).trimStart()
      if (entryOf(text)) {
        // The first entry of a map stands behind the hyphen, the others below it.
        const inner = indent + line.text.length - text.length
        this.lines[this.at] = { ...line, indent: inner, text }
        list.push(this.map(inner))
      } else list.push(this.single(text, indent))
    }
    return list
  }

  private map(indent: number): Record<string, unknown> {
    const map: Record<string, unknown> = {}
    for (let line = this.lines[this.at]; line?.indent === indent; line = this.lines[this.at]) {
      if (line.text.startsWith('- ')) break
      const { key, rest } = entryOf(line.text) ?? giveUp()
      put(map, key, rest === '' ? this.below(indent) : this.single(rest, indent))
    }
    return map
  }

  /** What hangs from a key that has its line to itself: null where nothing does. */
  private below(indent: number): unknown {
    this.at++
    const next = this.lines[this.at]
    if (!next || next.indent < indent) return null
    if (next.text.startsWith('- ')) return this.list(next.indent)
    if (next.indent === indent) return null
    return entryOf(next.text) ? this.map(next.indent) : this.single(next.text, indent)
  }
}

/**
 * Reads the plain part of YAML in which the records are written: block maps and lists, maps and lists in brackets,
 * plain and quoted scalars, folded text, anchors of values in brackets, comments. It understands a text wholly or not
 * at all: for whatever it is not sure of (tags, other block scalars, escapes, doubled keys) it gives NOT_PLAIN, and the
 * library is asked, which also words the faults. Through the library alone a start takes four times as long.
 */
export function plainYaml(text: string): unknown {
  if (OTHER_SPACE.test(text)) return NOT_PLAIN
  try {
    return new BlockReader(linesOf(text)).document()
  } catch (error) {
    if (error instanceof NotPlain) return NOT_PLAIN
    throw error
  }
}
