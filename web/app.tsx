import { Route, Switch } from 'wouter'
import { BatchPage } from './pages/batch-page.tsx'
import { BenchPage } from './pages/bench-page.tsx'
import { IngredientPage } from './pages/ingredient-page.tsx'
import { IngredientsPage } from './pages/ingredients-page.tsx'
import { NotFoundPage } from './pages/not-found-page.tsx'
import { RolePage } from './pages/role-page.tsx'
import { RolesPage } from './pages/roles-page.tsx'
import { Boundary } from './parts/boundary.tsx'
import { Frame } from './parts/frame.tsx'

export function App() {
  return (
    <Frame>
      <Boundary>
        <Switch>
          <Route path="/" component={BenchPage} />
          <Route path="/batch" component={BatchPage} />
          <Route path="/ingredients" component={IngredientsPage} />
          <Route path="/ingredient/:id">{({ id }) => <IngredientPage key={id} id={id} />}</Route>
          <Route path="/roles" component={RolesPage} />
          <Route path="/role/:id">{({ id }) => <RolePage id={id} />}</Route>
          <Route component={NotFoundPage} />
        </Switch>
      </Boundary>
    </Frame>
  )
}
