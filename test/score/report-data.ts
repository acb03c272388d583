/**
 * What the data rest on and what they lack: records by tier, claims by how they were seen and of what kind, contested
 * values, roles with their members and with the figures by which they rank and dose. Not a test.
 * `npm run report:data` prints it to be read, `npm run report:data -- --json` as JSON.
 */
import { join } from 'node:path'
import { buildKnowledge, buildWorld } from '#engine/index.ts'
import { loadRaw } from '#load/load-raw.ts'
import { claimsReport, rolesReport } from './data-figures.ts'
import { printReport } from './print-data-report.ts'

const raw = loadRaw(join(import.meta.dirname, '../../graph-data'))
const world = buildWorld(buildKnowledge(raw))
const report = { ...claimsReport(world), roles: rolesReport(world, raw) }
if (process.argv.includes('--json')) console.log(JSON.stringify(report, null, 2))
else printReport(report)
