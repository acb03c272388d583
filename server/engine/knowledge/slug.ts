function hyphened(text: string): string {
  const joined = text.toLowerCase().replace(/[^a-z0-9]+/g, '-')
  return joined.slice(joined.startsWith('-') ? 1 : 0, joined.endsWith('-') ? -1 : undefined)
}

/** Id of an INCI name: lower case, every run of other characters than a-z and 0-9 one hyphen. */
export const idOf = (inci: string): string =>
  /[+(]/.test(inci)
    ? inci
        .split(/\s+\+\s+|\s+\(and\)\s+/i)
        .map(hyphened)
        .join('-and-')
    : hyphened(inci)
