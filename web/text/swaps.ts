export { swaps } from './en-swaps.ts'
