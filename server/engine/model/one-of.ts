import { Type } from 'typebox'

/** One word out of a list, as an enumeration (shorter errors than a union of literals). */
export const oneOf = <T extends string>(...words: T[]) => Type.Unsafe<T>({ type: 'string', enum: words })
