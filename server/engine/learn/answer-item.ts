import type { Item, ItemAnswer } from '#engine/model/learn.ts'

/** Whether the choice is the key, and why the key is. */
export const answerItem = (item: Item, choice: string): ItemAnswer & { right: boolean } => ({
  right: choice === item.key,
  key: item.key,
  because: item.because,
  sources: item.sources,
  about: item.about,
  ...(item.after && { after: item.after }),
})
