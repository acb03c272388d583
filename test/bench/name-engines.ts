import MiniSearch from 'minisearch'

/** Up to five places of names, the best first. */
export type Search = (text: string) => number[]

function runsOf(text: string): string[] {
  const padded = `  ${text} `
  const out = new Set<string>()
  for (let at = 0; at + 3 <= padded.length; at++) out.add(padded.slice(at, at + 3))
  return [...out]
}

/** Runs of three letters, Dice share, ties to the shorter name: what anyone would write first. */
export function plainTrigrams(names: readonly string[]): Search {
  const lists = new Map<string, number[]>()
  const sizes = new Uint16Array(names.length)
  for (const [place, name] of names.entries()) {
    const runs = runsOf(name)
    sizes[place] = runs.length
    for (const run of runs) {
      const list = lists.get(run)
      if (list) list.push(place)
      else lists.set(run, [place])
    }
  }
  const places = new Map([...lists].map(([run, list]) => [run, Uint32Array.from(list)]))
  const shared = new Uint16Array(names.length)
  return (text) => {
    const runs = runsOf(text)
    const seen: number[] = []
    for (const run of runs) for (const place of places.get(run) ?? []) if (shared[place]!++ === 0) seen.push(place)
    const best: { place: number; dice: number }[] = []
    for (const place of seen) {
      const dice = (2 * shared[place]!) / (runs.length + sizes[place]!)
      shared[place] = 0
      if (best.length === 5 && dice <= best[4]!.dice) continue
      best.push({ place, dice })
      best.sort((a, b) => b.dice - a.dice || names[a.place]!.length - names[b.place]!.length)
      best.length = Math.min(5, best.length)
    }
    return best.map(({ place }) => place)
  }
}

/** The library's own prefix and fuzzy search, any word may match. */
export function minisearch(names: readonly string[]): Search {
  const index = new MiniSearch<{ id: number; name: string }>({
    fields: ['name'],
    searchOptions: { prefix: true, fuzzy: (term) => (term.length > 3 ? 0.2 : false), combineWith: 'OR' },
  })
  index.addAll(names.map((name, id) => ({ id, name })))
  return (text) =>
    index
      .search(text)
      .slice(0, 5)
      .map(({ id }) => Number(id))
}

const LONGEST = 512

/** Edits between a text and a whole name, and between the text and the best beginning of the name. */
function createEdits(): (text: string, name: string, cut: number) => [whole: number, beginning: number] {
  let before = new Int32Array(LONGEST)
  let last = new Int32Array(LONGEST)
  let row = new Int32Array(LONGEST)
  return (text, name, cut) => {
    const m = text.length
    for (let j = 0; j <= m; j++) last[j] = j
    let beginning = m
    for (let i = 1; i <= name.length; i++) {
      row[0] = i
      let low = i
      for (let j = 1; j <= m; j++) {
        const same = name.charCodeAt(i - 1) === text.charCodeAt(j - 1)
        let cost = same ? last[j - 1]! : 1 + Math.min(last[j - 1]!, last[j]!, row[j - 1]!)
        const swapped =
          i > 1 &&
          j > 1 &&
          name.charCodeAt(i - 1) === text.charCodeAt(j - 2) &&
          name.charCodeAt(i - 2) === text.charCodeAt(j - 1)
        if (swapped) cost = Math.min(cost, before[j - 2]! + 1)
        row[j] = cost
        if (cost < low) low = cost
      }
      if (row[m]! < beginning) beginning = row[m]!
      if (low > cut) return [Infinity, beginning]
      const free = before
      before = last
      last = row
      row = free
    }
    return [last[m]!, beginning]
  }
}

/** Every name compared, also by its beginning and with its words in order: slow, a measure of what can be reached. */
export function everyName(names: readonly string[]): Search {
  const inOrder = (text: string): string => text.split(/\s+/).sort().join(' ')
  const ordered = names.map(inOrder)
  const edits = createEdits()
  return (text) => {
    const best: { place: number; cost: number }[] = []
    const key = inOrder(text)
    for (const [place, name] of names.entries()) {
      const cut = best.length < 5 ? 12 : best[4]!.cost
      const [whole, beginning] = edits(text, name, cut)
      let cost = Math.min(whole, beginning + 0.5 + Math.min(0.4, (name.length - text.length) / 200))
      if (cost > 0.5 && Math.abs(ordered[place]!.length - key.length) <= 3)
        cost = Math.min(cost, edits(key, ordered[place]!, cut)[0] + 0.25)
      if (cost >= cut) continue
      best.push({ place, cost })
      best.sort((a, b) => a.cost - b.cost)
      best.length = Math.min(5, best.length)
    }
    return best.map(({ place }) => place)
  }
}
