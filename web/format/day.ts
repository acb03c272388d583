const two = (n: number): string => String(n).padStart(2, '0')

/** The day of this machine's clock, YYYY-MM-DD. */
export function today(now = new Date()): string {
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}
