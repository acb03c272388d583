import type { Demo } from './demo.ts'

export const roseGel: Demo = {
  id: 'rose-gel',
  title: 'Rose water gel',
  story: 'No potassium sorbate in the drawer. Watch the pH ruler when you change the pH to 6.5.',
  recipe: `Ingredient | %
--- | ---
Rosa damascena flower water | 60
Aqua | to 100
Glycerin | 3
Hydroxyethylcellulose | 1
Panthenol | 1
Sodium benzoate | 0.4
Potassium sorbate | 0.2
Citric acid | 0.2

pH 4.8
Makes 100 g`,
  settings: { product: 'leave-on', areas: ['face'], hottest_c: 40 },
}
