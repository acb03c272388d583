import { describe, expect, test } from 'vitest'
import type { LessonFile } from '#engine/model/lesson.ts'
import { faultsOfFile, lessonFiles } from '../score/lesson-faults.ts'
import { realRaw, realWorld } from '../helpers.ts'

const world = realWorld()
const files = lessonFiles(realRaw(), [])

test('every file is a lesson of its own', () => {
  expect(files.length).toBeGreaterThanOrEqual(4)
  expect(world.knowledge.lessons.size).toBe(files.length)
  const titles = [...world.knowledge.lessons.values()].map(({ title }) => title)
  expect(titles.filter((title, at) => titles.indexOf(title) !== at)).toEqual([])
})

test.each(files.map((file) => [file.path, file] as const))(
  '%s is well formed, and the graph bears out what it states and shows',
  (_path, file) => expect(faultsOfFile(realRaw(), world, file)).toEqual([]),
  30_000,
)

describe('the check', () => {
  const file = files.find(({ path }) => path === 'lessons/ideas/preservative-ph-window.yaml')!
  const lesson = file.data as LessonFile
  const faultsWith = (change: Partial<LessonFile>): string[] => {
    const id = 'preservative-ph-window'
    const changed = { ...lesson, ...change }
    const lessons = new Map([[id, { ...changed, about: { kind: 'idea' as const, id } }]])
    const changedWorld = { ...world, knowledge: { ...world.knowledge, lessons } }
    return faultsOfFile(realRaw(), changedWorld, { path: file.path, data: changed }).map(
      ({ path, message }) => `${path.replace(/^.*yaml/, '')} ${message}`,
    )
  }
  const states = (...more: LessonFile['states']) => faultsWith({ states: [...lesson.states, ...more], next: [] })

  test('lets the lesson as it stands pass', () => expect(faultsWith({ next: [] })).toEqual([]))
  test('names a false claim with what is on record', () => {
    expect(
      states({
        says: 'It works up to pH 8.',
        claim: { ingredient: 'sodium-benzoate', property: 'ph_effective', max: 8 },
      }),
    ).toEqual([expect.stringMatching(/^\/states\/6 "It works up to pH 8\." is not so: .*2 to 5 pH/)])
  })
  test('names a finding that does not come, with those that do', () => {
    expect(
      states({
        says: 'It is too hot.',
        finding: { recipe: 'hydrosol-toner', change: { ph: 7 }, brings: 'heat-too-hot' },
      }),
    ).toEqual([expect.stringMatching(/^\/states\/6 .*new findings: .*preservative-window/)])
  })
  test('names a change of what is not in the recipe', () => {
    const change = { remove: 'urea' }
    expect(
      states({ says: 'Nothing changes.', no_finding: { recipe: 'hydrosol-toner', change, rule: 'ph-works' } }),
    ).toEqual([expect.stringMatching(/holds no urea/)])
  })
  test('names a key that means nothing, a promise and a slider that starts outside', () => {
    expect(faultsWith({ next: [], ...{ colour: 'red' } })).toEqual([expect.stringMatching(/colour/)])
    expect(faultsWith({ next: [], title: 'Now it is safe' })).toEqual([expect.stringMatching(/"is safe"/)])
    expect(
      faultsWith({
        next: [],
        live: { ...(lesson.live as Extract<LessonFile['live'], { kind: 'ph-slider' }>), start: 9 },
      }),
    ).toEqual([expect.stringMatching(/^\/live start 9 does not lie between 3 and 8/)])
  })
  test('names two kinds in one statement', () => {
    const [first] = lesson.states
    const both = { ...first!, plays: { ingredient: 'sodium-benzoate', role: 'preservative' } }
    expect(faultsWith({ next: [], states: [...lesson.states, both] }).join()).toMatch(
      /states\/6: expected says and one of/,
    )
  })
})
