import type {
  ColdReading,
  ColdState,
  Finding,
  InsulationTest,
  Landing,
  MatchSet,
  PlanFailure,
  ProvenPlan,
  SupplyReport,
  Verification,
} from '@tubwright/core'
import { stringify } from 'yaml'
import type { LocatedDiagnostic } from './located.ts'

/** A landing as it leaves the program: quantities as text, so that it reads back equal. */
export interface WireLanding {
  readonly schema: 'landing/1'
  readonly survey: string
  readonly box: string
  readonly note?: string
  readonly ends: Readonly<Record<string, string>>
  readonly jumpers: Readonly<Record<string, string>>
  readonly straps: Readonly<Record<string, string>>
  readonly settings: { readonly profile: string; readonly currentLimit: string }
  readonly adapters: Readonly<Record<string, string>>
}

export const wireLanding = (landing: Landing): WireLanding => ({
  schema: 'landing/1',
  survey: landing.survey,
  box: landing.box,
  ...(landing.note === undefined ? {} : { note: landing.note }),
  ends: landing.ends,
  jumpers: landing.jumpers,
  straps: landing.straps,
  settings: {
    profile: landing.settings.profile,
    currentLimit: landing.settings.currentLimit.text,
  },
  adapters: landing.adapters,
})

/** A landing as YAML that `readLanding` reads back. */
export const writeLanding = (landing: Landing): string => stringify(wireLanding(landing))

export const wireMatch = (match: MatchSet) => ({ schema: 'match-set/1', ...match }) as const

/** What each box would need changed at the tub, or why nothing helps; of boxes that were asked. */
export const wireChanges = ({ boxes }: MatchSet) =>
  boxes.flatMap(({ box, changes }) => (changes ? [{ box, ...changes }] : []))

export const wireVerification = (verification: Verification) =>
  ({ schema: 'verification/1', ...verification }) as const

/** What a code book says of a supply. */
export const wireSupply = (report: SupplyReport) =>
  ({ schema: 'supply-report/1', ...report }) as const

export const wirePlan = ({ plan, verification }: ProvenPlan) =>
  ({
    schema: 'wiring-plan/1',
    ...plan,
    landing: wireLanding(plan.landing),
    verification: wireVerification(verification),
  }) as const

/** A wire form beside the warnings of what was read for it; an empty list says that there were none. */
export const withWarnings = <Form extends { readonly schema: string }>(
  form: Form,
  warnings: readonly LocatedDiagnostic[],
) => ({ ...form, warnings })

/** A failure to plan, with the findings of the least bad landing tried. */
export const wirePlanFailure = (box: string, failure: PlanFailure) => ({
  schema: 'plan-failure/1' as const,
  ...failure,
  box,
  closest: closestOf(failure),
})

const closestOf = (failure: PlanFailure): readonly Finding[] =>
  failure.reason === 'no-plan' ? (failure.closest?.findings ?? []) : []

/** Between which points something is measured, cold, and what is connected meanwhile. */
export interface Measured {
  readonly from: string
  readonly to: string
  readonly state: Required<ColdState>
}

const wireMeasured = ({ from, to, state }: Measured) => ({
  from,
  to,
  plugged: [...state.plugged],
  supply: state.supply,
  celsius: state.celsius,
})

export const wireColdReading = (at: Measured, reading: ColdReading) =>
  ({ schema: 'cold-reading/1', ...wireMeasured(at), ...reading }) as const

export const wireInsulation = (at: Measured, test: InsulationTest) =>
  ({ schema: 'insulation-test/1', ...wireMeasured(at), ...test }) as const
