import { FAMILY } from '#web/explorer/relations.ts'

type Rgb = readonly [number, number, number]

/** Colours of the drawing, as the style sheet of the page sets them for light and dark. */
export interface Palette {
  ware: string
  ink: string
  faint: string
  node: Readonly<Record<string, string>>
  /** lines of the whole graph are many: they stay in the background */
  relation: (name: string, where: 'tree' | 'whole') => string
  /** a colour as it fades into the ground */
  faded: (colour: string) => string
}

const FADE = 0.72
/** Lines are lighter than marks, so that marks and words stand before them. */
const LINE_FADE = { tree: 0.3, whole: 0.8 }

const rgbOf = (hex: string): Rgb => {
  const digits = /^#([0-9a-f]{6})$/i.exec(hex.trim())?.[1] ?? '808080'
  const at = (from: number): number => Number.parseInt(digits.slice(from, from + 2), 16)
  return [at(0), at(2), at(4)]
}

const hex = (value: number): string => Math.round(value).toString(16).padStart(2, '0')

/** A mixture of two colours: all of `a` at 0, all of `b` at 1. */
export function mix(a: string, b: string, share: number): string {
  const [first, second] = [rgbOf(a), rgbOf(b)]
  return `#${first.map((value, at) => hex(value + ((second[at] ?? 0) - value) * share)).join('')}`
}

const LINES: Readonly<Record<string, string>> = {
  job: '--rim',
  kind: '--ink-2',
  'stand-in': '--unknown',
  help: '--good',
  harm: '--stop',
  law: '--warn',
  hold: '--note',
}

/** Reads the colours that hold now; to be read again when light turns to dark. */
export function readPalette(): Palette {
  const style = getComputedStyle(document.documentElement)
  const colour = (name: string): string => style.getPropertyValue(name).trim()
  const ware = colour('--ware')
  return {
    ware,
    ink: colour('--ink'),
    faint: colour('--ink-2'),
    node: {
      ingredient: colour('--rim'),
      role: colour('--good'),
      class: colour('--unknown'),
      limit: colour('--stop'),
      more: colour('--ink-2'),
      words: colour('--ink-2'),
    },
    relation: (name, where) => mix(colour(LINES[FAMILY[name] ?? 'kind'] ?? '--ink-2'), ware, LINE_FADE[where]),
    faded: (one) => mix(one, ware, FADE),
  }
}
