import { analysisOf } from '#engine/checks/law-analysis.ts'
import { entriesOf } from '#engine/checks/law-entries.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { LabelQuestion, LabelRule, NotCovered } from '#engine/model/label.ts'
import { titleCase } from './label-names.ts'
import { isOpenBlend, strengthOf } from './label-parts.ts'
import { conditionalWarnings, openWarnings } from './label-warnings.ts'

/** Powders that are sold in nano form too. The list is remembered, and not complete. */
const SOLD_AS_NANO: ReadonlySet<string> = new Set([
  ...['titanium-dioxide', 'zinc-oxide', 'silica', 'hydrated-silica', 'silica-silylate', 'silica-dimethyl-silylate'],
  ...['ci-77266', 'hydroxyapatite', 'ci-77891', 'ci-77947', 'alumina', 'charcoal-powder', 'cerium-oxide'],
  ...['methylene-bis-benzotriazolyl-tetramethylbutylphenol', 'tris-biphenyl-triazine', 'colloidal-silver', 'ci-77820'],
])

/** Materials that are mixtures of scents whose content only the maker knows. */
const isMixtureOfScents = ({ id, allRoles, classes }: Subject): boolean =>
  id === 'parfum' || id === 'aroma' || (allRoles.has('scent') && classes.has('fragrance-allergen-source'))

/** Scents of which nothing is on record and no complete paper is at hand: what they bring is unknown, never nothing. */
export const openScents = (context: FormulaContext): Subject[] => {
  const { substances, world } = context
  return substances
    .map(({ subject }) => subject)
    .filter(({ id }) => !analysisOf(context, id)?.complete)
    .filter((subject) => isMixtureOfScents(subject) && !world.knowledge.compositions.has(subject.id))
    .filter(
      ({ id }) =>
        !world.knowledge.allergens.some((allergen) => !allergen.naturalComplex && allergen.members.includes(id)),
    )
}

const question = (subject: Subject, text: string, why: string, sources: string[] = []): LabelQuestion => ({
  text,
  why,
  about: [subject.id],
  sources,
})

const scentQuestions = (context: FormulaContext): LabelQuestion[] => {
  const { say } = context.world
  return openScents(context).map((subject) =>
    question(
      subject,
      analysisOf(context, subject.id)
        ? say`Does the supplier's paper on ${titleCase(subject.inci)} speak of every allergen of the law? Only then is what it does not name not in`
        : say`Which fragrance allergens does ${titleCase(subject.inci)} hold, and how much of each? Ask the supplier for the allergen list of the lot`,
      say`Its composition is not on record: the allergens named here may be too few`,
    ),
  )
}

function blendQuestions({ lines, world: { say } }: FormulaContext): LabelQuestion[] {
  return lines
    .filter(({ subject }) => isOpenBlend(subject))
    .map(({ subject }) =>
      question(
        subject,
        say`What are the shares of the parts in ${subject.parts.map((part) => titleCase(part.subject.inci)).join(', ')}? Ask the supplier`,
        say`The blend is not on record; the places of its parts in the list hang on their shares`,
      ),
    )
}

/** Solutions of which the carrier is not known: it stands on the label too. */
function carrierQuestions({ lines, world: { say } }: FormulaContext): LabelQuestion[] {
  return lines
    .filter((line) => line.subject.madeOf.length === 0 && strengthOf(line) !== null)
    .filter(({ subject }) => subject.facts.get('solubility')?.[0]?.is !== 'water')
    .map(({ subject }) =>
      question(
        subject,
        say`What is the rest of ${titleCase(subject.inci)} as you buy it: carrier, salt, preservative? Name it on the label`,
        say`It is sold below full strength, and what it is diluted with is not on record`,
      ),
    )
}

const nanoQuestions = ({ substances, formula, world: { say } }: FormulaContext): LabelQuestion[] =>
  formula.market !== 'eu'
    ? []
    : substances
        .filter(({ subject }) => SOLD_AS_NANO.has(subject.id))
        .map(({ subject }) =>
          question(
            subject,
            say`Is ${titleCase(subject.inci)} a nanomaterial? Then “[nano]” follows its name, and rules of their own hold`,
            say`Nano forms are named in the list (from memory); the data sheet of the powder tells`,
            ['S-MEM'],
          ),
        )

