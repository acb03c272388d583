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

function holds(term: string, subject: Selectable): boolean {
  if (term.startsWith('!')) return !holds(term.slice(1), subject)
  if (term.startsWith('class:')) return subject.classes.has(term.slice(6))
  if (term.startsWith('role:')) return subject.allRoles.has(term.slice(5))
  return subject.id === term
}

export const matches = (selector: string, subject: Selectable): boolean =>
  selector.split('&').every((term) => holds(term.trim(), subject))

/** Class and role names that a selector mentions, for the lint that looks them up. */
export function namesIn(selector: string): { classes: string[]; roles: string[]; ids: string[] } {
  const terms = selector.split('&').map((term) => term.trim().replace(/^!/, ''))
  return {
    classes: terms.filter((t) => t.startsWith('class:')).map((t) => t.slice(6)),
    roles: terms.filter((t) => t.startsWith('role:')).map((t) => t.slice(5)),
    ids: terms.filter((t) => !t.includes(':')),
  }
}
