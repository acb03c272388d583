import type { Answer } from './answer.ts'
import { batchAnswer } from './batch.ts'
import { calculateAnswers } from './calculate.ts'
import { checkAnswer } from './check.ts'
import { graphAnswer, wholeGraphAnswer } from './graph.ts'
import { healthAnswer } from './health.ts'
import { ingredientAnswers } from './ingredients.ts'
import { labelAnswer } from './label.ts'
import { lessonAnswers } from './learn-lessons.ts'
import { learnAnswers } from './learn.ts'
import { nameAnswer } from './names.ts'
import { phAnswers } from './ph.ts'
import { preservationAnswer } from './preservation.ts'
import { resolveAnswer } from './resolve.ts'
import { roleAnswers } from './roles.ts'
import { sourceAnswers } from './sources.ts'
import { swapAnswers } from './swaps.ts'
import { whatIfAnswer } from './what-if.ts'

/** All answers: the server asks them at its routes, the page when the server is away. */
export const ANSWERS: readonly Answer[] = [
  healthAnswer,
  resolveAnswer,
  nameAnswer,
  ...ingredientAnswers,
  ...roleAnswers,
  ...sourceAnswers,
  graphAnswer,
  wholeGraphAnswer,
  checkAnswer,
  labelAnswer,
  preservationAnswer,
  ...swapAnswers,
  ...calculateAnswers,
  ...phAnswers,
  batchAnswer,
  ...learnAnswers,
  ...lessonAnswers,
  whatIfAnswer,
]
