import type { Demo } from './demo.ts'

export const gentleWash: Demo = {
  id: 'gentle-wash',
  title: 'Gentle body wash',
  story: 'the coco glucoside and glyceryl oleate pair is gone: here it alone brings oil and body into the wash.',
  recipe: `Wasser ad 100
coco betaine 12 %
decyl glucoside 14 %
coco glucoside and glyceryl oleate 4 %
glycerin 2
xanthan gum 0,8
sodium benzoate 0.5 %
lactic acid 80 % 0.6 %

pH 5.0
Makes 500 g`,
  settings: { product: 'rinse-off', areas: ['body'] },
}
