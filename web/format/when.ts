/** A moment in the words of the reader's own language: day and time. */
export const whenText = (iso: string): string =>
  new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'short' }).format(new Date(iso))
