/** Short forms that are said letter by letter; everything else of an INCI name reads better in small letters. */
const LETTERS =
  /\b(?:peg|ppg|ci|edta|vp|va|dmdm|mea|dea|tea|mipa|dipa|pca|bht|bha|hc|hcl|pvp|se|amp|tbhq|nta|pg|hdi|c\d+(?:-\d+)?)\b/g

/** An INCI name in sentence case: "Cetearyl olivate (and) sorbitan olivate", "PEG-40 hydrogenated castor oil". */
export const readableName = (inci: string): string =>
  inci
    .toLowerCase()
    .replace(LETTERS, (word) => word.toUpperCase())
    .replace(/^\p{L}/u, (letter) => letter.toUpperCase())
