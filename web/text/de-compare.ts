import { count, shareText, upTo } from './de-figures.ts'
import type { compare as english } from './en-compare.ts'
import type { Words } from './words.ts'

const lines = (n: number): string => count(n, 'Zeile', 'Zeilen')

/** Words of the page that sets two recipes side by side, in German. */
export const compare: Words<typeof english> = {
  title: 'Zwei Rezepturen nebeneinander',
  pair: (one, other) => `${one} und ${other}`,
  lead: 'Was sich unterscheidet: Zeilen, Dosen, was die Prüfung sagt, der passende pH und die Kosten, wo Preise bekannt sind.',
  one: 'Erste',
  other: 'Zweite',
  choose: 'Eine Rezeptur wählen',
  stepBack: (name) => `${name}, einen Schritt davor`,
  needTwo:
    'Es braucht zwei Rezepturen. Eine kopieren, oder einen Ersatz nehmen: Die Rezeptur vor dem Schritt lässt sich dann auch vergleichen.',
  waits: (name, why) => `${name}: ${why}`,
  loading: 'Beide Rezepturen werden geprüft …',
  open: 'Neben der Rezeptur, wie sie ist',
  asItIs: 'Rezeptur, wie sie ist',
  withIt: (name) => `Rezeptur mit ${name}`,
  openAfter: 'Vorher und nachher vergleichen',
  caption: 'Zeilen beider Rezepturen',
  line: 'Rohstoff',
  change: 'Änderung',
  changes: {
    added: 'neu',
    removed: 'weg',
    same: 'gleich',
  },
  more: (by_percent) => `${shareText(by_percent)} mehr`,
  less: (by_percent) => `${shareText(by_percent)} weniger`,
  none: 'nicht enthalten',
  summary: (added, removed, dosed) =>
    added + removed + dosed === 0
      ? 'Beide haben dieselben Zeilen in denselben Dosen.'
      : `${[
          added > 0 ? `${lines(added)} neu` : '',
          removed > 0 ? `${lines(removed)} weg` : '',
          dosed > 0 ? `${count(dosed, 'Dosis', 'Dosen')} geändert` : '',
        ]
          .filter((part) => part !== '')
          .join(', ')}.`,
  findings: 'Was die Prüfung sagt',
  gained: 'Neue Bemerkungen',
  lost: 'Bemerkungen, die weg sind',
  noneGained: 'Die Prüfung sagt nichts Neues.',
  noneLost: 'Nichts von dem, was die Prüfung sagte, ist weg.',
  kept: (n) => `${count(n, 'Bemerkung', 'Bemerkungen')} in beiden gleich.`,
  ph: 'pH',
  phIs: 'angegeben',
  phSuits: 'passt jeder Zeile',
  phAny: 'keine Zeile setzt eine Grenze',
  phNone: 'keiner passt jeder Zeile',
  phOpen: 'nicht angegeben',
  verdict: 'Urteil',
  cost: 'Kosten eines Kilogramms',
  costOf: (figure, currency) => `${figure}${currency === '' ? '' : ` ${currency}`}`,
  costPart: (n) => `für die Zeilen mit Preis; ${lines(n)} ohne`,
  costNone: 'keine Zeile hat einen Preis',
  costWhere: 'Preise werden auf dem Herstellblatt angegeben.',
  product: 'Verstanden als',
  percent: (value) => `${upTo(value, 3)} %`,
}
