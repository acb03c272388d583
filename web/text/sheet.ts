export { sheet } from './en-sheet.ts'
