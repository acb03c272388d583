export { limitOf, wordsOf } from '#answers/query.ts'
