import type { Demo } from './demo.ts'

export const handCream: Demo = {
  id: 'hand-cream',
  title: 'Winter hand cream',
  story: 'The almond oil did not arrive, and a customer bears no nuts: mark it and tick “Nuts and peanut”.',
  recipe: `Phase A
Aqua q.s. to 100
4 % glycerin
0,3 % xanthan gum

Phase B
sweet almond oil 12
shea butter 4 %
cetearyl alcohol 3 %
glyceryl stearate citrate 3.5 %
tocopherol 0.3

Phase C
phenoxyethanol 0.9 %
ethylhexylglycerin 0.1 %

Heat A and B to 75 C, bring together, stir until it thickens
Cool to 40 C, then add phase C
pH 5.5
Makes 200 g`,
  settings: { product: 'leave-on', areas: ['hand'] },
}
