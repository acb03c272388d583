import vm from 'node:vm'
import { build } from 'esbuild'
import type { Given, Question } from '#answers/ask.ts'

const ROOT = new URL('../..', import.meta.url).pathname

/** What the page's worker loads, and how it opens the data. */
const ENTRY = `
import { askHere } from '#answers/ask.ts'
import { buildKnowledge, buildWorld } from '#engine/index.ts'
export const open = (json) => buildWorld(buildKnowledge(JSON.parse(json)))
export const ask = (world, question) =>
  askHere({ world, breathe: () => Promise.resolve() }, question).then((given) => JSON.stringify(given))
`

/**
 * The page's engine as a browser would run it: bundled, in a context without Node, over the file of data that the
 * server gives out.
 */
export async function openPageEngine(json: string): Promise<(question: Question) => Promise<Given>> {
  const { outputFiles } = await build({
    stdin: { contents: ENTRY, resolveDir: ROOT, loader: 'ts' },
    absWorkingDir: ROOT,
    bundle: true,
    format: 'iife',
    globalName: 'page',
    platform: 'browser',
    target: 'es2022',
    write: false,
  })
  const context = vm.createContext({ TextEncoder, URLSearchParams, decodeURIComponent, json })
  vm.runInContext(`${outputFiles[0]?.text ?? ''}\nconst world = page.open(json)`, context)
  const ask = vm.runInContext('(question) => page.ask(world, JSON.parse(question))', context) as (
    question: string,
  ) => Promise<string>
  return async (question) => JSON.parse(await ask(JSON.stringify(question))) as Given
}
