import type { ErrorCode } from '#contract/error.ts'

/** What the caller gets to know beside the code. `at` is a JSON pointer; inside a formula it starts at the formula. */
export interface ErrorDetails {
  at?: string
  nearest?: string[]
}

/** Thrown by a route or a guard; the error handler turns it into the one shape that every error has. */
export class ApiError extends Error {
  override readonly name = 'ApiError'

  constructor(
    readonly statusCode: number,
    readonly code: ErrorCode,
    message: string,
    readonly details: ErrorDetails = {},
  ) {
    super(message)
  }

  /** The body on the wire. */
  body() {
    return { error: { code: this.code, message: this.message, ...this.details } }
  }
}
