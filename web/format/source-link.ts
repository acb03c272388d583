/** Address of a work from the place where it stands, where that begins with one ("doi.org/10…"); else null. */
export function sourceHref(locator: string): string | null {
  const [first = ''] = locator.trim().split(/[\s,;]+/)
  const bare = first.replace(/^https?:\/\//, '')
  return /^[a-z0-9-]+(?:\.[a-z0-9-]+)*\.[a-z]{2,}\/\S+$/i.test(bare) ? `https://${bare}` : null
}
