import { language } from '#web/text/language.ts'

/** In German as German writes dates; in English as the reader's own browser does, since English has several ways. */
const LOCALE = language === 'en' ? undefined : language

/** A moment in words: day and time. */
export const whenText = (iso: string): string =>
  new Intl.DateTimeFormat(LOCALE, { dateStyle: 'medium', timeStyle: 'short' }).format(new Date(iso))
