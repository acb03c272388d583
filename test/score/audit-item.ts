import { batchSheet, checkFormula, describeIngredient, describeRole, findSwaps } from '#engine/index.ts'
import type { World } from '#engine/index.ts'
import type { Formula } from '#engine/model/formula.ts'
import type { Item } from '#engine/model/learn.ts'

/** What is wrong with an item; each is told apart so that a key and a distractor are counted apart. */
export interface Fault {
  what: 'key' | 'distractor' | 'form'
  text: string
}

type Audit = (world: World, item: Item) => Fault[]

const key = (text: string): Fault => ({ what: 'key', text })
const distractor = (text: string): Fault => ({ what: 'distractor', text })
const wrongOnes = (item: Item): string[] => item.choices.map(({ id }) => id).filter((id) => id !== item.key)

function playedBy(world: World, role: string): Set<string> {
  return new Set(describeRole(world, role)?.playedBy.map(({ id }) => id))
}

/** The role with all broader ones, walked up by the public description of roles. */
function withBroader(world: World, role: string): string[] {
  const broader = describeRole(world, role)?.broader
  return [role, ...(broader === undefined ? [] : withBroader(world, broader))]
}

const auditRole: Audit = (world, item) => {
  const { role = '' } = item.about
  const players = playedBy(world, role)
  const up = withBroader(world, role)
  const unsure = (id: string): boolean => {
    const described = describeIngredient(world, id)
    if (!described || described.tier === 'inventory') return true
    return players.has(id) || described.roles.some((claim) => up.includes(claim.role))
  }
  return [
    ...(players.has(item.key) ? [] : [key(`${item.key} does not play ${role}`)]),
    ...wrongOnes(item)
      .filter(unsure)
      .map((id) => distractor(`${id} may play ${role}`)),
  ]
}

/** Property and pH are read back out of the words of the question: what a learner is asked. */
const auditPh: Audit = (world, item) => {
  const ph = Number(/has pH ([\d.]+)\./.exec(item.question)?.[1])
  const window = item.question.includes('one that works') ? 'ph_effective' : 'ph_stability'
  const inside = (id: string, property: string): boolean[] =>
    (describeIngredient(world, id)?.claims ?? [])
      .filter((claim) => claim.property === property)
      .map(({ value, min, max }) => ph >= (value ?? min ?? -Infinity) && ph <= (value ?? max ?? Infinity))
  const keyInside = inside(item.key, window)
  const isKey =
    Number.isFinite(ph) && keyInside.length > 0 && [...keyInside, ...inside(item.key, 'ph_stability')].every(Boolean)
  return [
    ...(isKey ? [] : [key(`${item.key} is not recorded to hold at pH ${ph}`)]),
    ...wrongOnes(item)
      .filter((id) => inside(id, window).length === 0 || inside(id, window).some(Boolean))
      .map((id) => distractor(`${id} may hold at pH ${ph}`)),
  ]
}

/** The balance worked out again from the figures of the question; the figures looked up in the records. */
const auditDose: Audit = (world, item) => {
  const figures = [...item.question.matchAll(/([\d.]+) %/g)].map((hit) => Number(hit[1]))
  const [share = NaN, old = NaN, fresh = NaN] = figures
  const right = (share * old) / fresh
  const isRecorded = item.about.ingredients.every((id, at) => {
    const claim = describeIngredient(world, id)?.claims.find(
      ({ property, used }) => property === 'active_percent' && used,
    )
    const { value, min = value ?? NaN, max = value ?? NaN } = claim ?? {}
    const asked = figures[at + 1] ?? NaN
    return asked >= min * 0.995 && asked <= max * 1.005
  })
  const near = (id: string) => Math.abs(Number(id) - right) / right
  return [
    ...(isRecorded ? [] : [key(`active matter of ${item.about.ingredients.join(', ')} is not what is asked`)]),
    ...(near(item.key) < 0.01 ? [] : [key(`${item.key} % is not ${right} %`)]),
    ...wrongOnes(item)
      .filter((id) => !(near(id) > 0.05))
      .map((id) => distractor(`${id} % is near ${right} %`)),
  ]
}

const firing = (world: World, formula: Formula): Set<string> =>
  new Set(checkFormula(world, formula).findings.map(({ rule }) => rule))

/** Any rule that fires, even with a note, is no wrong choice; the key fires and is news. */
function auditRules(world: World, item: Item, before: Formula, after: Formula): Fault[] {
  const now = firing(world, after)
  const isNews = now.has(item.key) && !firing(world, before).has(item.key)
  return [
    ...(isNews ? [] : [key(`${item.key} does not newly fire`)]),
    ...wrongOnes(item)
      .filter((id) => now.has(id))
      .map((id) => distractor(`${id} fires too`)),
  ]
}

function practiceOf(world: World, item: Item): Formula {
  const found = world.knowledge.practice.find(({ title }) => title === item.recipe?.title)
  if (!found) throw new Error(`no practice recipe is called ${item.recipe?.title}`)
  return found.formula
}

