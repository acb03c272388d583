/**
 * Proof that the engine needs neither Node nor a page: bundles server/engine/index.ts for a browser and runs it in an
 * empty context that knows TextEncoder and nothing else. Exits with 1 and says why when that fails.
 */
import { dirname } from 'node:path'
import { fileURLToPath } from 'node:url'
import vm from 'node:vm'
import { build } from 'esbuild'

const root = dirname(dirname(fileURLToPath(import.meta.url)))

/** Calls to try when the door exports the name; each gives true when the answer is right. */
const CALLS = {
  undissociatedShare: 'engine.undissociatedShare(4.2, 4.2) === 0.5',
}

async function bundleEngine() {
  const result = await build({
    absWorkingDir: root,
    entryPoints: ['server/engine/index.ts'],
    bundle: true,
    format: 'iife',
    globalName: 'engine',
    platform: 'browser',
    target: 'es2022',
    write: false,
    metafile: true,
    logLevel: 'silent',
  })
  const outside = Object.values(result.metafile.inputs).flatMap((input) => input.imports.filter((i) => i.external))
  if (outside.length > 0) throw new Error(`imports from outside the bundle: ${outside.map((i) => i.path).join(', ')}`)
  const code = result.outputFiles[0].text
  const mention = code.match(/["'`]node:[a-z_/]+["'`]/)
  if (mention) throw new Error(`the bundle mentions ${mention[0]}`)
  return code
}

/** @returns how many names the door exports and which calls were made */
function runInEmptyContext(code) {
  const context = vm.createContext({ TextEncoder })
  vm.runInContext(code, context, { filename: 'engine.js', timeout: 20_000 })
  const exported = vm.runInContext('Object.keys(engine)', context)
  if (exported.length === 0) throw new Error('server/engine/index.ts exports nothing')
  const called = Object.keys(CALLS).filter((name) => exported.includes(name))
  for (const name of called) {
    if (!vm.runInContext(CALLS[name], context)) throw new Error(`wrong answer: ${CALLS[name]}`)
  }
  return { exported: exported.length, called }
}

try {
  const code = await bundleEngine()
  const { exported, called } = runInEmptyContext(code)
  const size_kb = Math.round(code.length / 1000)
  console.log(`engine in a browser: ${exported} exports, ${size_kb} kB, called: ${called.join(', ') || 'none'}`)
} catch (error) {
  console.error(`engine in a browser: ${error.message}`)
  process.exitCode = 1
}
