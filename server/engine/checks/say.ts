/** How rules put things into words; the layers before the checks say it the same way. */
export { because, becauseOf, firstNames, nameOf, shareFact, sourcesOf } from '#engine/formula/say.ts'
