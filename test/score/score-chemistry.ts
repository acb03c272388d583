/**
 * Runs the worked numbers of the literature through the calculations and prints, by topic, how many come out within
 * the stated tolerance. Rows that are known to disagree are listed with both values and not counted.
 * `npm run score:chemistry`; ends with code 1 when a row that should agree does not.
 */
import { examples as emulsions } from './chemistry/emulsions.ts'
import type { Example } from './chemistry/example.ts'
import { examples as hlb } from './chemistry/hlb.ts'
import { examples as oils } from './chemistry/oils.ts'
import { examples as ph } from './chemistry/ph.ts'
import { examples as preservation } from './chemistry/preservation.ts'
import { examples as surfactants } from './chemistry/surfactants.ts'

const LISTS: readonly (() => Example[])[] = [hlb, emulsions, oils, surfactants, ph, preservation]

const all = LISTS.flatMap((list) => list())
const counted = all.filter(({ flagged }) => !flagged)
const off = counted.filter(({ within }) => !within)

const line = ({ topic, id, expected, got }: Example): string =>
  `  ${topic}, ${id}: printed ${expected}, worked out ${got}`

const topics = [...new Set(counted.map(({ topic }) => topic))].sort()
for (const topic of topics) {
  const own = counted.filter((one) => one.topic === topic)
  console.log(`${topic.padEnd(34)} ${own.filter(({ within }) => within).length}/${own.length}`)
}
console.log(`${'all'.padEnd(34)} ${counted.length - off.length}/${counted.length}`)

const flagged = all.filter((one) => one.flagged)
console.log(`\nKnown to disagree (${flagged.length}), not counted:`)
for (const one of flagged) console.log(line(one))

if (off.length > 0) {
  console.log(`\nOff (${off.length}):`)
  for (const one of off) console.log(line(one))
  process.exitCode = 1
}
