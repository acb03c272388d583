const BULLET = /^(?:[-–—*•·▪◦●○☐☑✓✔‣⁃+]|\[[ xX]?\])\s+/
const NUMBERED = /^\(?\d{1,2}(?:\)\s*|\.\s+)(?=\S)/

/** Takes off what only decorates a line: odd spaces, bullets, numbering, marks for bold. */
export function tidyLine(raw: string): string {
  let line = raw
    .replace(/[\u200b-\u200d\ufeff]/g, '')
    .replace(/[\u00a0\u202f\u2009]/g, ' ')
    .replace(/\*\*|__/g, '')
    .trim()
  for (let before = ''; before !== line;) {
    before = line
    line = line
      .replace(BULLET, '')
      .replace(/^[•·▪◦●○☐☑✓✔‣⁃](?=\S)/, '')
      .replace(/^-(?=[A-Za-z])/, '')
  }
  return line
    .replace(NUMBERED, (mark) => (/^\d/.test(line.slice(mark.length)) && !mark.includes(')') ? mark : ''))
    .trim()
}
