import { idOf } from '#engine/index.ts'
import type { ResolveResult, World } from '#engine/index.ts'

type Row = Record<string, string>
type Same = (inci: string) => string

/** One id for one substance: aliases, and blends in any order of their parts. */
export function idsBehind(world: World, inci: string): string {
  const parts = inci.split(/\s+\+\s+/).map((part) => world.find(idOf(part))?.id ?? idOf(part))
  return parts.sort().join('-and-')
}

const sorted = (id: string): string => id.split('-and-').sort().join('-and-')

const answers = (text: string | undefined): string[] => (text ?? '').split(' | ').filter((one) => one !== '')

const noted = (row: Row, word: string): string[] =>
  (row['note'] ?? '')
    .split('; ')
    .filter((part) => part.startsWith(`${word}: `))
    .flatMap((part) => answers(part.slice(word.length + 2)))

/** Whether a reply gives what the case asks for. */
export function passes(row: Row, result: ResolveResult, same: Same): boolean {
  const expected = answers(row['expected']).map(same)
  const offered = new Set(result.choices.map((choice) => sorted(choice.ingredient)))
  const found = result.ingredient === null ? '' : sorted(result.ingredient)
  if (row['must_ask'] === 'yes') {
    const choices = noted(row, 'choices').map(same)
    if (choices.length === 0) return result.status !== 'found'
    return result.status === 'ask' && choices.every((choice) => offered.has(choice))
  }
  if (expected.length === 0) return result.status !== 'found'
  if (result.status === 'found') return expected.includes(found)
  const askIsRight = (row['note'] ?? '').split('; ').includes('ask-ok')
  return askIsRight && result.status === 'ask' && expected.some((one) => offered.has(one))
}

/** Whether a reply is a question with the right one among its choices. */
export function asksRight(row: Row, result: ResolveResult, same: Same): boolean {
  const offered = new Set(result.choices.map((choice) => sorted(choice.ingredient)))
  return result.status === 'ask' && answers(row['expected']).some((inci) => offered.has(same(inci)))
}

/** Whether a substance that must never be picked silently was picked. */
export const pickedDanger = (row: Row, result: ResolveResult, same: Same): boolean =>
  result.ingredient !== null && noted(row, 'danger').map(same).includes(sorted(result.ingredient))
