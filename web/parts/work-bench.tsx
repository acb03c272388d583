import { useBenchAnswers } from '#web/client/use-bench-answers.ts'
import { setWeight } from '#web/state/edit.ts'
import type { BenchStore } from '#web/state/use-bench.ts'
import { text } from '#web/text/text.ts'
import { BenchTitle } from './bench-title.tsx'
import { JumpBar } from './jump-bar.tsx'
import { nameOf } from './line-name.tsx'
import { PasteBox } from './paste-box.tsx'
import { PhRuler } from './ph-ruler.tsx'
import { RecipeCard } from './recipe-card.tsx'
import { SettingsForm } from './settings-form.tsx'
import { SwapsPanel } from './swaps-panel.tsx'
import { TakenNotice } from './taken-notice.tsx'
import { Tools } from './tools.tsx'
import { useOther } from './use-other.ts'
import { useTaken } from './use-taken.ts'
import { Verdict } from './verdict.tsx'
import { WhyNotForm } from './why-not.tsx'
import { WishForm } from './wish-form.tsx'

interface Props {
  store: BenchStore
  /** another recipe as text */
  onRead: (typed: string) => void
}

/** The bench with a recipe on it. */
export function WorkBench({ store, onRead }: Props) {
  const { bench, change } = store
  const other = useOther()
  const { standings, formula, idOf, lacking, aside_percent, check, swaps, shelf, missing } = useBenchAnswers(
    bench,
    other.id,
  )
  const { take, taken } = useTaken(store, idOf)
  const reply = lacking === null && check.state === 'ready' ? check.data : null
  const known = new Map(reply?.roles.map(({ ingredient, inci }) => [ingredient, inci]))
  const missingNames = missing.map((line) =>
    nameOf(
      line,
      standings.get(line.key) ?? { state: 'unread' },
      reply?.roles.find((one) => one.ingredient === idOf(line)),
    ),
  )
  return (
    <div className="bench">
      <div className="bench-head">
        <BenchTitle store={store} />
        <Tools store={store} />
      </div>
      {taken !== null && <TakenNotice words={taken} store={store} />}
      <div className="bench-grid">
        <RecipeCard store={store} standings={standings} check={reply} />
        <div className="side">
          <Verdict check={check} lacking={lacking} aside_percent={aside_percent} />
          <SettingsForm bench={bench} change={change} />
        </div>
      </div>
      <SwapsPanel
        swaps={swaps}
        missing={missingNames}
        canAsk={lacking === null}
        before={reply && formula && { formula, check: reply }}
        known={known}
        onUse={take}
        weights={bench.wishes.weights ?? {}}
        onWeight={(criterion, factor) => change((now) => setWeight(now, criterion, factor))}
      >
        <WishForm wishes={bench.wishes} shelf={shelf} change={change} />
        {missing.length === 1 && <WhyNotForm other={other} />}
      </SwapsPanel>
      {reply && <PhRuler reply={reply} ph={bench.settings.ph} />}
      <details className="card replace">
        <summary>{text.paste.replace}</summary>
        <PasteBox place="another" action={text.paste.read} hint={text.paste.replaceHint} onRead={onRead} />
      </details>
      {missing.length > 0 && lacking === null && <JumpBar swaps={swaps} names={missingNames.join(', ')} />}
    </div>
  )
}
