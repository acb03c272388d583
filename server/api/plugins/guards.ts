import compress from '@fastify/compress'
import helmet from '@fastify/helmet'
import rateLimit from '@fastify/rate-limit'
import type { FastifyInstance } from 'fastify'
import { ApiError } from '#answers/api-error.ts'

const REQUESTS_PER_MINUTE = 600

/** Everything comes from this server: no inline code, no inline style, no other host. */
const CONTENT_POLICY = {
  'default-src': ["'self'"],
  'base-uri': ["'none'"],
  'form-action': ["'self'"],
  'frame-ancestors': ["'none'"],
  'object-src': ["'none'"],
  'worker-src': ["'self'"], // keeps the page for use without a server; runs the engine then
  'manifest-src': ["'self'"],
}

const tooMany = (_request: unknown, { after }: { after: string }): ApiError =>
  new ApiError(429, 'too-many', `More than ${REQUESTS_PER_MINUTE} requests a minute; try again in ${after}`)

/** Headers, compression and a limit on how often one address may ask. */
export async function addGuards(app: FastifyInstance, limited: boolean): Promise<void> {
  await app.register(helmet, {
    contentSecurityPolicy: { useDefaults: false, directives: CONTENT_POLICY },
    strictTransportSecurity: false, // the server speaks plain HTTP; what stands before it decides
    crossOriginEmbedderPolicy: false,
  })
  await app.register(compress, { globalDecompression: false, encodings: ['br', 'gzip'], threshold: 1024 })
  if (!limited) return
  await app.register(rateLimit, {
    max: REQUESTS_PER_MINUTE,
    timeWindow: '1 minute',
    allowList: ({ url }) => !url.startsWith('/api/'),
    errorResponseBuilder: tooMany,
  })
}
