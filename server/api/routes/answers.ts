import type {} from '@fastify/swagger'
import { ANSWERS } from '#answers/index.ts'
import type { World } from '#engine/index.ts'
import { speaks, worldFor } from '#answers/languages.ts'
import { languageOf } from '#api/plugins/language.ts'
import type { App } from './shared.ts'

/** Other callers are answered between the parts of a long answer. */
const breathe = (): Promise<void> => new Promise((resolve) => void setImmediate(resolve))

/** Every answer at its route; fastify has checked what comes against the schemas. */
export function answerRoutes(app: App, world: World): void {
  for (const { route, reply } of ANSWERS) {
    app.route({
      ...route,
      handler: async (request, answering) => {
        const language = languageOf(request.headers['accept-language'])
        answering.header('content-language', speaks(route, language)).header('vary', 'accept-language')
        return reply({ world: worldFor(world, route, language), breathe }, request)
      },
    })
  }
}
