export { ApiError } from '#answers/api-error.ts'
