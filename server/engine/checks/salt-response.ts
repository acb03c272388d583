import { activeMatter } from '#engine/formula/totals.ts'
import type { FormulaLine } from '#engine/formula/context.ts'
import { usedClaim } from '#engine/graph/subject.ts'
import type { Say } from '#engine/words/say.ts'
import type { Check, Hit } from './check.ts'
import { because, nameOf, shareFact, sourcesOf } from './say.ts'
import { washLines } from './wash-composition.ts'

/** Long charged micelles grow with salt; these heads do it, the others hardly. */
const RESPONDS = ['ether-sulfate', 'alkyl-sulfate']
const HARDLY = ['alkyl-glucoside', 'sulfosuccinate', 'acyl-amino-acid', 'amphoacetate', 'isethionate', 'taurate']
const ACTIVE_THAT_THICKENS_PERCENT = 4
const SALT_THAT_COUNTS_PERCENT = 0.3

const has = ({ subject }: FormulaLine, classes: readonly string[]): boolean =>
  classes.some((one) => subject.classes.has(one))

const total = (lines: readonly FormulaLine[], amount: (line: FormulaLine) => number): number =>
  lines.reduce((sum, line) => sum + amount(line), 0)

interface Meeting {
  salts: readonly FormulaLine[]
  washers: readonly FormulaLine[]
  how: 'responding' | 'hardly'
}

function textsOf({ salts, washers }: Meeting, say: Say): Record<Meeting['how'], Pick<Hit, 'message' | 'remedy'>> {
  const salt = salts.map(({ subject }) => nameOf(subject)).join(', ')
  const names = washers.map(({ subject }) => nameOf(subject)).join(', ')
  const share = say.short(total(salts, (line) => line.share_percent))
  return {
    responding: {
      message: say`${salt} (${share} %) thickens ${names} up to a top, then thins; where the top lies is not computed`,
      remedy: say`Run a salt curve: 100 g at a time with 0.5 % salt more each, note the viscosity, stop before the top; scent and betaine shift it`,
    },
    hardly: {
      message: say`${salt} hardly thickens ${names}`,
      remedy: say`Thicken with a gum or an associative thickener, and leave the salt out`,
    },
  }
}

function hitOf(meeting: Meeting, say: Say): Hit {
  const { salts, washers, how } = meeting
  const claims = washers.flatMap(({ subject }) => usedClaim(subject, 'electrolyte') ?? [])
  return {
    about: [...salts, ...washers].map(({ subject }) => subject.id).sort(),
    ...textsOf(meeting, say)[how],
    because: [
      ...salts.map((line) => shareFact(line, say)),
      ...claims.map((claim) => because(claim.note === undefined ? say`answer to salt` : say.text(claim.note), claim)),
    ],
    sources: sourcesOf(...claims, { source: 'practice' }),
  }
}

/** rule:salt-response: which way the body of a wash goes with salt; no figure, since no curve is on record. */
export const saltResponse: Check = (context) => {
  if (context.form !== 'wash') return []
  const salts = context.lines.filter(
    ({ subject, share_percent }) =>
      subject.classes.has('electrolyte') &&
      subject.allRoles.has('surfactant-thickener') &&
      share_percent >= SALT_THAT_COUNTS_PERCENT,
  )
  if (salts.length === 0) return []
  const { say } = context.world
  const washers = washLines(context)
  const responding = washers.filter((line) => has(line, RESPONDS))
  if (total(responding, activeMatter) >= ACTIVE_THAT_THICKENS_PERCENT)
    return [hitOf({ salts, washers: responding, how: 'responding' }, say)]
  const hardly = washers.filter((line) => has(line, HARDLY))
  return responding.length === 0 && hardly.length > 0 && hardly.length >= washers.length / 2
    ? [hitOf({ salts, washers: hardly, how: 'hardly' }, say)]
    : []
}
