import type { Demo } from './demo.ts'

export const deodorant: Demo = {
  id: 'deodorant',
  title: 'Deodorant cream without water',
  story: 'Bicarbonate stings some people: mark it and see which powder can take over.',
  recipe: `coconut oil 34 %
shea butter 18 %
beeswax 8 %
corn starch 24 %
sodium bicarbonate 10 %
zinc ricinoleate 5 %
tocopherol 0.5 %
lavender oil 0.5 %
Melt at 70 C, stir until it thickens`,
  settings: { product: 'leave-on', areas: ['deodorant'], batch_g: 100 },
}
