/**
 * Seeded benchmark, no test: `npm run bench [-- --json] [names | ...]`. Each part runs in a process of its own.
 * Compare the rows of one run with one another: absolute times are those of the machine.
 */
import { fork } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { benchCalculations } from './bench-calculations.ts'
import { benchCold } from './bench-cold.ts'
import { benchNames } from './bench-names.ts'
import { benchRoles } from './bench-roles.ts'
import { benchSwaps } from './bench-swaps.ts'
import { sectionText } from './section.ts'
import type { Section } from './section.ts'

const PARTS: Record<string, () => Section | Promise<Section>> = {
  cold: benchCold,
  names: benchNames,
  roles: benchRoles,
  swaps: benchSwaps,
  calculations: benchCalculations,
}

/** Runs one part in a child and waits for what it found. */
function inChild(part: string): Promise<Section> {
  return new Promise((resolve, reject) => {
    const child = fork(fileURLToPath(import.meta.url), ['--child', part], {
      execArgv: ['--import', 'tsx', '--expose-gc'],
    })
    child.on('message', (section: Section) => resolve(section))
    child.on('exit', (code) => code !== 0 && reject(new Error(`${part}: exit ${code}`)))
  })
}

async function main(args: readonly string[]): Promise<void> {
  const asked = args.filter((arg) => !arg.startsWith('--'))
  const unknown = asked.find((part) => !(part in PARTS))
  if (unknown !== undefined) throw new RangeError(`part: ${unknown} is none of ${Object.keys(PARTS).join(', ')}`)
  const json = args.includes('--json')
  const sections: Section[] = []
  for (const part of asked.length > 0 ? asked : Object.keys(PARTS)) {
    const section = await inChild(part)
    sections.push(section)
    if (!json) console.log(`${sectionText(section)}\n`)
  }
  if (json) console.log(JSON.stringify(sections, null, 2))
}

const [mode, part] = process.argv.slice(2)
if (mode === '--child' && part !== undefined && process.send) {
  const section = await PARTS[part]?.()
  process.send(section, () => process.exit(0))
} else {
  await main(process.argv.slice(2))
}
