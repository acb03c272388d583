import { rangeText, upTo } from './de-figures.ts'
import type { batch as english } from './en-batch.ts'
import type { Words } from './words.ts'

const UNITS = {
  minutes: ['Minute', 'Minuten'],
  hours: ['Stunde', 'Stunden'],
  days: ['Tag', 'Tage'],
  weeks: ['Woche', 'Wochen'],
} as const

/** Words of the batch sheet, in German. */
export const batch: Words<typeof english> = {
  batch: {
    open: 'Herstellblatt',
    title: 'Herstellblatt',
    of: (name) => `Herstellblatt: ${name}`,
    lead: 'Was einzuwiegen ist und in welcher Folge gearbeitet wird, für einen Ansatz der Rezeptur auf der Werkbank.',
    back: 'Zurück zur Werkbank',
    print: 'Dieses Blatt drucken',
    empty: 'Auf der Werkbank liegt noch keine Rezeptur.',
    lacking: 'Das Blatt wartet, bis sich die Rezeptur prüfen lässt:',
    loading: 'Das Blatt wird ausgerechnet …',
    old: 'Wird neu ausgerechnet …',
    noSize: 'Wie viel soll es werden? Die Ansatzgröße angeben.',
    inputs: {
      title: 'Dieser Ansatz',
      size: 'Ansatz, g',
      scale: 'Die Waage zeigt, g',
      overage: 'Zugabe, %',
      overageHint: 'Für das, was im Becher bleibt',
      date: 'Hergestellt am',
      code: 'Chargennummer',
      codeHint: 'Deine eigene, auf Tiegel und Blatt',
      currency: 'Währung',
      currencyHint: 'Für die Preise darunter',
    },
    line: {
      form: (form) => `hergestellt als: ${form}`,
      size: (batch_g) => `Ansatz ${upTo(batch_g, 3)} g`,
      weighed: (weighed_g) => `eingewogen ${upTo(weighed_g, 3)} g`,
      scale: (step_g) => `Waage ${upTo(step_g, 3)} g`,
      date: (date) => `hergestellt am ${date}`,
      code: (code) => `Charge ${code}`,
      by: 'von',
      lots: 'Chargen der Rohstoffe in der Tabelle',
    },
    remarks: {
      title: 'Vor dem Einwiegen',
      none: 'Die Waage zeigt jede Zeile genau genug.',
      more: (n) => (n === 1 ? '1 weitere Bemerkung' : `${n} weitere Bemerkungen`),
    },
    weigh: {
      title: 'Einwiegen',
      lead: (step_g) => `Alle Zeilen ergeben zusammen den Ansatz, auf ${upTo(step_g, 3)} g.`,
      caption: 'Was einzuwiegen ist, nach Phasen',
      done: 'Eingewogen',
      doneOf: (name) => `${name} ist eingewogen`,
      ingredient: 'Rohstoff',
      grams: 'Einwiegen, g',
      share: 'Anteil %',
      price: 'Preis je kg',
      priceHint: 'je kg',
      priceOf: (name) => `Preis für ein Kilogramm ${name}`,
      cost: 'Kosten',
      lot: 'Charge',
      phase: (letter) => `Phase ${letter}`,
      sum: 'Summe',
      split: (step) => `ein Teil; der Rest kommt hinein bei: ${step}`,
      why: 'Warum hier',
      whyOf: (name) => `Warum ${name} hier hineinkommt`,
      strengthStated: (percent) => `${upTo(percent, 1)} % Wirkstoffgehalt, wie angegeben`,
      strengthRecord: (percent) => `meist ${upTo(percent, 1)} % Wirkstoffgehalt`,
      total: (cost) => `Material ${cost}`,
      per100: (cost) => `${cost} für 100 g`,
      known: (cost) => `${cost} für die Zeilen mit Preis`,
      missing: (names) => `Kein Preis: ${names}`,
      clear: 'Alle Haken entfernen',
    },
    steps: {
      title: 'Arbeitsfolge',
      lead: 'Schritte, die nur einen früheren brauchen, können nebeneinander laufen.',
      doneOf: (title) => `Erledigt: ${title}`,
      adds: 'Hinein kommt:',
      after: (numbers) => `kann nach Schritt ${numbers} beginnen`,
      holds: (mass_g) => `Der Becher enthält dann ${mass_g} g, ohne sein eigenes Gewicht.`,
      why: 'Warum, und woher es stammt',
      caution: 'Vorsicht',
      temp: (range) =>
        range.max !== undefined && range.min === undefined
          ? `höchstens ${upTo(range.max, 1)} °C`
          : `${rangeText(range)} °C`,
      time: (min, max, unit) =>
        `${min === max ? upTo(min, 1) : `${upTo(min, 1)} bis ${upTo(max, 1)}`} ${UNITS[unit][max === 1 ? 0 : 1]}`,
      practice: 'übliche Praxis',
      claimed: 'erfasst',
      stated: 'wie in der Rezeptur angegeben',
    },
    looks: {
      title: 'Wieder ansehen',
      caption: 'Tage, an denen das Produkt angesehen wird, mit Platz für das, was zu sehen war',
      day: 'Tag',
      date: 'Datum',
      look: 'Worauf achten',
      seen: 'Gesehen',
    },
    check: {
      title: 'Was die Prüfung zur Rezeptur sagt',
      more: 'Alles davon steht auf der Werkbank bei der jeweiligen Zeile.',
    },
    written: {
      ph: 'pH gemessen',
      acid: 'verwendete Säure oder Base',
      filled: 'abgefüllt',
      by: 'hergestellt von',
    },
  },
}
