/**
 * A selector names ingredients by what they are: an id, or terms joined by `&`:
 * class:x, role:x (x or anything below it), each with an optional leading `!` for "not".
 */
export interface Selectable {
  id: string
  classes: ReadonlySet<string>
  /** every role played and all broader roles of those */
  allRoles: ReadonlySet<string>
}

interface Term {
  kind: 'class' | 'role' | 'id'
  name: string
  not: boolean
}

function parseTerm(text: string): Term {
  const not = text.startsWith('!')
  const bare = not ? text.slice(1) : text
  if (bare.startsWith('class:')) return { kind: 'class', name: bare.slice(6), not }
  if (bare.startsWith('role:')) return { kind: 'role', name: bare.slice(5), not }
  return { kind: 'id', name: bare, not }
}

/** Selectors come from the data, so there is an end of them; each is taken apart once. */
const parsed = new Map<string, Term[]>()

function termsOf(selector: string): Term[] {
  const known = parsed.get(selector)
  if (known) return known
  const terms = selector.split('&').map((term) => parseTerm(term.trim()))
  parsed.set(selector, terms)
  return terms
}

function holds({ kind, name, not }: Term, subject: Selectable): boolean {
  const is =
    kind === 'class' ? subject.classes.has(name) : kind === 'role' ? subject.allRoles.has(name) : subject.id === name
  return is !== not
}

export const matches = (selector: string, subject: Selectable): boolean =>
  termsOf(selector).every((term) => holds(term, subject))

/** Class, role and ingredient names that a selector mentions, for the lint that looks them up. */
export function namesIn(selector: string): { classes: string[]; roles: string[]; ids: string[] } {
  const named = { classes: [] as string[], roles: [] as string[], ids: [] as string[] }
  for (const { kind, name } of termsOf(selector)) {
    if (kind === 'class') named.classes.push(name)
    else if (kind === 'role') named.roles.push(name)
    else named.ids.push(name)
  }
  return named
}
