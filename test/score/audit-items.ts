import { makeItems } from '#engine/index.ts'
import { ITEM_KINDS } from '#engine/model/learn.ts'
import type { Item, ItemKind } from '#engine/model/learn.ts'
import { realWorld } from '../helpers.ts'
import { auditItem } from './audit-item.ts'
import type { Fault } from './audit-item.ts'

const QUEUES = Number(process.argv[2] ?? 100)
const IN_QUEUE = 20

/** The kinds that ask about every role and every rule. */
const COVERING: ItemKind[] = ['plays-role', 'rule-speaks']
/** Further queues of those kinds until nothing is left unasked; more than these are a gap, not chance. */
const MOST_COVERING = 60

const world = realWorld()
const { roles, rules } = world.knowledge
const items: Item[] = []
const faults: Fault[] = []
let twice = 0

function takeQueue(seed: number, kinds?: readonly ItemKind[]): void {
  const queue = [...makeItems(world, { seed, count: IN_QUEUE, ...(kinds && { kinds }) })]
  twice += queue.length - new Set(queue.map(({ id }) => id)).size
  for (const item of queue) faults.push(...auditItem(world, item))
  items.push(...queue)
}

const roleOf = ({ about }: Item) => about.role
const ruleOf = ({ about }: Item) => about.rule
const unasked = (all: Iterable<string>, of: (item: Item) => string | undefined): string[] => {
  const asked = new Set(items.map(of))
  return [...all].filter((id) => !asked.has(id))
}
const left = (): number => unasked(roles.keys(), roleOf).length + unasked(rules.keys(), ruleOf).length

for (let seed = 1; seed <= QUEUES; seed += 1) takeQueue(seed)
const drawn = items.length
for (let more = 1; more <= MOST_COVERING && left() > 0; more += 1) takeQueue(QUEUES + more, COVERING)

const count = (what: Fault['what']): number => faults.filter((fault) => fault.what === what).length

console.log(
  `${drawn} items of ${QUEUES} queues and ${items.length - drawn} more that ask about roles and rules, ${new Set(items.map(({ id }) => id)).size} different`,
)
for (const kind of ITEM_KINDS) console.log(`  ${kind}: ${items.filter((item) => item.kind === kind).length}`)
console.log(
  `  key says that nothing is wrong: ${items.filter(({ key }) => key === 'holds' || key === 'nothing-new').length}`,
)
console.log(`wrong keys: ${count('key')}`)
console.log(`defensible distractors: ${count('distractor')}`)
console.log(`faults of form: ${count('form')}`)
console.log(`twice within a queue: ${twice}`)
for (const [name, all, of] of [
  ['roles', roles, roleOf],
  ['rules', rules, ruleOf],
] as const) {
  const missing = unasked(all.keys(), of)
  console.log(
    `${name} asked about: ${all.size - missing.length} of ${all.size}${missing.length > 0 ? `; not: ${missing.join(', ')}` : ''}`,
  )
}
console.log(`ingredients asked about: ${new Set(items.flatMap(({ about }) => about.ingredients)).size}`)
for (const { text } of faults.slice(0, 20)) console.error(text)
if (faults.length > 0 || twice > 0 || left() > 0 || drawn < QUEUES * IN_QUEUE) process.exitCode = 1
