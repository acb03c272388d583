import type { FormulaContext, Substance } from '#engine/formula/context.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { Knowledge } from '#engine/knowledge/knowledge.ts'
import type { Say } from '#engine/words/say.ts'
import type { Check, Hit } from './check.ts'
import { because, nameOf } from './say.ts'

const isFilterHere = ({ subject }: Substance, context: FormulaContext): boolean =>
  context.rolesOf(subject)[0]?.role === 'uv-filter'

/** Whether the list of UV filters of the market says something of an ingredient that was read, and not remembered. */
const isRead = ({ limits }: Subject, market: string): boolean =>
  limits.some(
    (limit) =>
      limit.market === market && limit.use === 'uv-filter' && limit.rows.some(({ access }) => access !== 'memory'),
  )

/** UV filters are allowed by list: for the EU a few entries of it were read, for the US none. */
function openFilters(context: FormulaContext): Hit[] {
  const { market } = context.formula
  const { say } = context.world
  return context.substances
    .filter((substance) => isFilterHere(substance, context))
    .filter(({ subject }) => !isRead(subject, market))
    .map(({ subject }) => ({
      severity: 'unknown',
      about: [subject.id],
      message:
        market === 'us'
          ? say`${nameOf(subject)}: a UV filter makes the product a drug in the US; the list of filters allowed there is not covered`
          : say`${nameOf(subject)}: its entry in the EU list of UV filters (Annex VI) was not read; a figure that is remembered only warns`,
      remedy: say`Look it up in the list of UV filters of the market, with its greatest share`,
      because: [because(say`used as a UV filter`), because(say`no entry of the list on record`)],
      sources: [],
    }))
}

interface Covered {
  byId: ReadonlyMap<string, readonly string[]>
  entries: ReadonlySet<string>
}

const memo = new WeakMap<Knowledge, Covered>()

const ANNEX = /^Annex (\w+)/

/** Entries that the inventory names for an ingredient, and those of which the wording is on record. */
function coverOf(knowledge: Knowledge): Covered {
  const known = memo.get(knowledge)
  if (known) return known
  const rows = knowledge.tables.get('annex-entries') ?? []
  const covered = {
    byId: new Map(rows.map((row) => [row['ingredient'] ?? '', (row['annex_entries'] ?? '').split('; ')])),
    entries: new Set([
      ...knowledge.limits.flatMap(({ act, entry, rows }) => {
        const annex = ANNEX.exec(act)?.[1]
        const isRemembered = rows.every(({ access }) => access === 'memory')
        return annex === undefined || isRemembered ? [] : [`${annex}/${entry}`]
      }),
      ...knowledge.allergens.map(({ locator }) => locator.replace(/^Annex (\w+), ref\. no (\w+).*$/, '$1/$2')),
    ]),
  }
  memo.set(knowledge, covered)
  return covered
}

type Concern = 'hair dyes' | 'nano forms'

const CONCERN: Record<Concern, (say: Say) => string> = {
  'hair dyes': (say) => say`hair dyes`,
  'nano forms': (say) => say`nano forms`,
}

/** What stretches of entries concern, as remembered; their wording is not on record. */
const STRETCHES: readonly { annex: string; from: number; to: number; concern: Concern }[] = [
  { annex: 'II', from: 1203, to: 1372, concern: 'hair dyes' },
  { annex: 'III', from: 188, to: 305, concern: 'hair dyes' },
  { annex: 'III', from: 314, to: 326, concern: 'hair dyes' },
  { annex: 'II', from: 1725, to: 1725, concern: 'nano forms' },
]

const concernOf = (entry: string): Concern | undefined => {
  const [annex, number] = entry.split('/')
  return STRETCHES.find((one) => one.annex === annex && Number(number) >= one.from && Number(number) <= one.to)?.concern
}

function severityOf(concerns: readonly (Concern | undefined)[], { areas }: FormulaContext): 'unknown' | 'note' {
  const isElsewhere = (concern: Concern | undefined): boolean =>
    concern === 'nano forms' || (concern === 'hair dyes' && areas !== undefined && !areas.includes('hair'))
  return concerns.every(isElsewhere) ? 'note' : 'unknown'
}

