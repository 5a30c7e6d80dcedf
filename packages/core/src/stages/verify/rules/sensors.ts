import { atLeast } from '../../../base/compare.ts'
import type { Finding } from '../../../base/verdict.ts'
import { LIMITS } from '../../../domain/wiring/limits.ts'
import type { Sensed } from '../../../domain/wiring/sensing.ts'
import { sense, shownCelsius } from '../../../domain/wiring/sensing.ts'
import type { Rule } from '../rule.ts'

const finding = (
  message: string,
  severity: Finding['severity'],
  { input }: Sensed,
  params: Finding['params'] = {},
): Finding => ({
  rule: sensors.id,
  message,
  verdict: 'breaks',
  severity,
  subjects: [input.id],
  params: { input: input.label, ...params },
})

function judge(sensed: Sensed): readonly Finding[] {
  const { input, ohms, probe } = sensed
  const shown = ohms === undefined ? undefined : shownCelsius(input.curve, ohms)
  if (shown === undefined || shown < LIMITS.sensedOpen)
    return [finding('probe-open', 'caution', sensed)]
  if (shown > LIMITS.sensedShort) return [finding('probe-shorted', 'caution', sensed)]
  if (!atLeast(shown, LIMITS.sensedAt - LIMITS.sensedLow))
    return [finding('reads-low', 'danger', sensed, { shown, true: LIMITS.sensedAt })]
  const watches = input.duty !== 'control'
  if (watches && probe && probe.place !== input.reads)
    return [finding('probe-misplaced', 'danger', sensed, { probe: probe.label })]
  if (shown > LIMITS.sensedAt + LIMITS.sensedLow)
    return [finding('reads-high', 'caution', sensed, { shown, true: LIMITS.sensedAt })]
  if (probe && probe.place !== input.reads)
    return [finding('probe-elsewhere', 'caution', sensed, { probe: probe.label })]
  return []
}

/**
 * Every sensor input reads the right place on the right curve.
 *
 * A wrong curve on the control input heats without end; on the limit input the limit is late too.
 */
export const sensors: Rule = {
  id: 'VERIFY-11',
  title: 'Probes of the right curve, in the right place',
  source: 'Beta equation of a thermistor; limits common practice',
  check: ({ plant }) => sense(plant, LIMITS.sensedAt).flatMap(judge),
}
