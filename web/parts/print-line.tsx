import type { Settings } from '#web/state/bench.ts'
import { facts } from '#web/text/facts.ts'
import { text } from '#web/text/text.ts'

/** The settings in one line, for paper only: on the screen they are fields. */
export function PrintLine({ settings }: { settings: Settings }) {
  const { market, product, areas, ph, hottest_c, batch_g, dispensing, professional, uses = [] } = settings
  const parts = [
    ph === null ? text.ruler.noPh : text.ruler.ph(ph),
    hottest_c === null ? '' : text.settings.heatOf(hottest_c),
    batch_g === null ? '' : text.settings.batchOf(batch_g),
    text.settings.products[product],
    text.settings.markets[market],
    ...areas.map((area) => text.settings.areaNames[area]),
    dispensing === undefined ? '' : facts.dispensings[dispensing],
    professional === true ? facts.users.professional : '',
    ...uses.map((use) => facts.useNames[use]),
  ]
  return <p className="print-only">{parts.filter((part) => part !== '').join(' · ')}</p>
}
