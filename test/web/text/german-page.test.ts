import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { demos } from '#web/text/de-demos.ts'
import * as inGerman from '#web/text/de-figures.ts'

/** Loads a module anew for a browser with this language and storage. */
async function load<T>(get: () => Promise<T>, browser: string | undefined, kept: Record<string, string> = {}) {
  vi.resetModules()
  vi.stubGlobal('navigator', { language: browser })
  vi.stubGlobal('localStorage', { getItem: (key: string) => kept[key] ?? null, setItem: vi.fn() })
  await (await import('#web/text/german.ts')).loadWords()
  return get()
}

afterEach(() => vi.unstubAllGlobals())

const languageWith = async (browser: string | undefined, kept?: Record<string, string>) =>
  (await load(() => import('#web/text/language.ts'), browser, kept)).language

describe('language of the page', () => {
  test.each([
    ['de', 'de'],
    ['de-AT', 'de'],
    ['DE-ch', 'de'],
    ['en-GB', 'en'],
    ['fr', 'en'],
    ['den', 'en'], // Slavey is no German
    [undefined, 'en'],
  ])('a browser that speaks %s gets %s', async (browser, language) => {
    expect(await languageWith(browser)).toBe(language)
  })

  test('what the person chose goes before what the browser says', async () => {
    expect(await languageWith('de-DE', { 'understudy-language': 'en' })).toBe('en')
    expect(await languageWith('en-US', { 'understudy-language': 'de' })).toBe('de')
  })

  test('a choice that is no language of the page counts as none', async () => {
    expect(await languageWith('de-DE', { 'understudy-language': 'tlh' })).toBe('de')
  })

  test('a browser that forbids storage gets its own language, and a change is refused, not half done', async () => {
    vi.resetModules()
    vi.stubGlobal('navigator', { language: 'de' })
    const forbid = () => {
      throw new Error('SecurityError')
    }
    vi.stubGlobal('localStorage', { getItem: forbid, setItem: forbid })
    const reload = vi.fn()
    vi.stubGlobal('window', { location: { reload } })
    const { language, speak } = await import('#web/text/language.ts')
    expect(language).toBe('de')
    expect(speak('en')).toBe(false)
    expect(reload).not.toHaveBeenCalled()
  })
})

describe('the German page', () => {
  const german = <T>(get: () => Promise<T>) => load(get, 'de-DE')

  test('takes its words by group', async () => {
    const { text } = await german(() => import('#web/text/text.ts'))
    expect(text.app.bench).toBe('Werkbank')
    expect(text.terms['hlb']).toBe('HLB-Wert')
  })

  test('the English page loads no German', async () => {
    const { german: words } = await load(() => import('#web/text/german.ts'), 'en')
    expect(words).toBeNull()
  })

  test('figures of the page and of its words are written alike', async () => {
    const page = await german(() => import('#web/format/number.ts'))
    for (const value of [0, 0.0005, 0.25, 1, 12.345, 99.999, 1250, 123456.789]) {
      expect(page.upTo(value, 3)).toBe(inGerman.upTo(value, 3))
      expect(page.shareText(value)).toBe(inGerman.shareText(value))
      expect(page.gramsText(value)).toBe(inGerman.gramsText(value))
      expect(page.wholeText(value)).toBe(inGerman.wholeText(value))
    }
    for (const range of [{}, { min: 4 }, { max: 7.5 }, { min: 4.2, max: 7.5 }, { min: 5, max: 5 }]) {
      expect(page.rangeText(range)).toBe(inGerman.rangeText(range))
    }
    expect(page.rangeText({ min: 4.2, max: 7.5 })).toBe('4,2 bis 7,5')
  })

  test('masses, powers of ten, days and money in German', async () => {
    const { onScale, costText } = await german(() => import('#web/format/mass.ts'))
    const { figureText } = await import('#web/format/figure.ts')
    const { dayText } = await import('#web/format/day.ts')
    expect(onScale(12, 0.1)).toBe('12,0')
    expect(costText(0.345, '€')).toBe('0,34 €')
    expect(costText(0.05, '')).toBe('0,050')
    expect(figureText(1.8e-5)).toBe('1,8 × 10⁻⁵')
    expect(dayText('2026-03-12')).toBe('12.03.2026')
    expect(dayText('March 2026')).toBe('March 2026')
  })

  test('a swap that costs nothing more is told from one that costs a few cents', async () => {
    const { costNote } = await german(() => import('#web/format/cost-note.ts'))
    const formula = (id: string) => ({ lines: [{ ingredient: id, share_percent: 100 }] }) as never
    const note = (a: number, b: number) =>
      costNote({
        before: formula('a'),
        after: formula('b'),
        labelOf: (id) => id,
        money: { prices: { a, b }, currency: '€' },
      })
    expect(note(2, 2.5)).toBe('0,50 € teurer je kg')
    expect(note(2, 2)).toBe('kostet gleich viel')
  })
})

describe('a demo recipe in German', () => {
  beforeEach(() => vi.resetModules())

  test('there is one for each English one', async () => {
    const { DEMOS } = await load(() => import('#web/demo/index.ts'), 'en')
    expect(Object.keys(demos).sort()).toEqual(DEMOS.map(({ id }) => id).sort())
  })

  test.each(Object.keys(demos))('%s has the shares, phases and settings of the English one', async (id) => {
    const { DEMOS } = await load(() => import('#web/demo/index.ts'), 'en')
    const { benchFromDemo } = await import('#web/demo/bench-from-demo.ts')
    const { EMPTY } = await import('#web/state/bench.ts')
    const english = DEMOS.find((demo) => demo.id === id)!
    const [en, de] = [english, { ...english, ...demos[id]! }].map((demo) => benchFromDemo(demo, EMPTY))
    const plain = ({ lines }: NonNullable<typeof en>) =>
      lines.map(({ kind, share_percent, fills, phase, strength_percent }) => ({
        kind,
        share_percent,
        fills,
        phase,
        strength_percent,
      }))
    expect(plain(de!)).toEqual(plain(en!))
    expect(de!.settings).toEqual(en!.settings)
    expect(de!.notes.split('\n')).toHaveLength(en!.notes.split('\n').length)
  })
})
