import { lazy, Suspense } from 'react'
import { Route, Switch } from 'wouter'
import { BenchPage } from './pages/bench-page.tsx'
import { NotFoundPage } from './pages/not-found-page.tsx'
import { Boundary } from './parts/boundary.tsx'
import { Frame } from './parts/frame.tsx'
import { Loading } from './parts/states.tsx'
import { text } from './text/text.ts'

// Pages that the bench does not need come in files of their own, so that its first load does not grow.
const BatchPage = lazy(() => import('./pages/batch-page.tsx').then((page) => ({ default: page.BatchPage })))
const calculations = () => import('./pages/calculations-page.tsx')
const CalculationsPage = lazy(() => calculations().then((page) => ({ default: page.CalculationsPage })))
const CalculationPage = lazy(() => calculations().then((page) => ({ default: page.CalculationPage })))
const ExplorerPage = lazy(() => import('./pages/explorer-page.tsx').then((page) => ({ default: page.ExplorerPage })))
const SourcesPage = lazy(() => import('./pages/sources-page.tsx').then((page) => ({ default: page.SourcesPage })))
const SourcePage = lazy(() => import('./pages/source-page.tsx').then((page) => ({ default: page.SourcePage })))
const RecipesPage = lazy(() => import('./pages/recipes-page.tsx').then((page) => ({ default: page.RecipesPage })))
const ComparePage = lazy(() => import('./pages/compare-page.tsx').then((page) => ({ default: page.ComparePage })))
const IngredientPage = lazy(() =>
  import('./pages/ingredient-page.tsx').then((page) => ({ default: page.IngredientPage })),
)
const IngredientsPage = lazy(() =>
  import('./pages/ingredients-page.tsx').then((page) => ({ default: page.IngredientsPage })),
)
const RolePage = lazy(() => import('./pages/role-page.tsx').then((page) => ({ default: page.RolePage })))
const RolesPage = lazy(() => import('./pages/roles-page.tsx').then((page) => ({ default: page.RolesPage })))
const LabelPage = lazy(() => import('./pages/label-page.tsx').then((page) => ({ default: page.LabelPage })))
const LearnPage = lazy(() => import('./pages/learn-page.tsx').then((page) => ({ default: page.LearnPage })))
const LessonPage = lazy(() => import('./pages/lesson-page.tsx').then((page) => ({ default: page.LessonPage })))
const SwapSheetPage = lazy(() =>
  import('./pages/swap-sheet-page.tsx').then((page) => ({ default: page.SwapSheetPage })),
)
const TeachPage = lazy(() => import('./pages/teach-page.tsx').then((page) => ({ default: page.TeachPage })))
const WhatIfPage = lazy(() => import('./pages/what-if-page.tsx').then((page) => ({ default: page.WhatIfPage })))
const WorkingPage = lazy(() => import('./pages/working-page.tsx').then((page) => ({ default: page.WorkingPage })))
const OilsPage = lazy(() => import('./pages/compare-oils-page.tsx').then((page) => ({ default: page.CompareOilsPage })))

export function App() {
  return (
    <Frame>
      <Boundary>
        <Suspense fallback={<Loading>{text.app.loading}</Loading>}>
          <Switch>
            <Route path="/" component={BenchPage} />
            <Route path="/batch" component={BatchPage} />
            <Route path="/recipes" component={RecipesPage} />
            <Route path="/compare" component={ComparePage} />
            <Route path="/label" component={LabelPage} />
            <Route path="/swap-sheet" component={SwapSheetPage} />
            <Route path="/ingredients" component={IngredientsPage} />
            <Route path="/ingredient/:id">{({ id }) => <IngredientPage key={id} id={id} />}</Route>
            <Route path="/roles" component={RolesPage} />
            <Route path="/role/:id">{({ id }) => <RolePage id={id} />}</Route>
            <Route path="/explore" component={ExplorerPage} />
            <Route path="/sources" component={SourcesPage} />
            <Route path="/source/:id">{({ id }) => <SourcePage key={id} id={id} />}</Route>
            <Route path="/calculations" component={CalculationsPage} />
            <Route path="/calculation/:name">{({ name }) => <CalculationPage key={name} name={name} />}</Route>
            <Route path="/learn" component={LearnPage} />
            <Route path="/teach" component={TeachPage} />
            <Route path="/lesson/:id">{({ id }) => <LessonPage key={id} id={id} />}</Route>
            <Route path="/what-if" component={WhatIfPage} />
            <Route path="/working" component={WorkingPage} />
            <Route path="/compare-oils" component={OilsPage} />
            <Route component={NotFoundPage} />
          </Switch>
        </Suspense>
      </Boundary>
    </Frame>
  )
}
