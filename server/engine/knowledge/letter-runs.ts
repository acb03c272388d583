/** Names by the runs of three letters they hold: who shares the most with a text. */
export interface LetterRuns {
  /** places of the texts that share the most runs with this one, in no order; a few more than `most` where many tie */
  sharing(text: string, most: number): number[]
}

/** Letters, digits and the mark for an end. */
const SIGNS = 37
const RUNS = SIGNS ** 3
/** Steps of likeness by which candidates are told apart. */
const GRADES = 256
/**
 * Places looked at before the commoner runs are left out. Measured over the whole inventory with two typing errors a
 * name: with four thousand five names in a thousand are lost, with eight thousand one.
 */
const MOST_PLACES = 8000
/** Runs that are looked at however common they are: short names have no rare ones. */
const LEAST_RUNS = 4

const SIGN_OF = new Uint8Array(128)
for (let letter = 97; letter <= 122; letter++) SIGN_OF[letter] = letter - 96
for (let digit = 48; digit <= 57; digit++) SIGN_OF[digit] = digit - 21

const signAt = (text: string, at: number): number => SIGN_OF[text.charCodeAt(at)] ?? 0

/** Codes of all runs of three letters, ends marked, each once. */
function runsOf(text: string): number[] {
  const padded = `  ${text} `
  const out = new Set<number>()
  for (let at = 0; at + 3 <= padded.length; at++) {
    out.add((signAt(padded, at) * SIGNS + signAt(padded, at + 1)) * SIGNS + signAt(padded, at + 2))
  }
  return [...out]
}

interface RunTable {
  /** runs in each text */
  sizes: Uint16Array
  /** run → where its list begins */
  starts: Uint32Array
  /** places of the texts that hold a run, run after run */
  lists: Uint32Array
}

function tableOf(texts: readonly string[]): RunTable {
  const sizes = new Uint16Array(texts.length)
  const starts = new Uint32Array(RUNS + 1)
  const runs = texts.map(runsOf)
  for (const [place, list] of runs.entries()) {
    sizes[place] = list.length
    for (const run of list) starts[run + 1] = (starts[run + 1] ?? 0) + 1
  }
  for (let run = 1; run < starts.length; run++) starts[run] = (starts[run] ?? 0) + (starts[run - 1] ?? 0)
  const lists = new Uint32Array(starts[RUNS] ?? 0)
  const filled = starts.slice()
  for (const [place, list] of runs.entries()) {
    for (const run of list) {
      const at = filled[run] ?? 0
      lists[at] = place
      filled[run] = at + 1
    }
  }
  return { sizes, starts, lists }
}

/** Lowest grade so that `most` stand at or above it. */
function gradeFor(counted: Uint32Array, most: number): number {
  let grade = GRADES - 1
  for (let sum = counted[grade] ?? 0; sum < most && grade > 1; sum += counted[grade] ?? 0) grade--
  return grade
}

/**
 * An index in flat tables: names are many and looked through at every key typed. The rare runs of a text are looked
 * at first and tell the most; once enough places were seen the common ones ("ate", "oil") are left out, and the Dice
 * share of common runs is estimated from those that were looked at.
 */
export function buildLetterRuns(texts: readonly string[]): LetterRuns {
  const { sizes, starts, lists } = tableOf(texts)
  const shared = new Uint16Array(texts.length)
  const seen = new Uint32Array(texts.length)
  const grades = new Uint8Array(texts.length)
  const counted = new Uint32Array(GRADES)
  const timesOf = (run: number): number => (starts[run + 1] ?? 0) - (starts[run] ?? 0)

  /** Counts shared runs, the rare ones first. @returns how many texts were seen and how many runs were looked at */
  const count = (runs: readonly number[]): { found: number; used: number } => {
    let found = 0
    let used = 0
    let places = 0
    for (const run of runs) {
      places += timesOf(run)
      if (places > MOST_PLACES && used >= LEAST_RUNS) break
      used++
      const end = starts[run + 1] ?? 0
      for (let at = starts[run] ?? 0; at < end; at++) {
        const place = lists[at] ?? 0
        const before = shared[place] ?? 0
        if (before === 0) seen[found++] = place
        shared[place] = before + 1
      }
    }
    return { found, used }
  }

  return {
    sharing(text, most) {
      const runs = runsOf(text).sort((a, b) => timesOf(a) - timesOf(b) || a - b)
      const { found, used } = count(runs)
      const scale = (2 * (GRADES - 1) * runs.length) / used
      counted.fill(0)
      for (let n = 0; n < found; n++) {
        const place = seen[n] ?? 0
        const dice = (scale * (shared[place] ?? 0)) / (runs.length + (sizes[place] ?? 0))
        const grade = Math.min(GRADES - 1, Math.floor(dice))
        grades[n] = grade
        counted[grade] = (counted[grade] ?? 0) + 1
        shared[place] = 0
      }
      const least = gradeFor(counted, most)
      const out: number[] = []
      for (let n = 0; n < found; n++) if ((grades[n] ?? 0) >= least) out.push(seen[n] ?? 0)
      return out
    },
  }
}
