// @vitest-environment happy-dom
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { askAnywhere, NoAnswer } from '#web/offline/ask.ts'
import { askEngine } from '#web/offline/page-engine.ts'
import { serverIsBack } from '#web/offline/server-watch.ts'
import { setEngine, setServer, standingNow } from '#web/offline/standing.ts'

vi.mock('#web/offline/page-engine.ts', () => ({ askEngine: vi.fn() }))

const QUESTION = { method: 'POST', url: '/api/check', body: { formula: {} } }
const OF_PAGE = { status: 200, body: { from: 'page' } }
const server = vi.fn<typeof fetch>()
const page = vi.mocked(askEngine)

const json = (status: number, body: unknown) => new Response(JSON.stringify(body), { status })
const never = new Promise<never>(() => undefined)

beforeEach(() => {
  vi.useFakeTimers()
  vi.stubGlobal('fetch', server)
  server.mockReset()
  page.mockReset().mockResolvedValue(OF_PAGE)
  setServer('there')
  setEngine('unasked')
})
afterEach(() => {
  vi.useRealTimers()
  vi.unstubAllGlobals()
})

test('the server is asked first, and the page is left alone while it answers', async () => {
  server.mockResolvedValue(json(200, { from: 'server' }))
  expect(await askAnywhere(QUESTION)).toEqual({ status: 200, body: { from: 'server' } })
  expect(page).not.toHaveBeenCalled()
  expect(standingNow().server).toBe('there')
})

test.each([400, 404, 422, 429, 500])('a refusal of the API with %i is an answer', async (status) => {
  const refusal = { error: { code: 'some-code', message: 'lines: something' } }
  server.mockResolvedValue(json(status, refusal))
  expect(await askAnywhere(QUESTION)).toEqual({ status, body: refusal })
  expect(page).not.toHaveBeenCalled()
})

test.each([
  ['no network', () => Promise.reject(new TypeError('failed'))],
  ['an error page of a gateway', () => Promise.resolve(new Response('<h1>Bad gateway</h1>', { status: 502 }))],
  ['nothing behind a gateway', () => Promise.resolve(new Response('', { status: 504 }))],
  ['a page where an answer should be', () => Promise.resolve(new Response('<h1>Sign in</h1>', { status: 200 }))],
])('%s: the page answers, and says so', async (_what, fails) => {
  server.mockImplementation(fails)
  expect(await askAnywhere(QUESTION)).toEqual(OF_PAGE)
  expect(page.mock.calls[0]?.[0]).toEqual(QUESTION)
  expect(standingNow().server).toBe('away')
})

test('while the server is away the page is asked at once, until the server shows itself', async () => {
  server.mockRejectedValue(new TypeError('failed'))
  await askAnywhere(QUESTION)
  server.mockClear()
  await askAnywhere(QUESTION)
  expect(server).not.toHaveBeenCalled()
  server.mockImplementation(() => Promise.resolve(json(200, { status: 'ok' })))
  await vi.advanceTimersByTimeAsync(6_000)
  expect(server.mock.calls.map(([url]) => url)).toEqual(['/api/health'])
  expect(standingNow().server).toBe('back')
  await vi.advanceTimersByTimeAsync(30_000)
  expect(standingNow().server).toBe('there')
})

test('where neither answers, what the server did is said, and the server is asked the next time', async () => {
  server.mockImplementation(() => Promise.resolve(new Response('', { status: 503 })))
  page.mockImplementation(() => {
    setEngine('unable')
    return Promise.reject(new Error('no data are kept'))
  })
  await expect(askAnywhere(QUESTION)).rejects.toThrow(new NoAnswer('The server answered with 503'))
  server.mockResolvedValue(json(200, { from: 'server' }))
  expect(await askAnywhere(QUESTION)).toMatchObject({ body: { from: 'server' } })
  expect(standingNow().server).toBe('back')
})

test('a server that takes long is overtaken by the page', async () => {
  server.mockReturnValue(never)
  const asked = askAnywhere(QUESTION)
  await vi.advanceTimersByTimeAsync(9_000)
  expect(page).not.toHaveBeenCalled()
  await vi.advanceTimersByTimeAsync(2_000)
  expect(await asked).toEqual(OF_PAGE)
})

test('a server that takes long is waited for when the page cannot answer', async () => {
  page.mockRejectedValue(new Error('no data are kept'))
  let arrive: (response: Response) => void = () => undefined
  server.mockReturnValueOnce(new Promise((resolve) => (arrive = resolve)))
  const asked = askAnywhere(QUESTION)
  await vi.advanceTimersByTimeAsync(11_000)
  arrive(json(200, { from: 'server' }))
  expect(await asked).toMatchObject({ body: { from: 'server' } })
  serverIsBack()
})

test('a question that is dropped asks nobody else', async () => {
  const control = new AbortController()
  server.mockImplementation(
    (_url, init) =>
      new Promise((_resolve, reject) => {
        init?.signal?.addEventListener('abort', () => reject(new DOMException('dropped', 'AbortError')))
      }),
  )
  const asked = askAnywhere(QUESTION, control.signal)
  control.abort()
  await expect(asked).rejects.toMatchObject({ name: 'AbortError' })
  expect(page).not.toHaveBeenCalled()
  expect(standingNow().server).toBe('there')
})
