import { useState } from 'react'
import { useBenchAnswers } from '#web/client/use-bench-answers.ts'
import type { Swap } from '#web/client/use-swaps.ts'
import { useWhyNot } from '#web/client/use-why-not.ts'
import { setWeight } from '#web/state/edit.ts'
import { benchFromText } from '#web/state/from-text.ts'
import { takeFormula } from '#web/state/to-formula.ts'
import type { BenchStore } from '#web/state/use-bench.ts'
import { text } from '#web/text/en.ts'
import { BenchTitle } from './bench-title.tsx'
import { JumpBar } from './jump-bar.tsx'
import { nameOf } from './line-name.tsx'
import { PasteBox } from './paste-box.tsx'
import { PhRuler } from './ph-ruler.tsx'
import { RecipeCard } from './recipe-card.tsx'
import { SettingsForm } from './settings-form.tsx'
import { SwapsPanel } from './swaps-panel.tsx'
import { Tools } from './tools.tsx'
import { WhyNotForm } from './why-not.tsx'
import { Verdict } from './verdict.tsx'
import { WishForm } from './wish-form.tsx'

/** The bench with a recipe on it. */
export function WorkBench({ store }: { store: BenchStore }) {
  const { bench, change } = store
  const [other, setOther] = useState('')
  const whyNot = useWhyNot(other)
  const { standings, idOf, lacking, aside_percent, check, swaps, shelf, missing } = useBenchAnswers(bench, whyNot.id)
  const [taken, setTaken] = useState('')
  const reply = lacking === null && check.state === 'ready' ? check.data : null
  const known = new Map(reply?.roles.map(({ ingredient, inci }) => [ingredient, inci]))
  const missingNames = missing.map((line) =>
    nameOf(
      line,
      standings.get(line.key) ?? { state: 'unread' },
      reply?.roles.find((one) => one.ingredient === idOf(line)),
    ),
  )
  const use = (formula: NonNullable<Swap['formula']>, name: string) => {
    change((now) => takeFormula(now, formula, idOf))
    setTaken(text.swaps.used(name))
  }
  return (
    <div className="bench">
      <div className="bench-head">
        <BenchTitle store={store} />
        <Tools store={store} />
      </div>
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
        before={reply?.findings ?? []}
        known={known}
        taken={missing.length > 0 ? '' : taken}
        onUse={use}
        weights={bench.wishes.weights ?? {}}
        onWeight={(criterion, factor) => change((now) => setWeight(now, criterion, factor))}
      >
        <WishForm wishes={bench.wishes} shelf={shelf} change={change} />
        {missing.length === 1 && <WhyNotForm typed={other} remark={whyNot.remark} onType={setOther} />}
      </SwapsPanel>
      {reply && <PhRuler reply={reply} ph={bench.settings.ph} />}
      <details className="card replace">
        <summary>{text.paste.replace}</summary>
        <PasteBox
          action={text.paste.read}
          hint={text.paste.replaceHint}
          onRead={(typed) => change((now) => benchFromText(typed, now))}
        />
      </details>
      {missing.length > 0 && lacking === null && <JumpBar swaps={swaps} names={missingNames.join(', ')} />}
    </div>
  )
}
