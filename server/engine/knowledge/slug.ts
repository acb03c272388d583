/** Id of an INCI name: lower case, every run of other characters than a-z and 0-9 one hyphen. */
export function idOf(inci: string): string {
  return inci
    .split(/\s+\+\s+|\s+\(and\)\s+/i)
    .map((part) =>
      part
        .toLowerCase()
        .replace(/[^a-z0-9]+/g, '-')
        .replace(/^-|-$/g, ''),
    )
    .join('-and-')
}
