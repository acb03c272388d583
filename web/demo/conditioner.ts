import type { Demo } from './demo.ts'

export const conditioner: Demo = {
  id: 'conditioner',
  title: 'Hair conditioner',
  story: 'Behentrimonium methosulfate is sold out: see what else clings to hair, and how much of it.',
  recipe: `Water phase:
- water to 100
- glycerin 2 %
- panthenol 1 %

Oil phase (80 °C):
- behentrimonium methosulfate 2.5 %
- cetyl alcohol 5 %
- jojoba oil 2 %

Cool down:
- benzyl alcohol 0.8 %
- dehydroacetic acid 0.1 %
- lactic acid 0.2 %

pH 4.5, batch 300 g`,
  settings: { product: 'rinse-off', areas: ['hair'] },
}
