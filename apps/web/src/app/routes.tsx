import type { ReactNode } from 'react'
import { lazy, Suspense } from 'react'
import { Route, Router, Switch } from 'wouter'
import { useHashLocation } from 'wouter/use-hash-location'
import { JobsScreen } from '../screens/jobs/jobs-screen.tsx'
import { useWeb } from './context.ts'
import { Frame, Screen, Working } from './frame.tsx'

const JobRoutes = lazy(async () => ({ default: (await import('./job-routes.tsx')).JobRoutes }))
const SettingsScreen = lazy(async () => ({
  default: (await import('../screens/settings/settings-screen.tsx')).SettingsScreen,
}))
const ShelfScreen = lazy(async () => ({
  default: (await import('../screens/describe/shelf-screen.tsx')).ShelfScreen,
}))
const DescribeScreen = lazy(async () => ({
  default: (await import('../screens/describe/describe-screen.tsx')).DescribeScreen,
}))

function Waiting(): ReactNode {
  const web = useWeb()
  return (
    <Frame>
      <Screen heading={web.loading}>
        <Working />
      </Screen>
    </Frame>
  )
}

/** Every address of the app. They stand behind #, so that any static host serves them. */
export function Routes(): ReactNode {
  return (
    <Router hook={useHashLocation}>
      <Suspense fallback={<Waiting />}>
        <Switch>
          <Route path="/job/:id/*?">{({ id }) => <JobRoutes key={id} id={id ?? ''} />}</Route>
          <Route path="/settings" component={SettingsScreen} />
          <Route path="/shelf" component={ShelfScreen} />
          <Route path="/describe/:kind/:id">
            {({ kind, id }) => <DescribeScreen kind={kind ?? ''} id={id ?? ''} />}
          </Route>
          <Route component={JobsScreen} />
        </Switch>
      </Suspense>
    </Router>
  )
}
