import { count, upTo } from './de-figures.ts'
import type { learn as english } from './en-learn.ts'
import type { Words } from './words.ts'

const questions = (n: number): string => count(n, 'Frage', 'Fragen')

/** Words of the page to practise on, in German. */
export const learn: Words<typeof english> = {
  title: 'Lernen',
  lead: 'Fragen aus denselben Tatsachen und Regeln, die deine Rezepturen prüfen. Jede Antwort nennt ihren Grund und ihre Quelle.',
  practise: 'Üben',
  about: (roles) => `Nur zu: ${roles}. Für alle Rollen unten eine Art wählen.`,
  kind: 'Frag mich nach',
  kinds: {
    all: 'Allem',
    'plays-role': 'Wer welche Rolle erfüllt',
    'holds-at-ph': 'Wer bei einem pH hält',
    'active-matter': 'Dosen nach Wirkstoffgehalt',
    'find-fault': 'Was hier nicht stimmt',
    'rule-speaks': 'Was die Prüfung sagt',
    'what-if': 'Was geschieht, wenn',
    'swap-here': 'Ob dieser Tausch hält',
    'order-work': 'Welcher Schritt zuerst kommt',
  },
  loading: 'Die Fragen werden gestellt …',
  none: 'Fragen dieser Art lassen sich nicht stellen.',
  place: (at, of) => `Frage ${at} von ${of}`,
  difficulty: { 1: 'leicht', 2: 'mittel', 3: 'schwer' },
  choices: 'Deine Antwort',
  answer: 'Antworten',
  judging: 'Wird nachgeschlagen …',
  right: 'Richtig.',
  wrong: (key) => `Nein. Es ist: ${key}`,
  sources: 'Quellen',
  next: 'Nächste Frage',
  more: 'Noch ein Satz Fragen',
  finish: 'Zurück zu neuen Fragen',
  done: (right, of) => `${right} von ${of} richtig in diesem Satz.`,
  changed: 'Die Daten haben sich geändert, seit diese Frage gestellt wurde; sie ist aus deiner Liste genommen.',
  recipe: (title) => `Rezeptur: ${title}`,
  cautions: 'Vorsicht',
  line: 'Rohstoff',
  share: 'Anteil, %',
  fills: 'ad 100',
  conditions: (ph, hottest_c) =>
    [
      ph === null ? 'kein pH (kein Wasser)' : `pH ${upTo(ph, 2)}`,
      hottest_c === null ? null : `heißester Punkt ${upTo(hottest_c, 1)} °C`,
    ]
      .filter((one) => one !== null)
      .join(', '),
  review: {
    title: 'Noch einmal',
    lead: 'Was du beantwortet hast, kommt wieder, wenn du dabei bist, es zu vergessen. Das ist nur in diesem Browser aufgehoben.',
    due: (now, later) =>
      now + later === 0 ? 'Heute kommt nichts mehr.' : `${questions(now)} jetzt fällig, ${later} später am Tag.`,
    known: (n) => `${questions(n)} bisher beantwortet.`,
    start: 'Durchgehen, was fällig ist',
    save: 'Fortschritt in einer Datei sichern',
    file: 'understudy-progress.json',
    load: 'Fortschritt aus einer Datei hinzufügen',
    loaded: (n) => `${questions(n)} jetzt in der Liste.`,
    unreadable: 'Diese Datei enthält keinen lesbaren Fortschritt.',
    notKept: 'Dieser Browser hebt deinen Fortschritt nicht auf: Nach einem neuen Laden ist er weg.',
  },
}
