import { language } from '#web/text/language.ts'

/** A heading as it stands within a sentence: English takes the capital away, German nouns keep theirs. */
export const lowered = (words: string): string => (language === 'en' ? words.toLowerCase() : words)
