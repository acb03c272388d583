import type { FromEngine, Given, Question, ToEngine } from './messages.ts'
import { setEngine } from './standing.ts'

interface Waiting {
  resolve: (given: Given) => void
  reject: (error: unknown) => void
}

const waiting = new Map<number, Waiting>()
let worker: Worker | undefined
let asked = 0

/** Ends a question, whatever came of it. @returns who waited, undefined when the question was dropped */
function settle(id: number): Waiting | undefined {
  const one = waiting.get(id)
  waiting.delete(id)
  return one
}

function onAnswer(message: FromEngine): void {
  const one = settle(message.id)
  if ('failed' in message) {
    setEngine('unable')
    one?.reject(new Error(message.failed))
  } else {
    setEngine('ready', message.version)
    one?.resolve(JSON.parse(message.json) as Given)
  }
}

/** The engine's file could not be fetched, or it broke: the next question starts a new one. */
function onBroken(): void {
  worker?.terminate()
  worker = undefined
  setEngine('unable')
  for (const id of [...waiting.keys()]) settle(id)?.reject(new Error('the engine cannot be started'))
}

function start(): Worker {
  setEngine('starting')
  const started = new Worker(new URL('./engine-worker.ts', import.meta.url), { type: 'module' })
  started.addEventListener('message', ({ data }: MessageEvent<FromEngine>) => onAnswer(data))
  started.addEventListener('error', onBroken)
  return started
}

/** Starts the engine with the first question. @throws Error in a browser that runs no workers */
function engine(): Worker {
  try {
    return (worker ??= start())
  } catch (error) {
    setEngine('unable')
    throw error
  }
}

/** Has the engine in this page answer. @throws Error when it cannot, the reason of `signal` when that fires */
export async function askEngine(question: Question, signal?: AbortSignal): Promise<Given> {
  signal?.throwIfAborted()
  const here = engine()
  const id = ++asked
  const say = (message: ToEngine): void => here.postMessage(message)
  return new Promise((resolve, reject) => {
    waiting.set(id, { resolve, reject })
    say({ id, question })
    signal?.addEventListener('abort', () => {
      if (settle(id)) say({ drop: id })
      reject(signal.reason)
    })
  })
}
