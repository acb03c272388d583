import { Type } from 'typebox'
import type { TProperties } from 'typebox'

/** An object that takes no other keys than these: an unknown key is an error that names it. */
export const closed = <T extends TProperties>(properties: T) => Type.Object(properties, { additionalProperties: false })
export { oneOf } from '#engine/model/one-of.ts'
