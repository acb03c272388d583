export { lessons } from './en-lessons.ts'
