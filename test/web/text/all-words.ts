import * as de from '#web/text/de.ts'
import { batch } from '#web/text/en-batch.ts'
import { bench } from '#web/text/en-bench.ts'
import { calculations } from '#web/text/en-calculations.ts'
import { combobox } from '#web/text/en-combobox.ts'
import { compare } from '#web/text/en-compare.ts'
import { explorerLinks } from '#web/text/en-explorer-links.ts'
import { explorer } from '#web/text/en-explorer.ts'
import { facts } from '#web/text/en-facts.ts'
import { label } from '#web/text/en-label.ts'
import { learn } from '#web/text/en-learn.ts'
import { lessons } from '#web/text/en-lessons.ts'
import { offline } from '#web/text/en-offline.ts'
import { recipes } from '#web/text/en-recipes.ts'
import { records } from '#web/text/en-records.ts'
import { sheet } from '#web/text/en-sheet.ts'
import { sources } from '#web/text/en-sources.ts'
import { swaps } from '#web/text/en-swaps.ts'
import { teach } from '#web/text/en-teach.ts'
import { terms } from '#web/text/en-terms.ts'
import { whatIf } from '#web/text/en-what-if.ts'
import { working } from '#web/text/en-working.ts'

export const ENGLISH: Readonly<Record<string, unknown>> = {
  batch,
  bench,
  calculations,
  combobox,
  compare,
  explorerLinks,
  explorer,
  facts,
  label,
  learn,
  lessons,
  offline,
  recipes,
  records,
  sheet,
  sources,
  swaps,
  teach,
  terms,
  whatIf,
  working,
}

export const GERMAN: Readonly<Record<string, unknown>> = de
