export { terms } from './en-terms.ts'
