/** The demo recipes as a German workshop would have written them down: the same lines, shares and settings. */
export const demos: Readonly<Record<string, { title: string; story: string; recipe: string }>> = {
  'hand-cream': {
    title: 'Winterhandcreme',
    story:
      'Das Mandelöl ist nicht gekommen, und eine Kundin verträgt keine Nüsse: das Öl als fehlend markieren und „Nüsse und Erdnuss“ ankreuzen.',
    recipe: `Phase A
Aqua ad 100
4 % Glycerin
0,3 % Xanthan

Phase B
Mandelöl 12
Sheabutter 4 %
Cetearyl Alcohol 3 %
Glyceryl Stearate Citrate 3,5 %
Tocopherol 0,3

Phase C
Phenoxyethanol 0,9 %
Ethylhexylglycerin 0,1 %

A und B auf 75 °C erhitzen, zusammengeben, rühren, bis es eindickt
Auf 40 °C abkühlen, dann Phase C zugeben
pH 5,5
Ergibt 200 g`,
  },
  'gentle-wash': {
    title: 'Milde Waschcreme',
    story:
      'Das Paar aus Glyceryl Stearate und PEG-100 Stearate ist ausverkauft; nur dieses hält das Öl in der Waschcreme.',
    recipe: `Wasser ad 100
Decyl Glucoside 12 %
Cocamidopropyl Betaine 8 %
Glycerin 3
Xanthan 0,5
Glyceryl Stearate and PEG-100 Stearate 4 %
Sonnenblumenöl 4 %
Natriumbenzoat 0,5 %
Milchsäure 80 % 0,6 %

Auf 75 °C erhitzen, auf 40 °C abkühlen, bevor das Benzoat hineinkommt
pH 4,8
Ergibt 500 g`,
  },
  'lip-balm': {
    title: 'Schlichter Lippenbalsam',
    story: 'Gewünscht ist er vegan: das Bienenwachs als fehlend markieren und „Tierisches“ ankreuzen.',
    recipe: `22 g Bienenwachs
38 g Rizinusöl
20 g Kakaobutter
19,4 g Sonnenblumenöl
0,6 g Tocopherol
Bei 75 °C zusammen schmelzen, in Hülsen gießen`,
  },
  conditioner: {
    title: 'Haarspülung',
    story: 'Behentrimonium Methosulfate ist ausverkauft: sehen, was sonst am Haar haftet und wie viel davon.',
    recipe: `Wasserphase:
- Wasser ad 100
- Glycerin 2 %
- Panthenol 1 %

Ölphase (80 °C):
- Behentrimonium Methosulfate 2,5 %
- Cetylalkohol 5 %
- Jojobaöl 2 %

Abkühlphase:
- Benzylalkohol 0,8 %
- Dehydroacetic Acid 0,1 %
- Milchsäure 0,2 %

pH 4,5, Ansatz 300 g`,
  },
  'rose-gel': {
    title: 'Rosenwassergel',
    story: 'Kein Kaliumsorbat in der Schublade. Das pH-Lineal beobachten, wenn der pH auf 6,5 geht.',
    recipe: `Rohstoff | %
--- | ---
Rosa damascena flower water | 60
Aqua | ad 100
Glycerin | 3
Hydroxyethylcellulose | 1
Panthenol | 1
Natriumbenzoat | 0,4
Kaliumsorbat | 0,2
Citronensäure | 0,2

pH 4,8
Ergibt 100 g`,
  },
  deodorant: {
    title: 'Deocreme ohne Wasser',
    story: 'Natron brennt bei manchen: markieren und sehen, welches Pulver einspringen kann.',
    recipe: `Kokosöl 34 %
Sheabutter 18 %
Bienenwachs 8 %
Maisstärke 24 %
Natron 10 %
Zinc Ricinoleate 5 %
Tocopherol 0,5 %
Lavendelöl 0,5 %
Bei 70 °C schmelzen, rühren, bis es eindickt`,
  },
}
