import type { combobox as english } from './en-combobox.ts'
import type { Words } from './words.ts'

/** Words of the field that suggests names, in German. */
export const combobox: Words<typeof english> = {
  list: 'Namen, die passen',
  searching: 'Wird gesucht …',
  none: 'Kein Name passt. Die Eingabetaste lässt den Text, wie er ist.',
  failed: 'Die Namensliste ist nicht erreichbar. Die Eingabetaste lässt den Text, wie er ist.',
  count: (n) => (n === 1 ? 'Ein Name passt' : `${n} Namen passen`),
  hint: 'Pfeiltasten wählen, die Eingabetaste übernimmt. Ohne Auswahl lässt sie den Text, wie er ist.',
  tiers: { full: 'voller Datensatz', short: 'kurzer Datensatz', inventory: 'nur Name und Funktion' },
  known: (name) => `„${name}“`,
}
