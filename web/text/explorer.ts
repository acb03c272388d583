export { explorer } from './en-explorer.ts'
