import { count, upTo } from './de-figures.ts'
import type { recipes as english } from './en-recipes.ts'
import type { Words } from './words.ts'

const lines = (n: number): string => count(n, 'Zeile', 'Zeilen')

/** Words of the list of recipes, in German. */
export const recipes: Words<typeof english> = {
  title: 'Meine Rezepturen',
  lead: 'Sie sind in diesem Browser aufgehoben, auf diesem Gerät, und gehen nirgendwo anders hin. Ein Link in der Adresse trägt eine ganze Rezeptur.',
  empty: 'Hier ist noch keine Rezeptur. Was auf der Werkbank liegt, wird von selbst aufgehoben.',
  toBench: 'Zur Werkbank',
  open: 'Öffnen',
  openOf: (name) => `${name} öffnen`,
  copy: 'Kopieren',
  copyOf: (name) => `${name} kopieren`,
  copyName: (name) => `${name} (Kopie)`,
  copied: (name) => `${name} ist angelegt.`,
  rename: 'Umbenennen',
  renameOf: (name) => `${name} umbenennen`,
  renamed: (name) => `Die Rezeptur heißt jetzt ${name}.`,
  newName: 'Neuer Name',
  keep: 'Den Namen behalten',
  remove: 'Entfernen',
  removeOf: (name) => `${name} entfernen`,
  removed: (name) => `${name} ist entfernt.`,
  putBack: 'Zurückholen',
  isBack: (name) => `${name} ist wieder da.`,
  isOpen: 'auf der Werkbank',
  changed: (when) => `geändert ${when}`,
  size: (n, total_g) => (total_g === null ? lines(n) : `${lines(n)}, ${upTo(total_g, 1)} g`),
  newRecipe: 'Neue Rezeptur',
  startedNew: 'Die Werkbank ist leer für eine neue Rezeptur. Die vorige bleibt in deiner Liste.',
  compare: 'Zwei vergleichen',
  full: 'Dieser Browser will nicht mehr aufheben. Eine Rezeptur entfernen, oder die Adresse einer Rezeptur kopieren, um sie anderswo aufzuheben.',
  fromLink: 'Diese Rezeptur kam mit dem Link. Sie ist neben deinen eigenen aufgehoben.',
  backToOwn: (name) => `Zurück zu ${name}`,
  list: 'Rezepturen auf diesem Gerät',
  noPlace: 'Deine Rezepturen',
}
