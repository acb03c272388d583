export interface Refusal {
  /** path of the field it is about, as in the form; empty: the whole input */
  path: string
  says: string
  nearest: string[]
}

/** A refusal of the server, split into the field that it names first ("fats/0/ingredient: …") and what it says. */
export function refusalOf(message: string): Refusal {
  const [, at = '', rest = message] = /^([\w/]+): (.*)$/s.exec(message) ?? []
  const [says = rest, nearest = ''] = rest.split('; nearest: ')
  return { path: at.replaceAll('/', '.'), says, nearest: nearest === '' ? [] : nearest.split(', ') }
}
