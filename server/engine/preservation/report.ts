import { buildContext } from '#engine/formula/build-context.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import { nameOf } from '#engine/formula/say.ts'
import type { World } from '#engine/graph/world.ts'
import type { Finding, Severity } from '#engine/model/finding.ts'
import type { Formula } from '#engine/model/formula.ts'
import type { PreservationReport } from '#engine/model/preservation.ts'
import { agentReplies } from './agent-reply.ts'
import { isUnproven } from './agents.ts'
import { bringBack } from './bring-back.ts'
import { hurdlesOf } from './hurdles.ts'
import { ionBesideCationic } from './ion-findings.ts'
import { levelFindings, testedInLotions } from './level-findings.ts'
import { drawnIntoOil } from './losses.ts'
import { takenByMicelles } from './micelle-findings.ts'
import { parabenLoss } from './paraben-loss.ts'
import { atWindowEnd, outsideWindow } from './ph-findings.ts'
import { spectrumOpen } from './spectrum-findings.ts'
import type { Told } from './told.ts'
import { tooLittle } from './too-little.ts'
import { unknownFindings } from './unknowns.ts'
import { coverWords, hasNoWater, verdictOf } from './verdict.ts'

type Tell = (context: FormulaContext) => Told[]

const noWater: Tell = (context) =>
  hasNoWater(context)
    ? [
        {
          about: [],
          message:
            context.formula.product === 'rinse-off'
              ? context.world
                  .say`No water to preserve: dry, germs do not grow. Wet fingers, steam and shower water bring some in, and what is used in the shower gets wet each time`
              : context.world
                  .say`No water to preserve: dry, germs do not grow. Wet fingers, steam and shower water bring some in`,
          remedy: context.world
            .say`Keep it dry: a spatula, a closed lid, small packs; a product that is wetted in use wants a preservative that dissolves in it`,
          because: [{ fact: context.world.say`less than 1 % water` }],
          sources: ['practice'],
        },
      ]
    : []

const unproven: Tell = ({ lines, world: { say } }) =>
  lines
    .filter(({ subject }) => isUnproven(subject))
    .map(({ subject }) => ({
      about: [subject.id],
      message: say`${nameOf(subject)} is sold as a preservative on weak or contradicted evidence; it is not counted as one here`,
      because: [{ fact: say`weak or contradicted evidence` }],
      sources: [subject.classProvenance.source],
    }))

const challengeTest: Tell = ({ world: { say } }) => [
  {
    about: [],
    message: say`Only a challenge test of the finished product in its pack can tell whether it is preserved; this reply sums up published figures and usual practice`,
    because: [{ fact: say`combinations pass where parts fail, and the reverse (JACOBS1975, read)` }],
    sources: ['JACOBS1975'],
  },
]

/** Each kind of statement with its name and usual severity; where a rule of that name exists, its severity decides. */
const TELLS: readonly [string, Severity, Tell][] = [
  ['water-without-preservative', 'warn', tooLittle],
  ['preservative-window', 'warn', outsideWindow],
  ['spectrum-open', 'warn', spectrumOpen],
  ['unproven-preservative', 'warn', unproven],
  ['inactivated', 'note', takenByMicelles],
  ['drawn-into-oil', 'note', drawnIntoOil],
  ['preservative-at-window-end', 'note', atWindowEnd],
  ['preservative-ion-and-cationic', 'note', ionBesideCationic],
  ['paraben-hydrolysis', 'note', parabenLoss],
  ['preservation-unknown', 'unknown', unknownFindings],
  ['preservation-level', 'note', levelFindings],
  ['preservation-tested', 'note', testedInLotions],
  ['preservation-remedy', 'note', bringBack],
  ['no-water', 'note', noWater],
  ['challenge-test', 'note', challengeTest],
]

const ORDER = { stop: 0, warn: 1, unknown: 2, note: 3 } as const
const key = ({ rule, about, message }: Finding): string => `${rule} ${about.join(' ')} ${message}`

function findingsOf(context: FormulaContext): Finding[] {
  const { rules } = context.world.knowledge
  return TELLS.flatMap(([rule, usual, tell]) => {
    const severity = rules.get(rule)?.severity ?? usual
    return tell(context).map((told) => ({ rule, ...told, severity: told.severity ?? severity }))
  }).sort((a, b) => ORDER[a.severity] - ORDER[b.severity] || (key(a) < key(b) ? -1 : 1))
}

/** Is the preservative at work in this formula? */
export function preservationOf(world: World, formula: Formula): PreservationReport {
  const context = buildContext(formula, world)
  return {
    agents: agentReplies(context),
    covers: coverWords(context),
    hurdles: hurdlesOf(context),
    verdict: verdictOf(context),
    findings: findingsOf(context),
  }
}
