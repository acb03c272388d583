import { precise, upTo } from './de-figures.ts'
import type { label as english } from './en-label.ts'
import type { Words } from './words.ts'

const figure = (value: number): string => (value >= 1 ? upTo(value, 2) : precise(value, 2))

/** Words of the label page, in German. */
export const label: Words<typeof english> = {
  open: 'Etikett',
  title: 'Etikett',
  of: (name) => `Etikett: ${name}`,
  lead: 'Was das Recht auf dem Etikett verlangt, soweit die Rezeptur es erkennen lässt. Der Rest steht als Fragen an dich und deine Lieferanten da.',
  caution:
    'Keine Rechtsberatung und keine Freigabe eines Etiketts. Das Recht deines Landes und die Sicherheitsbewertung haben das letzte Wort.',
  back: 'Zurück zur Werkbank',
  print: 'Drucken',
  empty: 'Auf der Werkbank liegt noch keine Rezeptur.',
  lacking: 'Das Etikett wartet, bis sich die Rezeptur prüfen lässt:',
  loading: 'Die Liste wird geschrieben …',
  old: 'Die Liste wird neu geschrieben …',
  placedOn: 'Tag, an dem die Ware auf den Markt kommt',
  placedOnHint: 'Leer lassen für den erfassten Stand des Rechts',
  list: {
    title: 'Liste der Bestandteile',
    text: 'Liste zum Kopieren',
    copy: 'Liste kopieren',
    copied: 'Kopiert.',
    notCopied: 'Dein Browser erlaubt hier kein Kopieren. Die Liste ist markiert: mit der Tastatur kopieren.',
  },
  positions: {
    title: 'Warum es dort steht',
    caption: 'Jeder Platz der Liste mit Anteil, Begründung und dem, was ihn mitbringt',
    place: 'Nr.',
    name: 'Name',
    share: 'Anteil',
    why: 'Warum dort',
    from: 'Aus',
  },
  allergens: {
    title: 'Duftstoffallergene',
    caption: 'Jedes Allergen mit seiner Summe, mit dem, was es mitbringt, und ob es anzugeben ist',
    none: 'Von nichts in der Rezeptur ist bekannt, dass es ein Duftstoffallergen der Liste mitbringt.',
    name: 'Allergen',
    sum: 'Summe',
    declare: 'Angeben',
    yes: 'ja',
    no: 'nein',
    from: 'Aus',
    why: 'Warum',
    remark:
      'Was ätherische Öle mitbringen, ist die Spanne üblicher Chargen, aus dem Gedächtnis. Die Summe wird nach ihrem oberen Ende beurteilt; die Analyse deiner Charge entscheidet.',
  },
  warnings: {
    title: 'Wortlaut, den das Recht vorschreibt',
    none: 'Keiner der erfassten Einträge schreibt für diese Rezeptur einen Wortlaut vor.',
  },
  questions: {
    title: 'Was nur du oder der Lieferant sagen kann',
    standing: 'Bei jedem Etikett gefragt',
  },
  findings: {
    title: 'Was das Recht zur Rezeptur sagt',
    none: 'Kein erfasster Eintrag hat Einwände. Über Einträge, die nicht erfasst sind, wird nicht geurteilt.',
    notCovered: 'Listen, die nicht beurteilt wurden',
  },
  rules: { title: 'Wie die Liste entsteht' },
  share: ({ min, max }) => (figure(min) === figure(max) ? `${figure(max)} %` : `${figure(min)} bis ${figure(max)} %`),
}
