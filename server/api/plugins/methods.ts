import type { FastifyInstance } from 'fastify'

/** Finds out which methods a path takes. */
export type MethodsOf = (path: string) => string[]

const patternOf = (url: string): RegExp =>
  new RegExp(`^${url.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replace(/:[^/]+/g, '[^/]+')}$`)

/** Watches routes being added; call it before the first. */
export function watchMethods(app: FastifyInstance): MethodsOf {
  const routes = new Map<string, { pattern: RegExp; methods: Set<string> }>()
  app.addHook('onRoute', ({ url, method }) => {
    const route = routes.get(url) ?? { pattern: patternOf(url), methods: new Set<string>() }
    for (const one of [method].flat()) route.methods.add(one)
    routes.set(url, route)
  })
  return (path) => {
    const methods = [...routes.values()]
      .filter(({ pattern }) => pattern.test(path))
      .flatMap((route) => [...route.methods])
    return [...new Set(methods)].sort()
  }
}
