export { combobox } from './en-combobox.ts'
