import type { Demo } from './demo.ts'

export const lipBalm: Demo = {
  id: 'lip-balm',
  title: 'Plain lip balm',
  story: 'A vegan version is wanted: mark the beeswax and tick “Animal origin”.',
  recipe: `22 g beeswax
38 g castor oil
20 g cocoa butter
19.4 g sunflower oil
0.6 g tocopherol
Melt together at 75 C, pour into tubes`,
  settings: { product: 'leave-on', areas: ['lip'] },
}
