import { describe, expect, test } from 'vitest'
import { english } from '#engine/words/say.ts'
import { realWorld } from '../../helpers.ts'

const { knowledge, subjects } = realWorld()
const german = knowledge.languages.get('de') ?? new Map<string, string>()

/** Acts that are called by their own name in every language. */
const OWN_NAMES = ['21 CFR', 'Federal Food, Drug, and Cosmetic Act']

const rows = knowledge.limits.flatMap((limit) => limit.rows)
const needs = subjects.flatMap((subject) => subject.needs).filter(({ need }) => need !== 'process')
const brought = new Set(
  [...knowledge.compositions.values()].flatMap(({ parts }) => parts.map(({ substance }) => substance)),
)
const isBrought = (member: string): boolean => brought.has(member)

const words = (id: string): string => id.replace(/^(class|role):/, '').replaceAll('-', ' ')

/** Words of the data that findings show as they look them up, by where they stand. */
const SHOWN: Record<string, readonly (string | undefined)[]> = {
  'acts of law': knowledge.limits.map(({ act }) => act).filter((act) => !OWN_NAMES.includes(act)),
  'bases of counting': knowledge.limits.map(({ basis }) => basis),
  'uses that a row names': rows.map(({ scope }) => scope.only),
  'forms and areas': rows.flatMap(({ scope }) => [
    ...(scope.form ?? []),
    ...(scope.not_form ?? []),
    ...(scope.areas ?? []),
    ...(scope.not_areas ?? []),
  ]),
  conditions: rows.map(({ condition }) => condition),
  'words of a label': rows.flatMap(({ warning }) => warning?.split('; ')),
  'titles of what scents bring': knowledge.limits
    .filter(({ use, kind, members }) => use === 'any' && kind === 'law' && Object.keys(members).some(isBrought))
    .map(({ title }) => title.toLowerCase()),
  'colours of the US': (knowledge.tables.get('us-colours') ?? []).map(({ note }) => note),
  'what is needed': needs.map(({ need }) => english.article(words(need))),
  'what can be added for it': needs.flatMap(({ any_of }) => any_of.map(words)),
  'how surfactants answer salt': subjects
    .filter(({ allRoles }) => allRoles.has('surfactant') || allRoles.has('cationic-conditioner'))
    .flatMap(({ facts }) => (facts.get('electrolyte') ?? []).map(({ note }) => note)),
}

describe.each(Object.keys(SHOWN))('%s', (what) => {
  const shown = [...new Set(SHOWN[what])].filter((one) => one !== undefined && one !== '')
  test('are there', () => expect(shown.length).toBeGreaterThan(2))
  test('have German', () => expect(shown.filter((one) => one !== undefined && !german.has(one))).toEqual([]))
})
