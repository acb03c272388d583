import { spawn } from 'node:child_process'
import type { ChildProcess } from 'node:child_process'
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
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

function start(env: Record<string, string>, cwd = ROOT): ChildProcess {
  const options = { cwd, env: { ...process.env, ...env } }
  const child = spawn(process.execPath, ['--import', 'tsx', 'server/main.ts'], options)
  started.push(child)
  return child
}

/** Waits until it ends. */
async function run(env: Record<string, string>, cwd = ROOT) {
  const child = start(env, cwd)
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

/** The program with a copy of its data in which two records and a role are spoilt. */
function brokenCopy(): string {
  const copy = join(folder, 'broken')
  for (const part of ['server', 'graph-data', 'package.json'])
    cpSync(join(ROOT, part), join(copy, part), { recursive: true })
  symlinkSync(join(ROOT, 'node_modules'), join(copy, 'node_modules'))
  const spoil = (path: string, from: string, to: string): void => {
    const file = join(copy, 'graph-data', path)
    const text = readFileSync(file, 'utf8')
    expect(text).toContain(from)
    writeFileSync(file, text.replace(from, to))
  }
  spoil('ingredients/glycerin.yaml', '56-81-5', '56-81-6')
  spoil('ingredients/xanthan-gum.yaml', 'divalent_ions: tolerant', 'divalent_ions: tolerable')
  spoil('ingredients/xanthan-gum.yaml', 'hc-konjac', 'hc-nowhere')
  spoil('roles.yaml', 'confused_with: [hydrosol]', 'confused_with: [hydrosole]')
  return copy
}

test(
  'on faulty data it does not start and names every fault with file and path',
  async () => {
    const { code, said } = await run({ PORT: '0', DATA_DIR: join(folder, 'store') }, brokenCopy())
    expect(code).toBe(1)
    const [head, ...faults] = said.split('\n')
    expect(head).toBe('graph-data has 5 faults; the server does not start on faulty data:')
    expect(faults.map((line) => line.trim()).sort()).toEqual([
      expect.stringMatching(/^ingredients\/glycerin\.yaml\/cas: 56-81-6 is no CAS number/),
      expect.stringMatching(/^ingredients\/glycerin\.yaml\/cas: the inventory gives 56-81-5/),
      expect.stringMatching(/^ingredients\/xanthan-gum\.yaml\/facts\/divalent_ions: tolerable is not one of/),
      expect.stringMatching(/^ingredients\/xanthan-gum\.yaml\/facts\/ethanol_max_percent: hc-nowhere is in no list/),
      expect.stringMatching(/^roles\.yaml\/roles\/water: confused with the unknown role hydrosole/),
    ])
  },
  SLOW_START_MS,
)

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
