/** The four groups as tables write them → as records do. */
const GROUPS: Readonly<Record<string, string>> = {
  'gram-positive': 'gramPositive',
  'gram-negative': 'gramNegative',
  yeast: 'yeast',
  mould: 'mould',
}

/** How a table says that its source tells nothing of a group: the group is left out, never graded "none". */
const UNTOLD = 'unknown'

/**
 * A spectrum that a table grades group by group ("gram-positive: strong; yeast: weak").
 * @returns the grade of each group that has one; undefined where the text is a phrase, which is for people to read
 */
export function spectrumOf(text: string, grades: readonly string[]): Record<string, string> | undefined {
  const spectrum: Record<string, string> = {}
  for (const part of text.split(';')) {
    const [name = '', grade = '', ...more] = part.split(':').map((word) => word.trim())
    const group = GROUPS[name]
    if (!group || more.length > 0 || !(grade === UNTOLD || grades.includes(grade))) return undefined
    if (grade !== UNTOLD) spectrum[group] = grade
  }
  return Object.keys(spectrum).length > 0 ? spectrum : undefined
}
