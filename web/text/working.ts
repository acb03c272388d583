export { working } from './en-working.ts'
