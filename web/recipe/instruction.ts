const VERB =
  /^(?:then\s+|slowly\s+|gently\s+|finally\s+|step\s*\d+[:.]?\s*)*(?:heat|mix|stir|melt|combine|blend|cool|adjust|pour|homogeni[sz]e|let|leave|weigh|dissolve|disperse|whisk|sprinkle|hydrate|emulsify|check|measure|test|bring|keep|hold|allow|fill|transfer|place|put|make|procedure|method|instructions?|directions?|process|store|yields?|makes|total|sum|batch|note|notes|recipe|formula|title|shelf\s+life|erhitzen|mischen|rühren|schmelzen|abkühlen|gesamt|summe|hinweis|zubereitung|herstellung|ansatz|ergibt|p\s?h)\b/i
/** Where the verb stands last in its clause, as in German. */
const VERB_LAST =
  /(?:erhitzen|erwärmen|schmelzen|mischen|rühren|abkühlen|lassen|füllen|einstellen|aufkochen|homogenisieren|zugeben|zusammengeben|einrühren|auflösen|gießen|hinzufügen)(?=[,;.!]|$)/i
const LIST_HEAD =
  /^(?:ingredients?|zutaten(?:liste)?|rezept(?:ur)?|ingr[ée]dients|ingredientes)(?:\s+(?:for|für|pour|para)\s[^:]*)?\s*:?$/i
const TITLE =
  /(?:cream|creme|crème|lotion|balm|salbe|shampoo|conditioner|spülung|serum|toner|deodorant|rezept|recipe)\b/i
const ADD = /^(?:add|zugeben|hinzufügen)\b\s*/i
const AMOUNT_FIRST = /^\d+(?:[.,]\d+)?\s*(?:%|g\b|kg\b|mg\b)/i

/** True when a line tells what to do or says something, rather than naming an ingredient with its amount. */
export function isInstruction(line: string): boolean {
  if (/^(?:\/\/|--|>|"""|'''|<!--)/.test(line)) return true
  if (ADD.test(line)) return !AMOUNT_FIRST.test(line.replace(ADD, ''))
  if (VERB.test(line) || LIST_HEAD.test(line)) return true
  if (VERB_LAST.test(line) && !/\d\s*(?:%|g\b)/i.test(line)) return true
  const words = line.split(/\s+/)
  const hasAmount = /\d\s*(?:%|g\b)|\d[\s.)]*$|q\.?s\.?|\b(?:to|ad)\s+100/i.test(line)
  return !hasAmount && (words.length > 9 || (words.length > 5 && /[.!?]$/.test(line)))
}

/** True for a line without a figure that names a kind of product: what a recipe is headed with. */
export const isTitle = (line: string): boolean => TITLE.test(line) && !/\d|q\.?\s?s/i.test(line)

/** "Add 3 g glycerin" is the ingredient line "3 g glycerin". */
export const withoutVerb = (line: string): string => line.replace(ADD, '')
