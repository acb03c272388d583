export { whatIf } from './en-what-if.ts'