const auditFault: Audit = (world, item) => {
  if (!item.recipe) return [{ what: 'form', text: 'no recipe shown' }]
  return auditRules(world, item, practiceOf(world, item), item.recipe.formula)
}

const texts = (world: World, formula: Formula): string[] =>
  checkFormula(world, formula).findings.map(({ rule, severity, message }) => `${rule} ${severity} ${message}`)

const auditChange: Audit = (world, item) => {
  const { recipe, after } = item
  if (!recipe || !after) return [{ what: 'form', text: 'no recipe shown' }]
  if (item.key !== 'nothing-new') return auditRules(world, item, recipe.formula, after)
  const old = texts(world, recipe.formula)
  const fresh = texts(world, after).filter((one) => !old.includes(one))
  const now = firing(world, after)
  return [
    ...fresh.map((one) => key(`something is new: ${one}`)),
    ...wrongOnes(item)
      .filter((id) => now.has(id))
      .map((id) => distractor(`${id} fires`)),
  ]
}

const answers = new Map<string, boolean>()

/** Asked of the search by name, another question than the one that the item was made of. */
function isOffered(world: World, formula: Formula, [missing = '', stand = '']: readonly string[]): boolean {
  const asked = JSON.stringify([formula, missing, stand])
  const known = answers.get(asked)
  if (known !== undefined) return known
  const [about] = findSwaps(world, { formula, missing: [missing], about: [stand], limit: 4 }).about ?? []
  const offered = about?.swap !== undefined
  answers.set(asked, offered)
  return offered
}

const auditSwap: Audit = (world, item) => {
  const { recipe, after } = item
  if (!recipe || !after) return [{ what: 'form', text: 'no recipe shown' }]
  const offered = isOffered(world, recipe.formula, item.about.ingredients)
  if (item.key !== 'holds') {
    const holds = offered ? [distractor(`${item.about.ingredients.join(' > ')} is offered`)] : []
    return [...holds, ...auditRules(world, item, recipe.formula, after)]
  }
  const old = firing(world, recipe.formula)
  const objections = checkFormula(world, after).findings.filter(
    ({ rule, severity }) => severity !== 'note' && !old.has(rule),
  )
  const now = firing(world, after)
  return [
    ...(offered ? [] : [key(`${item.about.ingredients.join(' > ')} is not offered`)]),
    ...objections.map(({ rule }) => key(`${rule} objects`)),
    ...wrongOnes(item)
      .filter((id) => now.has(id))
      .map((id) => distractor(`${id} fires`)),
  ]
}

/** The recipe is asked again by the public check: the key speaks, the others are silent. */
const auditSpeaks: Audit = (world, item) => {
  if (!item.recipe) return [{ what: 'form', text: 'no recipe shown' }]
  const now = firing(world, item.recipe.formula)
  return [
    ...(now.has(item.key) ? [] : [key(`${item.key} is silent`)]),
    ...wrongOnes(item)
      .filter((id) => now.has(id))
      .map((id) => distractor(`${id} speaks too`)),
  ]
}

/** Walked forward from the key: every other choice has to lie behind it, by another way than the item was made. */
const auditOrder: Audit = (world, item) => {
  if (!item.recipe) return [{ what: 'form', text: 'no recipe shown' }]
  const { edges, order } = batchSheet(world, { formula: item.recipe.formula, batch_g: 1000 })
  const behind = new Set([item.key])
  for (const step of order) if (edges.some(({ from, to }) => to === step && behind.has(from))) behind.add(step)
  return wrongOnes(item)
    .filter((id) => !behind.has(id))
    .map((id) =>
      order.indexOf(id) < order.indexOf(item.key) ? key(`${id} comes before`) : distractor(`${id} need not wait`),
    )
}

const AUDITS: Record<Item['kind'], Audit> = {
  'plays-role': auditRole,
  'holds-at-ph': auditPh,
  'active-matter': auditDose,
  'find-fault': auditFault,
  'rule-speaks': auditSpeaks,
  'what-if': auditChange,
  'swap-here': auditSwap,
  'order-work': auditOrder,
}

/** One key among choices that differ, with a reason. */
function auditForm({ choices, key: right, because, sources }: Item): Fault[] {
  const form = (text: string): Fault => ({ what: 'form', text })
  return [
    ...(choices.filter(({ id }) => id === right).length === 1 ? [] : [form('the key is not one of the choices')]),
    ...(new Set(choices.map(({ text }) => text)).size === choices.length ? [] : [form('two choices read alike')]),
    ...(choices.length >= 4 ? [] : [form('fewer than four choices')]),
    ...(because.length > 20 && sources.length > 0 ? [] : [form('no reason or no source')]),
  ]
}

/** Checks an item through the public door of the engine, by other ways than it was made where there are any. */
export const auditItem = (world: World, item: Item): Fault[] => [
  ...auditForm(item),
  ...AUDITS[item.kind](world, item).map(({ what, text }) => ({ what, text: `${item.kind} ${item.ref.seed}: ${text}` })),
]
