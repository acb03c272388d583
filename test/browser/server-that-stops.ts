import { buildApp } from '#api/app.ts'
import type { App } from '#api/routes/shared.ts'
import { packRaw } from '#load/pack-raw.ts'
import { realRaw, realWorld } from '../helpers.ts'

/** A server that can be stopped and started again at one address. */
export interface Server {
  address: () => string
  stop: () => Promise<void>
  /** @param change another page, or data that count as another version */
  start: (change?: { webRoot?: string; version?: string }) => Promise<void>
}

export function makeServer(webRoot: string): Server {
  let app: App | undefined
  let port = 0
  const stop = async () => {
    app?.server.closeAllConnections()
    await app?.close()
    app = undefined
  }
  return {
    address: () => `http://127.0.0.1:${port}`,
    stop,
    start: async (change = {}) => {
      const graphData = packRaw({ ...realRaw(), ...(change.version !== undefined && { version: change.version }) })
      app = await buildApp({ world: realWorld(), graphData, webRoot: change.webRoot ?? webRoot, rateLimit: false })
      await app.listen({ port, host: '127.0.0.1' })
      const address = app.server.address()
      if (typeof address === 'object' && address !== null) port = address.port
    },
  }
}
