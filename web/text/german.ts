import { language } from './language.ts'

/**
 * All German words, where the page speaks German; one file of the build, which no one else loads.
 * It is waited for while the modules of the page are still starting, so `de.ts` and what it imports may take nothing but
 * types from the rest of the page: a module that waits for its own importer never comes.
 */
export const german = language === 'de' ? await import('./de.ts') : null
