import type { Placed } from './item.ts'
import { placeBar, placeSoap } from './place-bars.ts'
import { placeAnhydrous, placePowder } from './place-dry.ts'
import { placeWatery } from './place-watery.ts'
import type { Process } from './process.ts'
import type { Setting } from './setting.ts'

const PLACES: Readonly<Record<Process, (setting: Setting) => Placed[]>> = {
  emulsion: placeWatery,
  'one-phase': placeWatery,
  anhydrous: placeAnhydrous,
  powder: placePowder,
  bar: placeBar,
  soap: placeSoap,
}

/** Where each line goes in this kind of work, with its reasons. */
export const place = (setting: Setting): Placed[] => PLACES[setting.process](setting)