/** Entries that bar sprays make it worth asking how the product is dispensed, where nobody stated it. */
function sprayQuestion(context: FormulaContext): LabelQuestion[] {
  const barred = entriesOf(context).filter(
    ({ limit, members }) =>
      members.length > 0 &&
      limit.rows.some(
        ({ scope, prohibited }) => prohibited && scope.form?.some((form) => form === 'spray' || form === 'aerosol'),
      ),
  )
  if (barred.length === 0 || context.form === 'bar' || context.formula.dispensing !== undefined) return []
  const about = [...new Set(barred.flatMap(({ members }) => members.map(({ subject }) => subject.id)))].sort()
  const { say } = context.world
  const sources = [...new Set(barred.flatMap(({ limit }) => limit.rows.map(({ source }) => source)))].sort()
  return [
    {
      text: say`Is it sold as a spray? Then some ingredients are not allowed`,
      why: say`Entries that bar sprays`,
      about,
      sources,
    },
  ]
}

const LEAST_LYE_PERCENT = 1

/** Soap may be named by what went in or by what came out. */
function soapQuestion({ lines, world: { say } }: FormulaContext): LabelQuestion[] {
  const lye = lines.filter(({ subject }) => subject.allRoles.has('lye'))
  const fats = lines.filter(({ subject }) => subject.classes.has('triglyceride'))
  const lye_percent = lye.reduce((sum, { share_percent }) => sum + share_percent, 0)
  if (fats.length === 0 || lye_percent < LEAST_LYE_PERCENT) return [] // a drop that sets a pH makes no soap
  return [
    {
      text: say`Do you name the soap by what went in (oils and lye, as here) or by what came out (sodium olivate, glycerin …)? Keep to one of the two`,
      why: say`The lye is used up; the list counts weights at the time of adding`,
      about: lye.map(({ subject }) => subject.id),
      sources: [],
    },
  ]
}

/** What belongs on every label and is no part of a formula. */
const standing = ({ formula, world }: FormulaContext): LabelQuestion[] =>
  (world.knowledge.tables.get('label-questions') ?? [])
    .filter((row) => row['market'] === formula.market && row['question'] !== '')
    .map((row) => ({
      text: world.say.text(row['question'] ?? ''),
      why: world.say.text(row['why'] ?? ''),
      about: [],
      sources: [row['source_id'] ?? ''],
    }))

/** How the list of this market is made. */
export const rulesOfList = ({ formula, world }: FormulaContext): LabelRule[] =>
  (world.knowledge.tables.get('label-questions') ?? [])
    .filter((row) => row['market'] === formula.market && row['question'] === '')
    .map((row) => ({ text: world.say.text(row['why'] ?? ''), sources: [row['source_id'] ?? ''] }))

/** Lists of the market that are not on record: what they say was not judged. */
export const listsNotCovered = ({ formula, world }: FormulaContext): NotCovered[] =>
  (world.knowledge.tables.get('lists-not-covered') ?? [])
    .filter((row) => row['market'] === formula.market)
    .map((row) => ({ list: world.say.text(row['list'] ?? ''), why: world.say.text(row['why'] ?? '') }))

const unique = (questions: readonly LabelQuestion[]): LabelQuestion[] => [
  ...new Map(questions.map((one) => [`${one.text} ${one.about.join(' ')}`, one])).values(),
]

/** What only the maker or the supplier can tell: first what this formula raises, then what every label asks. */
export const labelQuestions = (context: FormulaContext): LabelQuestion[] =>
  unique([
    ...scentQuestions(context),
    ...blendQuestions(context),
    ...carrierQuestions(context),
    ...nanoQuestions(context),
    ...openWarnings(context),
    ...conditionalWarnings(context),
    ...sprayQuestion(context),
    ...soapQuestion(context),
    ...standing(context),
  ])
