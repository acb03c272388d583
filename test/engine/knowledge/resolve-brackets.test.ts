import { expect, test } from 'vitest'
import { resolveNames } from '#engine/index.ts'
import { realWorld } from '../../helpers.ts'

const one = (typed: string) => resolveNames(realWorld(), [typed])[0]!

test('a bracket that asks decides for what goes by the outside too', () => {
  // Caprylyl glycol is 1,2-octanediol; the plain name is that of another entry.
  expect(one('octanediol')).toMatchObject({ status: 'found', ingredient: 'octanediol' })
  expect(one('octanediol (caprylyl)')).toMatchObject({ status: 'found', ingredient: 'caprylyl-glycol' })
})

test('a bracket that says how a thing is supplied changes nothing', () => {
  expect(one('glycerin (vegetable)')).toMatchObject({ status: 'found', ingredient: 'glycerin' })
})

test('a bracket with words of another name of the same thing does not make it another', () => {
  expect(one('titanium dioxide (rutile)')).toMatchObject({ status: 'found', ingredient: 'titanium-dioxide' })
})
