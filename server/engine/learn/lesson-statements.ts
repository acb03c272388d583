import { calculate, CALCULATIONS } from '#engine/calculate/index.ts'
import type { World } from '#engine/graph/world.ts'
import type { Subject } from '#engine/graph/subject.ts'
import { matches } from '#engine/knowledge/selector.ts'
import { judgeFact } from '#engine/knowledge/lints/lesson-facts.ts'
import type { CalculationName } from '#engine/model/inputs/index.ts'
import type { Finding } from '#engine/model/finding.ts'
import type { Judged, Statement } from '#engine/model/lesson.ts'
import { findSwaps } from '#engine/swap/find-swaps.ts'
import { recipeWith } from './lesson-change.ts'
import { findingsFor, newFindings } from './news.ts'

type Of<K extends keyof Statement> = NonNullable<Statement[K]>

const rulesText = (findings: readonly Finding[]): string =>
  findings.length === 0
    ? 'none'
    : [...new Set(findings.map(({ rule, severity }) => `${rule} (${severity})`))].join(', ')

function judgeFinding(world: World, { recipe, change, brings }: Of<'finding'>): Judged {
  const before = change === undefined ? [] : findingsFor(world, recipeWith(world, recipe))
  const after = newFindings(before, findingsFor(world, recipeWith(world, recipe, change)))
  const fired = after.filter(({ rule }) => rule === brings)
  const found = `${change === undefined ? 'findings' : 'new findings'}: ${rulesText(after)}`
  return { holds: fired.length > 0, found, sources: fired.flatMap(({ sources }) => sources) }
}

function judgeSilence(world: World, { recipe, change, rule }: Of<'no_finding'>): Judged {
  const fired = findingsFor(world, recipeWith(world, recipe, change)).filter((one) => one.rule === rule)
  return { holds: fired.length === 0, found: fired[0]?.message ?? `${rule} says nothing`, sources: [] }
}

function judgeSwap(world: World, { recipe, missing, offered, refused, outcome }: Of<'swap'>): Judged {
  const about = [offered, refused].filter((id) => id !== undefined)
  if (about.length === 0 && outcome === undefined) return { holds: false, found: 'asks for nothing', sources: [] }
  const reply = findSwaps(world, { formula: recipeWith(world, recipe), missing: [missing], about })
  const answerOf = (id: string | undefined) => reply.about?.find(({ ingredient }) => ingredient === id)
  const holds = [
    offered === undefined || answerOf(offered)?.swap !== undefined,
    refused === undefined || answerOf(refused)?.refusal !== undefined,
    outcome === undefined || reply.outcome === outcome,
  ].every(Boolean)
  const answers = about.map((id) => `${id}: ${answerOf(id)?.text ?? 'no answer'}`)
  const names = reply.swaps.map(({ lines }) => lines.map(({ ingredient }) => ingredient).join(' + '))
  const found = [`${reply.outcome}`, ...answers, `proposed: ${names.join(', ') || 'nothing'}`].join('; ')
  return { holds, found, sources: about.flatMap((id) => answerOf(id)?.swap?.sources ?? []) }
}

function judgeCalculation(world: World, { name, inputs, value, equals, tolerance }: Of<'calculates'>): Judged {
  if (!(name in CALCULATIONS)) return { holds: false, found: `there is no calculation ${name}`, sources: [] }
  const { values, sources } = calculate(world, name as CalculationName, inputs as never)
  const got = values[value]
  const holds = got !== undefined && Math.abs(got - equals) <= tolerance
  return { holds, found: `${name} gives ${JSON.stringify(values)}`, sources }
}

const namesEachOther = (a: Subject, b: Subject) =>
  a.clashes.filter((clash) => matches(clash.with, b)).concat(b.clashes.filter((clash) => matches(clash.with, a)))

/** Do the records, or the clashes of whole classes, set these two against each other at any pH or level? */
function judgeClash(world: World, { between: [first = '', second = ''] }: Of<'clash'>): Judged {
  const [a, b] = [world.find(first), world.find(second)]
  if (!a || !b) return { holds: false, found: `no record has the id ${a ? second : first}`, sources: [] }
  const byClass = world.knowledge.clashes.filter(
    (_, at) =>
      (a.clashSides[0].has(at) && b.clashSides[1].has(at)) || (b.clashSides[0].has(at) && a.clashSides[1].has(at)),
  )
  const all = [...namesEachOther(a, b), ...byClass]
  const found =
    all.length === 0 ? `no clash of ${a.id} and ${b.id} is on record` : all.map(({ says }) => says).join('; ')
  return { holds: all.length > 0, found, sources: all.map(({ source }) => source) }
}

function ask(world: World, statement: Statement): Judged {
  const { clash, finding, no_finding, swap, calculates } = statement
  if (clash) return judgeClash(world, clash)
  if (finding) return judgeFinding(world, finding)
  if (no_finding) return judgeSilence(world, no_finding)
  if (swap) return judgeSwap(world, swap)
  if (calculates) return judgeCalculation(world, calculates)
  return { holds: false, found: 'states nothing that can be checked', sources: [] }
}

/** Is a statement of a lesson so? Facts by the records, the rest by asking the engine; never throws. */
export function judgeStatement(world: World, statement: Statement): Judged {
  const fact = judgeFact(world.knowledge, statement)
  if (fact) return fact
  try {
    return ask(world, statement)
  } catch (error) {
    if (!(error instanceof Error)) throw error
    return { holds: false, found: error.message, sources: [] }
  }
}
