export { batch } from './en-batch.ts'
