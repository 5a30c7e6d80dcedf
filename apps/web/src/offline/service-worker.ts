import type { Build } from './keep-offline.ts'
import { keepOffline } from './keep-offline.ts'
import type { WorkerScope } from './worker-scope.ts'

/** Written in by the build, which alone knows its files. */
declare const BUILD: Build

keepOffline(self as unknown as WorkerScope, BUILD)
