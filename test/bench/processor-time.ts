import { readdirSync, readFileSync } from 'node:fs'

/** Ticks of the kernel's clock in a second, as Linux counts for programs. */
const TICKS = 100

interface Process {
  parent: number
  name: string
  ticks: number
}

/** Fields of a line of /proc/PID/stat; the name stands in brackets and may hold anything. */
function processOf(pid: string): Process | null {
  try {
    const line = readFileSync(`/proc/${pid}/stat`, 'utf8')
    const end = line.lastIndexOf(')')
    const fields = line.slice(end + 2).split(' ')
    const name = line.slice(line.indexOf('(') + 1, end)
    return { parent: Number(fields[1]), name, ticks: Number(fields[11]) + Number(fields[12]) }
  } catch {
    return null // it has ended
  }
}

/** Processor time that programs of this name below this process have used [ms]; null where the system does not tell. */
export function processorTime_ms(name: RegExp): number | null {
  let pids: string[]
  try {
    pids = readdirSync('/proc').filter((entry) => /^\d+$/.test(entry))
  } catch {
    return null
  }
  const all = new Map(
    pids.flatMap((pid) => {
      const one = processOf(pid)
      return one ? [[Number(pid), one] as const] : []
    }),
  )
  const isBelow = (pid: number): boolean => {
    for (let at: number | undefined = pid; at !== undefined && at > 1; at = all.get(at)?.parent)
      if (at === process.pid) return true
    return false
  }
  const ticks = [...all].filter(([pid, one]) => name.test(one.name) && isBelow(pid)).map(([, one]) => one.ticks)
  return ticks.length === 0 ? null : (ticks.reduce((sum, one) => sum + one, 0) * 1000) / TICKS
}
