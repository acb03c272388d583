export { label } from './en-label.ts'
