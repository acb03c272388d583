/** Guards a numeric argument. @throws RangeError naming the argument, the range and what came. */
export function mustBeIn(name: string, value: number, min: number, max: number): void {
  if (!(value >= min && value <= max)) throw new RangeError(`${name}: expected ${min} to ${max}, got ${value}`)
}
