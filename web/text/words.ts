/** The form of a group of words: the same keys and functions as the English one, in whatever language. */
export type Words<T> = T extends string
  ? string
  : T extends (...args: infer A) => infer R
    ? (...args: A) => Words<R>
    : { readonly [K in keyof T]: Words<T[K]> }
