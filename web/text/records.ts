export { records } from './en-records.ts'
