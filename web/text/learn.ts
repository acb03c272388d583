export { learn } from './en-learn.ts'
