import { makeItems } from '#engine/index.ts'
import { ITEM_KINDS } from '#engine/model/learn.ts'
import type { Item } from '#engine/model/learn.ts'
import { realWorld } from '../helpers.ts'
import { auditItem } from './audit-item.ts'
import type { Fault } from './audit-item.ts'

const QUEUES = Number(process.argv[2] ?? 100)
const IN_QUEUE = 20

const world = realWorld()
const items: Item[] = []
const faults: Fault[] = []
let twice = 0
for (let seed = 1; seed <= QUEUES; seed += 1) {
  const queue = [...makeItems(world, { seed, count: IN_QUEUE })]
  twice += queue.length - new Set(queue.map(({ id }) => id)).size
  for (const item of queue) faults.push(...auditItem(world, item))
  items.push(...queue)
}

const count = (what: Fault['what']): number => faults.filter((fault) => fault.what === what).length
const asked = (of: (item: Item) => string | undefined): number => new Set(items.flatMap((item) => of(item) ?? [])).size

console.log(`${items.length} items of ${QUEUES} queues, ${new Set(items.map(({ id }) => id)).size} different`)
for (const kind of ITEM_KINDS) console.log(`  ${kind}: ${items.filter((item) => item.kind === kind).length}`)
console.log(
  `  key says that nothing is wrong: ${items.filter(({ key }) => key === 'holds' || key === 'nothing-new').length}`,
)
console.log(`wrong keys: ${count('key')}`)
console.log(`defensible distractors: ${count('distractor')}`)
console.log(`faults of form: ${count('form')}`)
console.log(`twice within a queue: ${twice}`)
console.log(`roles asked about: ${asked(({ about }) => about.role)} of ${world.knowledge.roles.size}`)
console.log(`rules that are a key: ${asked(({ about }) => about.rule)} of ${world.knowledge.rules.size}`)
console.log(`ingredients asked about: ${new Set(items.flatMap(({ about }) => about.ingredients)).size}`)
for (const { text } of faults.slice(0, 20)) console.error(text)
if (faults.length > 0 || twice > 0 || items.length < QUEUES * IN_QUEUE) process.exitCode = 1
