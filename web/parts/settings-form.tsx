import type { Area, Bench, Settings } from '#web/state/bench.ts'
import { setSettings } from '#web/state/edit.ts'
import type { BenchStore } from '#web/state/use-bench.ts'
import { text } from '#web/text/text.ts'
import { Choice } from './choice.tsx'
import { NumberField } from './number-field.tsx'
import { ProductFacts } from './product-facts.tsx'
import { Ticks } from './ticks.tsx'

const AREAS = Object.entries(text.settings.areaNames) as [Area, string][]

/** Market, use, place, pH, heat and batch size. */
export function SettingsForm({ bench, change }: { bench: Bench; change: BenchStore['change'] }) {
  const { settings, said } = bench
  const set = (next: Partial<Settings>, tag?: string) => change((now) => setSettings(now, next), tag)
  return (
    <section className="card settings" aria-labelledby="settings-title">
      <h2 id="settings-title">{text.settings.title}</h2>
      <div className="numbers">
        <NumberField
          label={text.settings.ph}
          hint={text.settings.phHint}
          value={settings.ph}
          min={0}
          max={14}
          onChange={(ph) => set({ ph }, 'ph')}
        />
        <NumberField
          label={text.settings.heat}
          hint={text.settings.heatHint}
          value={settings.hottest_c}
          min={-20}
          max={250}
          onChange={(hottest_c) => set({ hottest_c }, 'hottest')}
        />
        <NumberField
          label={text.settings.batch}
          hint={text.settings.batchHint}
          value={settings.batch_g}
          min={0}
          over
          max={1_000_000}
          onChange={(batch_g) => set({ batch_g }, 'batch')}
        />
      </div>
      {said.phRange && settings.ph !== null && (
        <p className="remark">{text.settings.phRange(said.phRange[0], said.phRange[1], settings.ph)}</p>
      )}
      <Choice
        legend={text.settings.product}
        name="product"
        value={settings.product}
        choices={text.settings.products}
        onChange={(product) => set({ product })}
      />
      <Choice
        legend={text.settings.market}
        name="market"
        value={settings.market}
        choices={text.settings.markets}
        onChange={(market) => set({ market })}
      />
      <Ticks
        legend={text.settings.areas}
        chosen={settings.areas}
        choices={AREAS}
        onChange={(areas) => set({ areas })}
      />
      <ProductFacts settings={settings} change={change} />
    </section>
  )
}
