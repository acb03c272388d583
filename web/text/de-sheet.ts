import { upTo } from './de-figures.ts'
import type { sheet as english } from './en-sheet.ts'
import type { Words } from './words.ts'

/** Words of the swap sheet, in German. */
export const sheet: Words<typeof english> = {
  open: 'Ersatzblatt',
  title: 'Ersatzblatt',
  of: (name) => `Ersatzblatt: ${name}`,
  lead: 'Was für jede Zeile einspringen kann, wenn sie fehlt, immer eine Zeile auf einmal. Zum Weitergeben, und um es neben die Waage zu legen.',
  back: 'Zurück zur Werkbank',
  print: 'Drucken',
  empty: 'Auf der Werkbank liegt noch keine Rezeptur.',
  lacking: 'Das Blatt wartet, bis sich die Rezeptur prüfen lässt:',
  progress: (done, all) => `${done} von ${all} Zeilen ausgerechnet`,
  done: (all) => `Alle ${all} Zeilen sind ausgerechnet.`,
  caption: 'Jede Zeile mit ihrer Aufgabe, ihrem Ersatz und dem, was ohne sie geschieht',
  columns: { share: '%', line: 'Rohstoff und was er hier tut', standIns: 'Ersatz', without: 'Ohne ihn' },
  waiting: 'Wird gesucht …',
  failed: 'Keine Antwort für diese Zeile.',
  irreplaceable: 'Nicht zu ersetzen.',
  notKnown: 'Nicht bekannt.',
  workable: 'mit einem Unterschied',
  inAll: (name, percent) => `${name} ist schon enthalten: ${upTo(percent, 2)} % insgesamt`,
  openJobs: (jobs) => `lässt offen: ${jobs}`,
  forAll: (words) => `Für alle: ${words}`,
  leaveOut: {
    fine: 'Kann wegbleiben.',
    workable: 'Kann wegbleiben, mit einem Unterschied.',
    no: 'Kann nicht wegbleiben.',
  },
  legend:
    'Dosen sind Prozent der ganzen Rezeptur und für jeweils einen Tausch ausgerechnet. Das Beste zuerst; „mit einem Unterschied“ erfüllt die Aufgabe, und das Produkt ändert sich.',
  caution:
    'Ein Tausch ist ein Vorschlag, kein Beweis. Erst einen kleinen Ansatz machen, seinen pH messen, ihn einige Wochen beobachten. Etikett und Allergene neu prüfen. Ist Wasser darin, zeigt nur ein Konservierungsmittelbelastungstest, dass die Konservierung hält. Das örtliche Recht und die Sicherheitsbewertung haben das letzte Wort.',
  dangerous: 'Gefährlich im Umgang: Schutzbrille und Handschuhe, das Sicherheitsdatenblatt lesen',
  prices: {
    title: 'Preise, um zu sehen, was ein Tausch kostet',
    hint: 'Preis eines Kilogramms, wie du es kaufst. In diesem Browser aufgehoben, dieselben wie auf dem Herstellblatt.',
    cost: 'Kosten',
    currency: 'Währung',
    dearer: (amount) => `${amount} teurer je kg`,
    cheaper: (amount) => `${amount} billiger je kg`,
    same: 'kostet gleich viel',
    lacking: (names) => `Kosten nicht bekannt: kein Preis für ${names}`,
  },
}
