import type { offline as english } from './en-offline.ts'
import type { Words } from './words.ts'

/** Words on working without a server, and on newer versions of the page, in German. */
export const offline: Words<typeof english> = {
  starting: 'Der Server antwortet nicht. Diese Seite macht sich bereit, selbst zu antworten …',
  here: (version) =>
    `Der Server antwortet nicht: Die Antworten kommen aus dieser Seite. Daten der Fassung ${version}. Was du eingibst, ist in diesem Browser aufgehoben.`,
  unable:
    'Der Server antwortet nicht, und diese Seite hat noch keine eigenen Daten. Was auf der Werkbank liegt, ist in diesem Browser aufgehoben; sobald der Server wieder da ist, wird neu gefragt.',
  noServer: 'Der Server ist nicht erreichbar',
  serverSaid: (status) => `Der Server antwortete mit ${status}`,
  back: 'Der Server ist wieder da: Die Antworten kommen wieder von ihm.',
  ready: 'Diese Seite ist in deinem Browser aufgehoben: Sie antwortet auch ohne Verbindung.',
  newer: 'Eine neuere Fassung dieser Seite liegt bereit. Was auf der Werkbank liegt, bleibt.',
  takeNewer: 'Laden',
  looseText: 'Im Feld für eine Rezeptur steht Text, der noch nicht auf der Werkbank liegt und verloren ginge.',
  takeAnyway: 'Trotzdem laden',
}
