import type { Reading } from './artifact.ts'
import type { SheetText } from './messages.ts'
import { text } from './messages.ts'
import type { Site } from './site.ts'
import { commandLabel } from './together.ts'

/**
 * Longest that heat may go on after the flow fell [s]; common practice, no source.
 *
 * A heater of 5.5 kW over 1.5 litres of standing water warms it by less than 30 K in that time:
 * a test that fails stays below boiling.
 */
const FLOW_SECONDS = 30

/** What runs during the test: the first command that the box heats with. */
function heatsWith({ job, profile, verification }: Site): string {
  const heating = verification.modes.filter(each => each.heats)
  const all = profile?.heatsWith ?? []
  const first = all.find(id => heating.some(each => each.commands.includes(id)))
  return commandLabel(job.box, first ?? job.box.heat)
}

/**
 * The proof of flow put to the test: real water is throttled while the box heats, so that nothing
 * is bridged and the heater stays full. Stopping the pump by its key would test the box's own
 * order of things, not the proof.
 *
 * A pressure switch has to lose its pressure, so the valve before the heater is the one; a pair of
 * probes has to see the outlet grow warmer than the inlet, so some water has to go on moving.
 * Common practice, no source.
 */
export function flowTexts(site: Site): readonly SheetText[] {
  const { flowProof } = site.job.box
  return [
    text('protect.flow-maker'),
    text('protect.flow-ready', { command: heatsWith(site) }),
    ...(flowProof === 'probe-pair' ? [text('protect.pair-order')] : []),
    text(`protect.${flowProof}`),
    text('protect.flow-late', { seconds: FLOW_SECONDS }),
    text('protect.flow-back'),
  ]
}

export const flowReadings = (): readonly Reading[] => [
  {
    what: text('read.heat-stops'),
    expected: text('expect.seconds', { seconds: FLOW_SECONDS }),
    unit: 's',
  },
  { what: text('read.flow-alarm'), expected: text('expect.yes'), unit: '' },
  { what: text('read.valves-open'), expected: text('expect.yes'), unit: '' },
]
