import { buildContext } from '#engine/formula/build-context.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import { numberOf, rangeOfProperty, usedClaim } from '#engine/graph/subject.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { World } from '#engine/graph/world.ts'
import type { Finding, Verdict } from '#engine/model/finding.ts'
import type { Form, Formula } from '#engine/model/formula.ts'
import { commonPh } from '#engine/ph/common-window.ts'
import type { Range } from '#engine/units/range.ts'
import { roundTo } from '#engine/units/round.ts'
import { runChecks, verdictOf } from './run.ts'
import { washComposition } from './wash-composition.ts'
import type { WashComposition } from './wash-composition.ts'

interface Window extends Range {
  claim?: string
}

export interface CheckReport {
  verdict: Verdict
  findings: Finding[]
  windows: { ingredient: string; keeps_ph?: Window; works_ph?: Window; heat_max_c?: number }[]
  common_ph: Range | null
  roles: {
    ingredient: string
    inci: string
    share_percent: number
    phase: string
    strength_percent?: number
    roles: { role: string; label: string }[]
  }[]
  form: Form
  formDerived: boolean
  /** what a wash is made of; absent where the formula is none */
  wash?: WashComposition
}

function windowOf(subject: Subject, property: string): Window | undefined {
  const range = rangeOfProperty(subject, property)
  const claim = usedClaim(subject, property)
  return range && claim ? { ...range, claim: claim.id } : undefined
}

function windowsOf(context: FormulaContext): CheckReport['windows'] {
  const subjects = new Map(context.written.map(({ subject }) => [subject.id, subject]))
  return [...subjects.values()].map((subject) => {
    const keeps_ph = windowOf(subject, 'ph_stability')
    const works_ph = windowOf(subject, 'ph_effective')
    const heat_max_c = rangeOfProperty(subject, 'heat_max_c')?.max
    return {
      ingredient: subject.id,
      ...(keeps_ph && { keeps_ph }),
      ...(works_ph && { works_ph }),
      ...(heat_max_c !== undefined && { heat_max_c }),
    }
  })
}

const rolesOf = (context: FormulaContext): CheckReport['roles'] =>
  context.written.map(({ subject, share_percent, phase, strength_percent }) => {
    const strength = strength_percent ?? numberOf(subject, 'active_percent')
    return {
      ingredient: subject.id,
      inci: subject.inci,
      share_percent: roundTo(share_percent, 4),
      phase,
      ...(strength !== undefined && { strength_percent: strength }),
      roles: context
        .rolesOf(subject)
        .map(({ role }) => ({ role, label: context.world.knowledge.roles.get(role)?.label ?? role })),
    }
  })

export { commonPh }

/** Does this formula hold together? @param placedOn day on which the goods reach the market, YYYY-MM-DD */
export function checkFormula(world: World, formula: Formula, placedOn?: string): CheckReport {
  const context = buildContext(formula, world, placedOn)
  const findings = runChecks(context)
  const wash = washComposition(context)
  return {
    verdict: verdictOf(findings),
    findings,
    windows: windowsOf(context),
    common_ph: commonPh(context),
    roles: rolesOf(context),
    form: context.form,
    formDerived: context.formDerived,
    ...(wash && { wash }),
  }
}
