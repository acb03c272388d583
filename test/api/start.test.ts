import { spawn } from 'node:child_process'
import type { ChildProcess } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, expect, test } from 'vitest'

const ROOT = fileURLToPath(new URL('../..', import.meta.url))

const SLOW_START_MS = 180_000 // reads all data and may build the page first

let folder: string
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'understudy-start-'))
})
const started: ChildProcess[] = []
afterAll(() => {
  for (const child of started) child.kill('SIGKILL') // where a test failed before it stopped its own
  rmSync(folder, { recursive: true })
})

function start(env: Record<string, string>): ChildProcess {
  const options = { cwd: ROOT, env: { ...process.env, ...env } }
  const child = spawn(process.execPath, ['--import', 'tsx', 'server/main.ts'], options)
  started.push(child)
  return child
}

/** Waits until it ends. */
async function run(env: Record<string, string>) {
  const child = start(env)
  let said = ''
  child.stderr?.on('data', (chunk: Buffer) => (said += chunk.toString()))
  const code = await new Promise<number | null>((resolve) => child.on('close', resolve))
  return { code, said: said.trim() }
}

test.each(['80.5', '70000'])('port %s is refused in one line', async (port) => {
  const { code, said } = await run({ PORT: port })
  expect(code).toBe(1)
  expect(said).toBe(`PORT: expected a whole number from 0 to 65535, got ${port}`)
})

test('a file is no place to store things', async () => {
  const file = join(folder, 'data')
  writeFileSync(file, '')
  expect(await run({ PORT: '0', DATA_DIR: file })).toEqual({ code: 1, said: `DATA_DIR: ${file} is not a folder` })
})

test(
  'it says in one line where it listens, serves page and API there, and stops when told',
  async () => {
    const child = start({ PORT: '0', DATA_DIR: join(folder, 'store') })
    let failed = ''
    child.stderr?.on('data', (chunk: Buffer) => (failed += chunk.toString()))
    const ended = new Promise<number | null>((resolve) => child.on('close', resolve))
    const line = new Promise<string>((resolve) =>
      child.stdout?.once('data', (chunk: Buffer) => resolve(chunk.toString())),
    )
    const said = await Promise.race([line, ended.then((code) => `ended with ${code}: ${failed}`)])
    expect(said).toMatch(/^Understudy listens on http:\/\/127\.0\.0\.1:\d+\n$/)
    const address = said.trim().split(' ').at(-1) ?? ''
    const health = await fetch(`${address}/api/health`)
    expect(await health.json()).toMatchObject({ status: 'ok' })
    const page = await fetch(`${address}/ingredients`)
    expect(page.headers.get('content-type')).toBe('text/html; charset=utf-8')
    await page.text()
    child.kill('SIGTERM')
    expect(await ended).toBe(0)
  },
  SLOW_START_MS,
)
