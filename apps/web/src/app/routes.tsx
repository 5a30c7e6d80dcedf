import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { lazy, Suspense } from 'react'
import { Route, Router, Switch, useLocation } from 'wouter'
import { useHashLocation } from 'wouter/use-hash-location'
import { Boundary } from '../parts/boundary.tsx'
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

/** A screen that cannot be drawn says so, and the way to the others stays. */
function Guarded({ children }: { readonly children: ReactNode }): ReactNode {
  const web = useWeb()
  const [place] = useLocation()
  return (
    <Boundary
      of={place}
      instead={detail => (
        <Frame>
          <Screen heading={web['shell.fault-title']}>
            <p role="alert">{say(web['shell.fault'], { detail })}</p>
          </Screen>
        </Frame>
      )}
    >
      {children}
    </Boundary>
  )
}

/** Every address of the app. They stand behind #, so that any static host serves them. */
export function Routes(): ReactNode {
  return (
    <Router hook={useHashLocation}>
      <Guarded>
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
      </Guarded>
    </Router>
  )
}
