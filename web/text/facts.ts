export { facts } from './en-facts.ts'
