export { calculations } from './en-calculations.ts'