/** "named in Annex II, entry 1203 of the EU regulation, the list of prohibited substances; as remembered it concerns hair dyes" */
function openText(name: string, open: readonly string[], say: Say): string {
  const named = open
    .map((entry) => {
      const [annex = '', number = ''] = entry.split('/')
      return say`Annex ${annex}, entry ${number}`
    })
    .join('; ')
  const where = open.some((entry) => entry.startsWith('II/'))
    ? say`${name} is named in ${named} of the EU regulation, the list of prohibited substances`
    : say`${name} is named in ${named} of the EU regulation, the list of restricted substances`
  const concerns = new Set(open.map(concernOf).filter((one) => one !== undefined))
  const remembered = say.list(
    [...concerns].map((one) => CONCERN[one](say)),
    'and',
  )
  return remembered === ''
    ? say`${where}. The wording is not covered here`
    : say`${where}; as remembered it concerns ${remembered}. The wording is not covered here`
}

/** An ingredient that the inventory files under an entry whose wording is not on record: there is law, and it is not known here. */
function openEntries(context: FormulaContext): Hit[] {
  if (context.formula.market !== 'eu') return []
  const { byId, entries } = coverOf(context.world.knowledge)
  return context.substances.flatMap(({ subject }): Hit[] => {
    const open = (byId.get(subject.id) ?? []).filter((entry) => !entries.has(entry))
    if (open.length === 0) return []
    const { say } = context.world
    return [
      {
        severity: severityOf(open.map(concernOf), context),
        about: [subject.id],
        message: openText(nameOf(subject), open, say),
        remedy: say`Look the entry up before you use it`,
        because: [
          because(say`filed under ${open.join(', ')} in the inventory copy`),
          because(say`entry not on record`),
        ],
        sources: [],
      },
    ]
  })
}

const HAIR_DYE = 'HAIR DYEING'

/** A substance that does nothing but dye hair: most of the entries on dyes were not read, so none is taken for fine. */
function openDyes(context: FormulaContext): Hit[] {
  const { formula, areas, world } = context
  if (formula.market !== 'eu' || (areas !== undefined && !areas.includes('hair'))) return []
  const { say } = world
  const { byId } = coverOf(world.knowledge)
  const isDye = ({ id }: Subject): boolean => {
    const functions = world.knowledge.inventory.get(id)?.functions ?? []
    return functions.length > 0 && functions.every((one) => one === HAIR_DYE)
  }
  return context.substances
    .filter(({ subject }) => isDye(subject) && subject.limits.length === 0 && !byId.has(subject.id))
    .map(({ subject }) => ({
      severity: 'unknown',
      about: [subject.id],
      message: say`${nameOf(subject)} dyes hair: whether an entry of Annex II or III names it is not on record, most entries on hair dyes are not covered`,
      remedy: say`Look it up among the hair dyes of Annex III`,
      because: [
        because(say`hair dyeing is its only function in the inventory`),
        because(say`entries on hair dyes not on record`),
      ],
      sources: [],
    }))
}

/** What of the law of a market is on record at all. */
const marketNote = ({ formula, world: { say } }: FormulaContext): Hit[] =>
  formula.market === 'us'
    ? [
        {
          severity: 'note',
          about: [],
          message: say`US law is covered in part only: ingredients prohibited or restricted in 21 CFR 700 and 250.250, some label rules, panel conclusions. Not covered: the list of colour additives, drug monographs (sunscreen, acne, antiperspirant), state law. No remark is no leave; no legal advice`,
          remedy: say`Look up what is not covered`,
          because: [because(say`market: US`), because(say`no positive lists of the US on record`)],
          sources: [],
        },
      ]
    : []

/** rule:law-not-covered. Where there is law and no table of it: said, never taken for fine. */
export const lawNotCovered: Check = (context) => [
  ...marketNote(context),
  ...openFilters(context),
  ...openEntries(context),
  ...openDyes(context),
]
