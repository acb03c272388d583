import type { Given, Question } from './messages.ts'
import { askEngine } from './page-engine.ts'
import { serverIsBack, watchForServer } from './server-watch.ts'
import { standingNow } from './standing.ts'
import { offline } from '#web/text/offline.ts'

/** How long the server may take [ms] before the page's engine is asked as well. */
const PATIENCE_MS = 10_000

/** Nothing came back, or an error page of something that stands before the server. */
export class NoAnswer extends Error {}

const isObject = (value: unknown): value is object => typeof value === 'object' && value !== null

async function askServer({ method, url, body, language }: Question, signal?: AbortSignal): Promise<Given> {
  const headers = {
    ...(language && { 'accept-language': language }),
    ...(body !== undefined && { 'content-type': 'application/json' }),
  }
  const sent = { method, headers, ...(body !== undefined && { body: JSON.stringify(body) }) }
  const response = await fetch(url, { ...sent, ...(signal && { signal }) }).catch((error: unknown) => {
    if (signal?.aborted) throw error
    throw new NoAnswer(offline.noServer)
  })
  const reply: unknown = await response.json().catch(() => null)
  if (signal?.aborted) throw signal.reason
  const isOurs = response.ok ? isObject(reply) : isObject(reply) && 'error' in reply && isObject(reply.error)
  if (!isOurs) throw new NoAnswer(offline.serverSaid(response.status))
  return { status: response.status, body: reply }
}

/** The page's own answer. @throws NoAnswer with what the server did when the page cannot answer either */
async function askPage(question: Question, signal: AbortSignal | undefined, why: string): Promise<Given> {
  return askEngine(question, signal).catch((error: unknown) => {
    if (signal?.aborted) throw error
    throw new NoAnswer(why)
  })
}

/** Resolves when the server has had its time; the page then answers, or the server is waited for after all. */
function afterPatience(question: Question, server: Promise<Given>, signal?: AbortSignal): Promise<Given> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => {
      watchForServer()
      askPage(question, signal, '').then(resolve, () => void server.then(resolve, reject))
    }, PATIENCE_MS)
    const stop = () => clearTimeout(timer)
    server.then(stop, stop)
  })
}

/**
 * Asks the server, and the page's own engine when the server is away or takes too long. Both give the same answer.
 *
 * @throws NoAnswer when neither can answer, the reason of `signal` when that fires
 */
export async function askAnywhere(question: Question, signal?: AbortSignal): Promise<Given> {
  const { server: standing, engine } = standingNow()
  if (standing === 'away' && engine !== 'unable') return askPage(question, signal, offline.noServer)
  const server = askServer(question, signal)
  try {
    const given = await Promise.race([server, afterPatience(question, server, signal)])
    if (standing === 'away') serverIsBack()
    return given
  } catch (error) {
    if (!(error instanceof NoAnswer)) throw error
    watchForServer()
    return askPage(question, signal, error.message)
  }
}
