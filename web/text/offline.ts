export { offline } from './en-offline.ts'
