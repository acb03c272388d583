import type { FastifyError, FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { ApiError } from '#answers/api-error.ts'
import type { MethodsOf } from './methods.ts'
import { schemaFault } from '#answers/schema-fault.ts'

const BODY_MAX_KB = 256
export const BODY_MAX_BYTES = BODY_MAX_KB * 1024

/** Faults that the framework finds before a route is asked. */
const OF_FRAMEWORK: Record<string, () => ApiError> = {
  FST_ERR_CTP_INVALID_MEDIA_TYPE: () => new ApiError(415, 'not-json', 'content-type: expected application/json'),
  FST_ERR_CTP_BODY_TOO_LARGE: () => new ApiError(413, 'too-large', `body: is larger than ${BODY_MAX_KB} kB`),
  FST_ERR_BAD_URL: () => new ApiError(400, 'bad-request', 'path: is not valid percent-encoding'),
  FST_ERR_MAX_PARAM_LENGTH: () => new ApiError(400, 'bad-request', 'path: is too long'),
}

/** Any thrown thing as an error of the wire. What is not the caller's fault gets no details. */
export function apiErrorOf(error: Partial<FastifyError>): ApiError {
  if (error instanceof ApiError) return error
  if (error.validation) return schemaFault(error.validation, error.validationContext ?? 'request')
  const known = OF_FRAMEWORK[error.code ?? '']
  if (known) return known()
  const status = error.statusCode ?? 500
  if (status >= 400 && status < 500) return new ApiError(400, 'bad-request', error.message ?? 'request: does not fit')
  return new ApiError(500, 'internal', 'The server failed; this is a fault of the server, not of the request')
}

export function sendError(error: Partial<FastifyError>, request: FastifyRequest, reply: FastifyReply): FastifyReply {
  const answer = apiErrorOf(error)
  if (answer.statusCode >= 500) request.log.error({ err: error }, 'request failed')
  return reply.code(answer.statusCode).type('application/json; charset=utf-8').send(answer.body())
}

const pathOf = (request: FastifyRequest): string => request.url.replace(/[?#].*$/, '')

/** No such route, or the route does not take this method, which is then said in Allow. */
export function notFound(request: FastifyRequest, reply: FastifyReply, methodsOf: MethodsOf): ApiError {
  const allowed = methodsOf(pathOf(request))
  if (allowed.length === 0)
    return new ApiError(404, 'not-found', `There is nothing at ${pathOf(request).slice(0, 100)}`)
  reply.header('allow', allowed.join(', '))
  return new ApiError(405, 'method-not-allowed', `${request.method}: this route takes ${allowed.join(', ')}`)
}

/** One shape for every error. An unknown route is refused before its body is read. */
export function answerErrors(app: FastifyInstance, methodsOf: MethodsOf): void {
  app.setErrorHandler(sendError)
  app.addHook('onRequest', async (request, reply) => {
    const mayBePage = request.method === 'GET' || request.method === 'HEAD'
    if (request.is404 && !mayBePage) throw notFound(request, reply, methodsOf)
  })
}
