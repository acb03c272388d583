import type { TSchema } from 'typebox'
import { Value } from 'typebox/value'
import { lessonFaults } from '#engine/index.ts'
import type { RawData, RawFile, World } from '#engine/index.ts'
import { lessonIsWellFormed } from '#engine/knowledge/lints/lesson-is-well-formed.ts'
import { LessonFile } from '#engine/model/lesson.ts'
import { LIVE_KINDS } from '#engine/model/lesson-live.ts'
import type { Problem } from '#engine/model/records.ts'

export const lessonFiles = (raw: RawData, ids: readonly string[]): RawFile[] =>
  (raw.lessons ?? []).filter(({ path }) => ids.length === 0 || ids.some((id) => path.endsWith(`/${id}.yaml`)))

/** What nobody may be told: a tool cannot know it. */
const PROMISES = /\b(?:is|are|be|stays?|completely|perfectly) (?:safe|certified|compliant|preserved)\b/i

/** A strange key is told once, by the object that holds it. */
const errorsOf = (schema: TSchema, data: unknown) =>
  [...Value.Errors(schema, data)].filter(({ message }) => message !== 'schema is false')

/** Faults of the shape, each at its place; of the live example those of its own kind. */
function shapeFaults({ path, data }: RawFile): Problem[] {
  const live = (data as { live?: { kind?: string } }).live
  const kind = LIVE_KINDS[live?.kind as keyof typeof LIVE_KINDS]
  const errors = errorsOf(LessonFile, data).filter(({ instancePath }) => !instancePath.startsWith('/live'))
  const liveErrors = kind ? errorsOf(kind, live) : []
  return [
    ...errors.map(({ instancePath, message, params }) => ({
      path: `${path}${instancePath}`,
      message: `${message} ${JSON.stringify(params)}`,
    })),
    ...liveErrors.map(({ instancePath, message, params }) => ({
      path: `${path}/live${instancePath}`,
      message: `${message} ${JSON.stringify(params)}`,
    })),
  ]
}

/** All that is wrong with one lesson: shape, names, promises, statements, live example. */
export function faultsOfFile(raw: RawData, world: World, file: RawFile): Problem[] {
  const formed = lessonIsWellFormed({ ...raw, lessons: [file] }, world.knowledge)
  const shape = shapeFaults(file)
  const promise = PROMISES.exec(JSON.stringify(file.data))?.[0]
  const told = promise === undefined ? [] : [{ path: file.path, message: `promises what nobody knows: "${promise}"` }]
  const lesson = shape.length === 0 ? world.knowledge.lessons.get(file.path.replace(/^.*\/|\.yaml$/g, '')) : undefined
  const said = lesson ? lessonFaults(world, lesson) : []
  return [...shape, ...formed, ...told, ...said.map((one) => ({ ...one, path: `${file.path}/${one.path}` }))]
}
