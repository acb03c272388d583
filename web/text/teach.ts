export { teach } from './en-teach.ts'
