import { activeMatter } from '#engine/formula/totals.ts'
import type { FormulaLine } from '#engine/formula/context.ts'
import { usedClaim } from '#engine/graph/subject.ts'
import { short } from '#engine/units/round.ts'
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

const CURVE =
  'Run a salt curve: 100 g at a time with 0.5 % salt more each, note the viscosity, stop before the top; scent and betaine shift it'

function hitOf(salts: readonly FormulaLine[], washers: readonly FormulaLine[], responds: boolean): Hit {
  const claims = washers.flatMap(({ subject }) => usedClaim(subject, 'electrolyte') ?? [])
  const salt = salts.map(({ subject }) => nameOf(subject)).join(', ')
  const names = washers.map(({ subject }) => nameOf(subject)).join(', ')
  return {
    about: [...salts, ...washers].map(({ subject }) => subject.id).sort(),
    message: responds
      ? `${salt} (${short(total(salts, (line) => line.share_percent))} %) thickens ${names} up to a top, then thins; where the top lies is not computed`
      : `${salt} hardly thickens ${names}`,
    remedy: responds ? CURVE : 'Thicken with a gum or an associative thickener, and leave the salt out',
    because: [...salts.map(shareFact), ...claims.map((claim) => because(claim.note ?? 'answer to salt', claim))],
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
  const washers = washLines(context)
  const responding = washers.filter((line) => has(line, RESPONDS))
  if (total(responding, activeMatter) >= ACTIVE_THAT_THICKENS_PERCENT) return [hitOf(salts, responding, true)]
  const hardly = washers.filter((line) => has(line, HARDLY))
  return responding.length === 0 && hardly.length > 0 && hardly.length >= washers.length / 2
    ? [hitOf(salts, hardly, false)]
    : []
}
