import type { World } from '#engine/graph/world.ts'
import type { Finding } from '#engine/model/finding.ts'
import type { Formula, Line } from '#engine/model/formula.ts'
import type { PracticeFormula } from '#engine/model/learn.ts'
import type { Refusal, Swap, SwapsReply } from '#engine/model/swap.ts'
import { findSwaps } from '#engine/swap/find-swaps.ts'
import { readableName } from '#engine/units/readable-name.ts'
import { short } from '#engine/units/round.ts'
import { hasRoom } from './change.ts'
import { drawOne } from './chance.ts'
import type { Chance } from './chance.ts'
import type { Draft, Maker } from './draft.ts'
import { findingsFor, newFindings } from './news.ts'
import { becauseOf, recipeOf } from './recipe-items.ts'
import { ruleChoice, silentRules } from './rule-choices.ts'

/** Choice that the stand-in is offered and no rule objects anew. */
export const HOLDS = { id: 'holds', text: 'Yes: no rule has a new objection' }
const LIMIT = 4

const replies = new WeakMap<World, Map<string, SwapsReply>>()

/** A search takes a good part of a second, and its answer does not change. */
function repliesOf(world: World, { id, formula }: PracticeFormula, missing: string): SwapsReply {
  const kept = replies.get(world) ?? new Map<string, SwapsReply>()
  replies.set(world, kept)
  const key = `${id} ${missing}`
  const reply = kept.get(key) ?? findSwaps(world, { formula, missing: [missing], limit: LIMIT })
  kept.set(key, reply)
  return reply
}

interface Case {
  world: World
  practice: PracticeFormula
  line: Line
  stand: { ingredient: string; share_percent: number }
  after: Formula
  before: readonly Finding[]
  findings: readonly Finding[]
}

/** The one line gives way to the stand-in at its dose; all else stays as it is. */
function caseOf(
  world: World,
  practice: PracticeFormula,
  line: Line,
  { lines }: Pick<Swap | Refusal, 'lines'>,
): Case | null {
  const [stand, second] = lines
  if (!stand || second || practice.formula.lines.some((one) => one.ingredient === stand.ingredient)) return null
  const put: Line = {
    ingredient: stand.ingredient,
    share_percent: stand.share_percent,
    ...((stand.phase ?? line.phase) && { phase: stand.phase ?? line.phase }),
  }
  const after = { ...practice.formula, lines: practice.formula.lines.map((one) => (one === line ? put : one)) }
  if (!hasRoom(after)) return null
  return {
    world,
    practice,
    line,
    stand,
    after,
    before: findingsFor(world, practice.formula),
    findings: findingsFor(world, after),
  }
}

const question = ({ world, practice, line, stand }: Case): string => {
  const name = (id: string) => readableName(world.find(id)?.inci ?? id)
  return `${name(line.ingredient)} is missing for this recipe (${practice.title.toLowerCase()}). Does ${short(stand.share_percent)} % ${name(stand.ingredient)} in its place hold, all else as it is?`
}

const LOUD: readonly string[] = ['stop', 'warn', 'unknown']

function offered(one: Case, swap: Swap, chance: Chance): Draft | null {
  const news = newFindings(one.before, one.findings).filter(({ severity }) => LOUD.includes(severity))
  const silent = silentRules(one.world, one.after, one.findings, chance)
  if (news.length > 0 || !silent) return null
  return {
    difficulty: 2,
    question: question(one),
    recipe: recipeOf(one.world, one.practice.title, one.practice.formula),
    choices: [HOLDS, ...silent.map(ruleChoice).map(asNo)],
    key: HOLDS.id,
    because: `${swap.why} Checked again as a whole, no rule has a new objection; a trial batch decides.`,
    sources: swap.sources.length > 0 ? swap.sources : ['practice'],
    about: { role: swap.role, ingredients: [one.line.ingredient, one.stand.ingredient] },
    after: one.after,
  }
}

const asNo = ({ id, text }: { id: string; text: string }) => ({ id, text: `No: ${lowFirst(text)}` })

/** Inside a sentence; pH and HLB stay as they are. */
const lowFirst = (text: string): string => text.replace(/^[A-Z](?=[a-z ])/, (letter) => letter.toLowerCase())

function refused(one: Case, { conflict }: Refusal, role: string, chance: Chance): Draft | null {
  const old = new Set(one.before.map(({ rule }) => rule))
  const fired = one.findings.filter(({ rule }) => !old.has(rule) && conflict.some((other) => other.rule === rule))
  const finding = drawOne(fired, chance)
  const rule = finding && one.world.knowledge.rules.get(finding.rule)
  const silent = silentRules(one.world, one.after, one.findings, chance)
  if (!finding || !rule || !silent) return null
  return {
    difficulty: 3,
    question: question(one),
    recipe: recipeOf(one.world, one.practice.title, one.practice.formula),
    choices: [HOLDS, ...[rule, ...silent].map(ruleChoice).map(asNo)],
    key: rule.id,
    because: becauseOf(finding),
    sources: finding.sources,
    about: { role, rule: rule.id, ingredients: [one.line.ingredient, one.stand.ingredient] },
    after: one.after,
  }
}

/** Does this stand-in hold here, and if not, why? Keys come from the search, and the rules must say the same. */
export const swapHere: Maker = (world, chance) => {
  const practice = drawOne(world.knowledge.practice, chance)
  const line =
    practice &&
    drawOne(
      practice.formula.lines.filter(({ fills }) => fills !== true),
      chance,
    )
  if (!practice || !line) return null
  const reply = repliesOf(world, practice, line.ingredient)
  const role = reply.roles[0]?.role ?? ''
  if (chance() < 0.5) {
    const swap = drawOne(reply.swaps, chance)
    const one = swap && caseOf(world, practice, line, swap)
    return swap && one ? offered(one, swap, chance) : null
  }
  const refusal = drawOne(reply.refused, chance)
  const one = refusal && caseOf(world, practice, line, refusal)
  return refusal && one ? refused(one, refusal, role, chance) : null
}
