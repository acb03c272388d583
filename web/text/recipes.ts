import { recipes as english } from './en-recipes.ts'
import { german } from './german.ts'
import type { Words } from './words.ts'

export const recipes: Words<typeof english> = german?.recipes ?? english
