export { compare } from './en-compare.ts'
