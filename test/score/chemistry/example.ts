/** One worked number of the literature beside what the program says. */
export interface Example {
  /** calculation or question, as it is printed */
  topic: string
  id: string
  /** known to disagree: shown with both values, not counted */
  flagged: boolean
  /** what is printed, with its unit and tolerance where one is stated */
  expected: string
  got: string
  within: boolean
}
