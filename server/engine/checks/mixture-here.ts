import { MIXTURE_POLYMERS, surfactantTotal } from '#engine/chemistry/mixtures/mixture.ts'
import type { Mixture, MixtureThickener, SurfactantKind } from '#engine/chemistry/mixtures/mixture.ts'
import type { FormulaContext, FormulaLine } from '#engine/formula/context.ts'
import { kindOfRecord, mixtureDataOf } from '#engine/knowledge/mixture-data.ts'
import type { Range } from '#engine/units/range.ts'
import { inside } from '#engine/units/range.ts'
import type { Say } from '#engine/words/say.ts'
import { nameOf } from './say.ts'

/** A surfactant of less than this is a trace that came with something else [%]. */
const COUNTS_PERCENT = 0.3

/** A formula of the kind of which mixtures were measured: two or more surfactants beside a cationic polymer. */
export interface MixtureHere {
  surfactants: { line: FormulaLine; kind: SurfactantKind | undefined }[]
  polymers: FormulaLine[]
  thickeners: { line: FormulaLine; kind: MixtureThickener }[]
  /** what can be asked of the model, or null where a material of this kind was not measured */
  mixture: Mixture | null
  /** why the measured mixtures do not speak for this one; empty inside their range */
  outside: string[]
}

const isSurfactant = ({ subject, share_percent }: FormulaLine): boolean =>
  share_percent >= COUNTS_PERCENT &&
  (subject.allRoles.has('surfactant') || subject.classes.has('alkyl-quat')) &&
  !subject.classes.has('cationic-biocide') &&
  !subject.classes.has('electrolyte')

/** Kind of thickener that works through micelles, as far as such ones were measured. */
function thickenerKind({ subject }: FormulaLine): MixtureThickener | undefined {
  if (!subject.classes.has('associative')) return undefined
  if (subject.classes.has('peg-ester')) return 'peg-ester'
  return subject.classes.has('fatty-alcohol-ethoxylate') ? 'short-ethoxylate' : undefined
}

const totalOf = (lines: readonly FormulaLine[]): number => lines.reduce((sum, line) => sum + line.share_percent, 0)

const SLACK = 0.1

/** From least to most that was measured, a tenth wider at each end. */
function measuredRange(values: readonly number[]): Range {
  return { min: Math.min(...values) * (1 - SLACK), max: Math.max(...values) * (1 + SLACK) }
}

/** A level and the range in which it was measured, as figures for a sentence [%]. */
type Figures = Record<'here' | 'least' | 'most', string>

/** Levels of which mixtures were measured in a range, each with its words. */
const LEVELS: readonly { of: (mixture: Mixture) => number; words: (figures: Figures, say: Say) => string }[] = [
  {
    of: surfactantTotal,
    words: ({ here, least, most }, say) => say`surfactants together: ${here} % here, measured ${least} to ${most} %`,
  },
  {
    of: (mixture) => mixture.polymer_percent,
    words: ({ here, least, most }, say) => say`the polymer: ${here} % here, measured ${least} to ${most} %`,
  },
  {
    of: (mixture) => mixture.thickener_percent,
    words: ({ here, least, most }, say) => say`the thickener: ${here} % here, measured ${least} to ${most} %`,
  },
]

const levelsOutside = (mixture: Mixture, measured: readonly Mixture[], say: Say): string[] =>
  LEVELS.flatMap(({ of, words }) => {
    const [value, range] = [of(mixture), measuredRange(measured.map(of))]
    if (inside(value, range)) return []
    const { min = 0, max = 100 } = range
    return [words({ here: say.short(value), least: say.short(min), most: say.short(max) }, say)]
  })

function materialsOutside(here: Omit<MixtureHere, 'mixture' | 'outside'>, say: Say): string[] {
  const strange = here.surfactants.filter(({ kind }) => kind === undefined).map(({ line }) => nameOf(line.subject))
  const others = here.polymers.filter(({ subject }) => !MIXTURE_POLYMERS.some((one) => one === subject.id))
  return [
    ...strange.map((name) => say`no mixture with ${name} or its like was measured`),
    ...others.map(({ subject }) => say`no mixture with ${nameOf(subject)} was measured`),
    ...(here.polymers.length > 1 ? [say`only mixtures with one cationic polymer were measured`] : []),
    ...(here.thickeners.length === 0
      ? [say`every measured mixture held a nonionic thickener (a short ethoxylate or a large PEG ester)`]
      : []),
  ]
}

function mixtureOf(here: Omit<MixtureHere, 'mixture' | 'outside'>): Mixture {
  return {
    surfactants: here.surfactants.flatMap(({ line, kind }) =>
      kind ? [{ kind, share_percent: line.share_percent }] : [],
    ),
    polymer:
      MIXTURE_POLYMERS.find((one) => here.polymers.some(({ subject }) => subject.id === one)) ?? 'polyquaternium-7',
    polymer_percent: totalOf(here.polymers),
    thickener: here.thickeners.some(({ kind }) => kind === 'peg-ester') ? 'peg-ester' : 'short-ethoxylate',
    thickener_percent: totalOf(here.thickeners.map(({ line }) => line)),
  }
}

/** The mixture of surfactants and cationic polymer in a formula, or null where it is none. */
export function mixtureHere(context: FormulaContext): MixtureHere | null {
  const { measured } = mixtureDataOf(context.world.knowledge)
  if (measured.length === 0 || context.water_percent < 30 || context.oil_percent >= 5) return null
  const thickeners = context.lines.flatMap((line) => {
    const kind = thickenerKind(line)
    return kind ? [{ line, kind }] : []
  })
  const surfactants = context.lines
    .filter((line) => isSurfactant(line) && !thickeners.some((one) => one.line === line))
    .map((line) => ({ line, kind: kindOfRecord(line.subject) }))
  const polymers = context.lines.filter(({ subject }) => subject.classes.has('cationic-polymer'))
  if (surfactants.length < 2 || polymers.length === 0) return null
  const here = { surfactants, polymers, thickeners }
  const { say } = context.world
  const materials = materialsOutside(here, say)
  if (materials.length > 0) return { ...here, mixture: null, outside: materials }
  const mixture = mixtureOf(here)
  return { ...here, mixture, outside: levelsOutside(mixture, measured, say) }
}
