/** Hands a text over as a file, without a server. */
export function download(name: string, type: string, text: string): void {
  const url = URL.createObjectURL(new Blob([text], { type }))
  const link = document.createElement('a')
  link.href = url
  link.download = name
  link.click()
  URL.revokeObjectURL(url)
}

/** Hands a table over. The mark in front tells a spreadsheet that names are UTF-8. */
export const downloadCsv = (name: string, table: string): void => download(name, 'text/csv', `\ufeff${table}`)

/** A name that any disk takes. */
export const fileWords = (name: string): string =>
  name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 60) || 'class'
