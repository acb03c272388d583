export { sources } from './en-sources.ts'
