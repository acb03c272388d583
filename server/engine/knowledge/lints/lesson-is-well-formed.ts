import { aboutOf } from '#engine/knowledge/expand-lessons.ts'
import { isObject } from '#engine/knowledge/expand-claims.ts'
import type { RawFile } from '#engine/knowledge/raw.ts'
import { ASKED_KINDS, FACT_KINDS } from '#engine/model/lesson.ts'
import { LIVE_KINDS } from '#engine/model/lesson-live.ts'
import { UNPRINTED } from './source-is-listed.ts'
import type { Lint, Vocabulary } from './lint.ts'

const WORDS = { least: 60, most: 350 }
const KINDS: ReadonlySet<string> = new Set([...Object.keys(FACT_KINDS), ...Object.keys(ASKED_KINDS)])

const listOf = (value: unknown): unknown[] => (Array.isArray(value) ? value : [])
const wordsIn = (text: unknown): number => String(text).split(/\s+/).filter(Boolean).length

/** Every recipe of a lesson that is named by an id, and every rule. */
function namesIn(value: unknown, key: string, found: string[] = []): string[] {
  if (Array.isArray(value)) for (const item of value) namesIn(item, key, found)
  else if (isObject(value)) {
    for (const [name, item] of Object.entries(value)) {
      if (name === key && typeof item === 'string') found.push(item)
      else namesIn(item, key, found)
    }
  }
  return found
}

function unknownNames(data: Record<string, unknown>, words: Vocabulary): string[] {
  const recipes = new Set(words.practice.map(({ id }) => id))
  const practise = isObject(data['practise']) ? listOf(data['practise']['roles']) : []
  const live = isObject(data['live']) ? data['live'] : {}
  const cited = [data['seen'], ...listOf(data['sources'])].flatMap((one) =>
    isObject(one) ? [String(one['source'])] : [],
  )
  const rules = [...namesIn(data, 'brings'), ...namesIn(data['states'], 'rule')]
  return [
    ...[...practise, ...namesIn(live, 'role')]
      .filter((id) => !words.roles.has(String(id)))
      .map((id) => `there is no role ${String(id)}`),
    ...listOf(data['next'])
      .filter((id) => !words.lessons.has(String(id)))
      .map((id) => `there is no lesson ${String(id)}`),
    ...namesIn(data, 'recipe')
      .filter((id) => !recipes.has(id))
      .map((id) => `there is no practice recipe ${id}`),
    ...rules.filter((id) => !words.rules.has(id)).map((id) => `there is no rule ${id}`),
    ...cited.filter((id) => !UNPRINTED.has(id) && !words.sources.has(id)).map((id) => `${id} is in no list of sources`),
  ]
}

function faultyStatements(states: readonly unknown[]): string[] {
  return states.flatMap((statement, at) => {
    const keys = isObject(statement) ? Object.keys(statement).filter((key) => key !== 'says') : []
    const [kind = ''] = keys
    return keys.length === 1 && KINDS.has(kind)
      ? []
      : [`states/${at}: expected says and one of ${[...KINDS].join(', ')}`]
  })
}

function faultsOf({ path, data }: RawFile, words: Vocabulary): string[] {
  if (!isObject(data)) return ['is no record']
  const id = path.replace(/^.*\/|\.yaml$/g, '')
  const count = listOf(data['parts']).reduce<number>(
    (sum, part) => sum + wordsIn(isObject(part) ? part['text'] : ''),
    0,
  )
  const kind = isObject(data['live']) ? String(data['live']['kind']) : 'none'
  return [
    ...(data['id'] === id ? [] : [`file name and id ${String(data['id'])} differ`]),
    ...(aboutOf(path) === 'role' && !words.roles.has(id) ? [`there is no role ${id}`] : []),
    ...(aboutOf(path) === 'idea' && words.roles.has(id) ? [`${id} is a role; an idea takes another id`] : []),
    ...(count < WORDS.least || count > WORDS.most
      ? [`the parts hold ${count} words, expected ${WORDS.least} to ${WORDS.most}`]
      : []),
    ...(kind in LIVE_KINDS ? [] : [`live/kind: ${kind} is not one of ${Object.keys(LIVE_KINDS).join(', ')}`]),
    ...faultyStatements(listOf(data['states'])),
    ...unknownNames(data, words),
  ]
}

/** Guards against a lesson that points at nothing, states nothing that can be checked, or is no longer short. */
export const lessonIsWellFormed: Lint = (raw, words) => {
  const files = raw.lessons ?? []
  const twice = files.filter(
    ({ path }, at) => files.findIndex((one) => one.path.endsWith(path.replace(/^.*\//, '/'))) !== at,
  )
  return [
    ...files.flatMap((file) => faultsOf(file, words).map((message) => ({ path: file.path, message }))),
    ...twice.map(({ path }) => ({ path, message: 'another lesson has this id' })),
  ]
}
