import type { App } from '#api/routes/shared.ts'

/** Status and parsed body of one request. */
export async function ask(app: App, method: 'GET' | 'POST', url: string, body?: unknown) {
  const response = await app.inject({
    method,
    url,
    ...(body !== undefined && {
      payload: typeof body === 'string' ? body : JSON.stringify(body),
      headers: { 'content-type': 'application/json' },
    }),
  })
  return { status: response.statusCode, body: response.json<Record<string, unknown>>(), headers: response.headers }
}
