import { askHere } from '#answers/ask.ts'
import { buildKnowledge, buildWorld } from '#engine/index.ts'
import type { RawData, World } from '#engine/index.ts'
import type { FromEngine, ToEngine } from './messages.ts'

/** The service worker puts the data here that it keeps with this version of the page. */
const DATA = '/api/graph-data'

let world: Promise<World> | undefined
const dropped = new Set<number>()

async function open(): Promise<World> {
  const response = await fetch(DATA)
  if (!response.ok) throw new Error(`no data are kept (${response.status})`)
  return buildWorld(buildKnowledge((await response.json()) as RawData))
}

/** Lets messages in: what was dropped meanwhile need not be worked out. */
const breathe = (): Promise<void> => new Promise((resolve) => void setTimeout(resolve))

const say = (message: FromEngine): void => postMessage(message)

async function answer({ id, question }: Extract<ToEngine, { id: number }>): Promise<void> {
  try {
    world ??= open()
    const here = { world: await world, breathe }
    await breathe()
    if (dropped.delete(id)) return
    const given = await askHere(here, question)
    say({ id, json: JSON.stringify(given), version: here.world.knowledge.version }) // as JSON, like the server's
  } catch (error) {
    world = undefined // the next question tries again
    say({ id, failed: error instanceof Error ? error.message : String(error) })
  }
}

addEventListener('message', ({ data }: MessageEvent<ToEngine>) => {
  if ('drop' in data) dropped.add(data.drop)
  else void answer(data)
})
