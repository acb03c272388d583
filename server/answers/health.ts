import { healthRoute } from '#contract/health.ts'
import { healthOf } from '#engine/index.ts'
import { answer } from './answer.ts'

export const healthAnswer = answer(healthRoute, ({ world }) => healthOf(world))
