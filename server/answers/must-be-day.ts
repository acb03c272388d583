import { ApiError } from './api-error.ts'

/** @throws ApiError 400 for a day that the calendar does not have */
export function mustBeDay(day: string | undefined): void {
  if (day === undefined) return
  const time = Date.parse(`${day}T00:00:00Z`)
  if (!Number.isNaN(time) && new Date(time).toISOString().startsWith(day)) return
  throw new ApiError(400, 'bad-request', `placedOn: there is no day ${day}`, { at: '/placedOn' })
}
