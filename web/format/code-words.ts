import { language } from '#web/text/language.ts'
import { text } from '#web/text/text.ts'

type Codes = Readonly<Record<string, string>>

/** A code of the program within a sentence: it reads as English; other languages have their own word. */
const wordFor = (codes: Codes, code: string): string =>
  language === 'en' ? code : (codes[code]?.toLowerCase() ?? code)

/** How grave something is. */
export const severityWords = (severity: string): string => wordFor(text.finding.severity, severity)

/** How well something stands in. */
export const gradeWords = (grade: string): string => wordFor(text.swaps.grade, grade)
