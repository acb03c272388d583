import { pick, random, shuffled } from './random.ts'

export const ROLES = 40
export const CLASSES = 24
/** Charge of a class; 2 stands for amphoteric. */
const CHARGES = [-1, 0, 1, 2]
const LINES = 12

export interface MadeIngredient {
  id: number
  roles: number[]
  classes: number[]
  ph_low: number
  ph_high: number
  heat_c: number
}

export interface MadeGraph {
  ingredients: MadeIngredient[]
  /** class by class, symmetric: 1 where the two clash */
  clashes: Uint8Array[]
}

/** What is missing, what stays, and what the stand-in has to bear. */
export interface RoleQuestion {
  missing: number
  rest: number[]
  ph: number
  heat_c: number
}

const upTo = (count: number): number[] => Array.from({ length: count }, (_, n) => n)
const byNumber = (a: number, b: number): number => a - b

function clashesOf(rnd: () => number): Uint8Array[] {
  const charge = upTo(CLASSES).map((one) => CHARGES[one % CHARGES.length]!)
  const clashes = upTo(CLASSES).map(() => new Uint8Array(CLASSES))
  for (let a = 0; a < CLASSES; a++) {
    for (let b = a + 1; b < CLASSES; b++) {
      const share = charge[a]! * charge[b]! === -1 ? 0.8 : 0.06
      if (rnd() < share) clashes[a]![b] = clashes[b]![a] = 1
    }
  }
  return clashes
}

/** Seeded ingredients with one to three roles, a pH window, a heat limit and one or two classes. */
export function makeGraph(count: number, seed = 7): MadeGraph {
  const rnd = random(seed)
  const clashes = clashesOf(rnd)
  const ingredients = upTo(count).map((id) => {
    const ph_low = 2 + rnd() * 4
    const roles = shuffled(rnd, upTo(ROLES)).slice(0, 1 + Math.floor(rnd() * 3))
    const ph_high = ph_low + 1 + rnd() * 6
    const heat_c = 40 + rnd() * 80
    const classes = upTo(1 + Math.floor(rnd() * 2)).map(() => Math.floor(rnd() * CLASSES))
    return { id, roles: roles.sort(byNumber), ph_low, ph_high, heat_c, classes: [...new Set(classes)].sort(byNumber) }
  })
  return { ingredients, clashes }
}

/** Formulas of twelve lines that do not clash; the first is missing. */
export function makeQuestions({ ingredients, clashes }: MadeGraph, count: number, seed = 8): RoleQuestion[] {
  const rnd = random(seed)
  const agree = (a: MadeIngredient, b: MadeIngredient): boolean =>
    a.classes.every((one) => b.classes.every((other) => clashes[one]![other] === 0))
  return upTo(count).map(() => {
    const lines: MadeIngredient[] = []
    while (lines.length < LINES) {
      const one = pick(rnd, ingredients)
      if (!lines.includes(one) && lines.every((line) => agree(line, one))) lines.push(one)
    }
    const [missing, ...rest] = lines.map(({ id }) => id)
    return { missing: missing!, rest, ph: 3.5 + rnd() * 4.5, heat_c: 40 + rnd() * 45 }
  })
}
