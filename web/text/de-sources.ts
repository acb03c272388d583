import { count } from './de-figures.ts'
import type { sources as english } from './en-sources.ts'
import type { Words } from './words.ts'

const statements = (n: number): string => count(n, 'Aussage', 'Aussagen')

/** Words of the pages about sources, in German. */
export const sources: Words<typeof english> = {
  title: 'Quellen',
  lead: 'Die Werke, auf denen die Aussagen hier ruhen. Eine Zahl ist so gut wie ihre Quelle: Bei jeder steht, wie sie gesehen wurde.',
  filter: 'Wörter aus Titel oder Fundort',
  kind: 'Art',
  anyKind: 'Jede Art',
  kinds: {
    law: 'Recht',
    standard: 'Norm oder Arzneibuch',
    paper: 'Fachartikel',
    book: 'Buch',
    opinion: 'Stellungnahme von Fachleuten',
    trade: 'Lieferant oder Patent',
    web: 'Webseite',
    data: 'Datensammlung',
    practice: 'übliche Praxis',
    memory: 'aus dem Gedächtnis',
    other: 'am Titel nicht zu erkennen',
  },
  kindRemark: 'nach Titel und Fundort',
  year: 'Jahr',
  noYear: 'nicht angegeben',
  place: 'Wo sie zu finden ist',
  grade: 'Güte',
  gradeRemark:
    'A ist eine Norm oder ein Originalartikel, D die Seite eines Lieferanten oder einer Privatperson, M das Gedächtnis',
  noGrade: 'nicht eingestuft',
  licence: 'Nutzungsbedingungen',
  note: 'Anmerkung',
  rests: 'Was darauf ruht',
  statements,
  restsOn: (n, records) => `${statements(n)}, in ${count(records, 'Datensatz', 'Datensätzen')}`,
  none: 'Keine Aussage eines Datensatzes ruht darauf. Sie steht hinter einer Tabelle, einer Regel oder einer Rechnung.',
  singleOnly: 'Ihre Werte werden nur bei dem einen Rohstoff gezeigt, nicht in einer Liste von vielen.',
  found: (n) => count(n, 'Quelle', 'Quellen'),
  nothing: 'Keine Quelle passt zu diesen Wörtern.',
  loading: 'Die Quellen werden geholt …',
  loadingOne: 'Die Quelle wird geholt …',
  unknown: 'Eine Quelle dieses Namens gibt es nicht.',
  next: 'Nächste Seite',
  first: 'Zurück zur ersten Seite',
  on: { fact: 'Wert', role: 'Rolle', relation: 'Beziehung', limit: 'Höchstmenge nach dem Recht' },
  about: 'Über',
  says: 'Sagt',
  list: 'Aussagen, die auf dieser Quelle ruhen',
  back: 'Alle Quellen',
  open: (id) => `Quelle ${id}: was sie ist und was auf ihr ruht`,
}
