export { recipes } from './en-recipes.ts'
