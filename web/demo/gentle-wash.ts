import type { Demo } from './demo.ts'

export const gentleWash: Demo = {
  id: 'gentle-wash',
  title: 'Gentle cream wash',
  story: 'The glyceryl stearate and PEG-100 stearate pair is out of stock; it alone holds the oil in this wash.',
  recipe: `Wasser ad 100
decyl glucoside 12 %
cocamidopropyl betaine 8 %
glycerin 3
xanthan gum 0,5
glyceryl stearate and PEG-100 stearate 4 %
sunflower oil 4 %
sodium benzoate 0.5 %
lactic acid 80 % 0.6 %

Heat to 75 C, cool to 40 C before the benzoate goes in
pH 4.8
Makes 500 g`,
  settings: { product: 'rinse-off', areas: ['body'] },
}
