/** Rows that a formula cannot be judged by, each group with its reason. The list may only shrink. */
export const NOT_CHECKABLE: readonly { reason: string; facts: readonly string[] }[] = [
  {
    reason: 'products for the mouth are no product of this tool: toothpaste, mouthwash, mouth spray',
    facts: [
      'EU-V-1-02',
      'EU-V-1-05',
      'EU-V-58-01',
      'EU-III-12-04',
      'EU-III-12-05',
      'EU-III-24-01',
      'EU-III-24-02',
      'EU-III-24-03',
      'EU-III-70-06',
      'EU-III-75-08',
      'EU-III-324-11',
      'EU-III-324-12',
      'EU-III-324-13',
      'EU-III-324-14',
      'EU-III-325-01',
      'EU-III-325-02',
      'EU-III-372-01',
      'EU-III-379-01',
      'EU-III-380-04',
      'EU-III-380-05',
      'EU-III-381-03',
    ],
  },
  {
    reason: 'the nano form has no name of its own in the inventory: the label asks whether a powder is nano',
    facts: ['EU-VI-27a-01', 'EU-VI-30a-01', 'EU-II-1726-01'],
  },
  {
    reason: 'the substance is no ingredient with an inventory name: an impurity, a contaminant or a drug',
    facts: [
      'EU-V-9-05',
      'EU-II-343-01',
      'EU-II-356-01',
      'EU-II-365-01',
      'EU-II-410-01',
      'US-CFR-700.11-01',
      'US-CFR-700.15-01',
      'US-CFR-700.23-01',
    ],
  },
  {
    reason: 'speaks of no ingredient: a rule on claims, kinds of product or proof of safety; the label asks',
    facts: [
      'EU-ART-17-01',
      'EU-ART-15-01',
      'US-CFR-700.27-01',
      'US-CFR-740.10-01',
      'US-CFR-740.17-01',
      'US-CFR-740.19-01',
    ],
  },
]

/** Rows that set nothing: definitions, numbers without an entry, wordings that are no longer in force. */
export const SETS_NOTHING: ReadonlySet<string> = new Set(['definition', 'deleted', 'superseded'])
