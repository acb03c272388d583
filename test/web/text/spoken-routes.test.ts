import { afterEach, expect, test, vi } from 'vitest'
import { ANSWERS } from '#answers/index.ts'
import { speaks } from '#answers/languages.ts'

afterEach(() => vi.unstubAllGlobals())

// When this fails a route has learned a language: name it in web/client/spoken.ts, or the page calls its German English.
test('the German page takes for English just the routes that answer in English', async () => {
  vi.resetModules()
  vi.stubGlobal('navigator', { language: 'de' })
  const { isSpoken } = await import('#web/client/spoken.ts')
  const spoken = (is: (route: (typeof ANSWERS)[number]['route']) => boolean) =>
    ANSWERS.flatMap(({ route }) => (is(route) ? `${route.method} ${route.url}` : [])).sort()
  const byPage = spoken(({ method, url }) => isSpoken(`${method} ${url}` as Parameters<typeof isSpoken>[0]))
  expect(byPage).toEqual(spoken((route) => speaks(route, 'de') === 'de'))
})
