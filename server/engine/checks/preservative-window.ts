import { outsideWindow } from '#engine/preservation/ph-findings.ts'
import type { Check } from './check.ts'

/** rule:preservative-window. Why, severity and worked cases: graph-data/rules/preservative-window.yaml */
export const preservativeWindow: Check = outsideWindow
