export { bench } from './en-bench.ts'
