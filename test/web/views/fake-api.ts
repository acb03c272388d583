import { vi } from 'vitest'
import type { Api } from '#contract/api.ts'

export type CheckReply = Api['POST /api/check']['reply']
export type SwapsReply = Api['POST /api/swaps']['reply']
type ResolveReply = Api['POST /api/resolve']['reply']
type Result = ResolveReply['results'][number]
type Answer = (body: unknown, url: URL) => unknown

const blank = { typed: '', ingredient: null, inci: null, tier: null, choices: [] }

/** Meaning of a name in the fake: its id is the name with hyphens, "bis" is ambiguous, "blorp" unknown. */
function resolveOne(typed: string): Result {
  if (typed === 'blorp') return { ...blank, typed, status: 'unknown' }
  if (typed === 'coco betaine') {
    const choice = { score: 0.8, why: 'goes by it' }
    const choices = [
      { ingredient: 'coco-betaine', inci: 'COCO-BETAINE', ...choice },
      { ingredient: 'cocamidopropyl-betaine', inci: 'COCAMIDOPROPYL BETAINE', ...choice },
    ]
    return { ...blank, typed, status: 'ask', choices }
  }
  const id = typed.toLowerCase() === 'water' ? 'aqua' : typed.toLowerCase().replaceAll(' ', '-')
  return { ...blank, typed, status: 'found', ingredient: id, inci: id.replaceAll('-', ' ').toUpperCase(), tier: 'full' }
}

export const makeCheck = (change: Partial<CheckReply> = {}): CheckReply => ({
  verdict: 'clear',
  findings: [],
  windows: [],
  common_ph: null,
  roles: [],
  form: 'gel',
  formDerived: true,
  graphVersion: 'test',
  ...change,
})

export const makeSwaps = (change: Partial<SwapsReply> = {}): SwapsReply => ({
  outcome: 'no-safe-swap',
  why: '',
  roles: [],
  swaps: [],
  refused: [],
  leaveOut: { verdict: 'no', why: 'It carries the recipe.' },
  graphVersion: 'test',
  ...change,
})

/** Puts a fake in the place of the server; answers by method and path, an Error becomes a failure. */
export function fakeApi(answers: Record<string, Answer> = {}) {
  const all: Record<string, Answer> = {
    'POST /api/resolve': (body) => ({
      results: (body as { names: string[] }).names.map(resolveOne),
      graphVersion: 'test',
    }),
    'POST /api/check': () => makeCheck(),
    'POST /api/swaps': () => makeSwaps(),
    'GET /api/learn/lessons': () => ({ lessons: [], graphVersion: 'test' }),
    'GET /api/roles': () => ({ roles: [], graphVersion: 'test' }),
    ...answers,
  }
  const asked: { route: string; body: unknown; url: URL }[] = []
  vi.stubGlobal('fetch', (input: string, init: RequestInit = {}) => {
    const url = new URL(input, 'http://localhost')
    const route = `${init.method ?? 'GET'} ${url.pathname}`
    const body: unknown = typeof init.body === 'string' ? JSON.parse(init.body) : null
    asked.push({ route, body, url })
    const answer = all[route]
    if (!answer) return Promise.reject(new Error(`the fake has no answer to ${route}`))
    const reply = answer(body, url)
    if (reply instanceof Error) {
      const error = { code: 'bad-request', message: reply.message }
      return Promise.resolve(Response.json({ error }, { status: 400 }))
    }
    return Promise.resolve(Response.json(reply))
  })
  return asked
}
