import { endOfQuoted, giveUp, plainKey, plainValue, put, quotedValue } from './plain-scalar.ts'

/** What ends a plain scalar in a list or map, and what must not stand in one. */
const PLAIN_END = /[,\]}[{]|:(?=[ ,[\]{}]|$)| #/g

const isQuote = (sign: string): boolean => sign === '"' || sign === "'"

/** Values that were given a name: "&oils [a, b]" is "*oils" further down. */
export class Anchors {
  private readonly values = new Map<string, unknown>()

  /** Name of the anchor at a place of a text; empty where none stands. */
  nameAt(text: string, at: number): string {
    ANCHOR.lastIndex = at
    return ANCHOR.exec(text)?.[1] ?? ''
  }

  keep<T>(name: string, value: T): T {
    this.values.set(name, value)
    return value
  }

  get(name: string): unknown {
    return this.values.has(name) ? this.values.get(name) : giveUp()
  }
}

const ANCHOR = /[&*]([a-zA-Z0-9_-]+)(?= |$|[,\]}])/y

/** Reads maps in braces and lists in brackets that stand on one line. */
class FlowReader {
  at = 0

  constructor(
    private readonly text: string,
    private readonly anchors: Anchors,
  ) {}

  private skipSpaces(): void {
    while (this.text.charAt(this.at) === ' ') this.at++
  }

  private take(sign: string): boolean {
    this.skipSpaces()
    if (this.text.charAt(this.at) !== sign) return false
    this.at++
    return true
  }

  private quoted(): string {
    const start = this.at
    this.at = endOfQuoted(this.text, start)
    return quotedValue(this.text.slice(start, this.at))
  }

  /** Up to the sign that ends a plain scalar in a list or map. */
  private plain(): string {
    PLAIN_END.lastIndex = this.at
    if (!PLAIN_END.test(this.text)) giveUp()
    const end = PLAIN_END.lastIndex - 1
    const sign = this.text.charAt(end)
    if (sign === '[' || sign === '{' || sign === '#') giveUp()
    const plain = this.text.slice(this.at, end).trimEnd()
    this.at = end
    return plain
  }

  private key(): string {
    this.skipSpaces()
    const key = isQuote(this.text.charAt(this.at)) ? this.quoted() : plainKey(this.plain())
    if (!this.take(':') || this.text.charAt(this.at) !== ' ') giveUp()
    return key
  }

  value(): unknown {
    this.skipSpaces()
    const sign = this.text.charAt(this.at)
    if (sign === '{') return this.map()
    if (sign === '[') return this.list()
    if (sign === '&' || sign === '*') return this.anchored(sign)
    return isQuote(sign) ? this.quoted() : plainValue(this.plain())
  }

  private anchored(sign: string): unknown {
    const name = this.anchors.nameAt(this.text, this.at) || giveUp()
    this.at += name.length + 1
    return sign === '*' ? this.anchors.get(name) : this.anchors.keep(name, this.value())
  }

  private map(): Record<string, unknown> {
    const map: Record<string, unknown> = {}
    this.at++
    while (!this.take('}')) {
      put(map, this.key(), this.value())
      if (!this.take(',') && this.text.charAt(this.at) !== '}') giveUp()
    }
    return map
  }

  private list(): unknown[] {
    const list: unknown[] = []
    this.at++
    while (!this.take(']')) {
      list.push(this.value())
      if (!this.take(',') && this.text.charAt(this.at) !== ']') giveUp()
    }
    return list
  }
}

/** Value in braces or brackets, or an anchor, with which a text begins, and where it ends. */
export function readFlow(text: string, anchors: Anchors): { value: unknown; end: number } {
  const reader = new FlowReader(text, anchors)
  const value = reader.value()
  return { value, end: reader.at }
}
