import type { Load } from '../../domain/load/load.ts'
import { isPowered } from '../../domain/load/load.ts'
import { allowedAmps } from '../../domain/wiring/states.ts'
import type { Expected, RunningMode } from '../verify/artifact.ts'
import type { Reading, SheetStep } from './artifact.ts'
import { boundText, circuitLabel } from './bounds.ts'
import { EARTH_OHMS } from './cold-checks.ts'
import { isHeater, isWaiting } from './fit-steps.ts'
import { emptyOutputReadings, feedReadings, heaterOutputReadings, placeFor } from './live-checks.ts'
import type { SheetText } from './messages.ts'
import { text } from './messages.ts'
import type { Site } from './site.ts'
import { numbersOf } from './site.ts'
import { commandLabel } from './together.ts'
import { panelLabel } from './wires.ts'

/** Devices with a ground-fault part, by what a person calls them. */
const groundFaultLabels = ({ job }: Site): readonly string[] =>
  [...job.devices]
    .filter(([, device]) => device.board.parts.some(each => each.kind === 'ground-fault'))
    .map(([id]) => panelLabel(job, id))

export function powerStep(site: Site): SheetStep {
  const { job, feed, wires } = site
  const heater = wires.filter(
    each => isWaiting(job, each) && isHeater(job, each) && each.function !== 'earth',
  )
  return {
    name: 'power',
    title: text('step.power'),
    caution: { severity: 'danger', text: text('caution.power') },
    licensed: true,
    actions: [
      text('power.ready'),
      ...(heater.length > 0 ? [text('power.ready-heater', { wires: numbersOf(heater) })] : []),
      ...groundFaultLabels(site).map(device => text('power.button', { device })),
      text('power.read'),
      text('power.stop'),
    ],
    readings: feedReadings(job, feed),
  }
}

export const settingsStep = ({ settings }: Site): SheetStep => ({
  name: 'settings',
  title: text('step.settings'),
  caution: { severity: 'warning', text: text('caution.settings') },
  licensed: false,
  actions: [
    ...settings.map(({ name, to, entered }) =>
      text('set.enter', { setting: name, value: to, entered }),
    ),
    text('set.cycle'),
    text('set.point'),
  ],
  readings: settings.map(({ name, to }) => ({
    what: text('read.setting', { setting: name }),
    expected: text('expect.value', { value: to }),
    unit: '',
  })),
})

export const outputsStep = ({ job, plan, feed }: Site): SheetStep => ({
  name: 'outputs',
  title: text('step.outputs'),
  caution: { severity: 'danger', text: text('caution.outputs') },
  licensed: true,
  actions: [text('outputs.call'), text('outputs.stop'), text('outputs.off')],
  readings: emptyOutputReadings(job, plan, feed),
})

/** Loads in the order in which they are tried: the heater last, when water moves. */
function triedLoads({ job, plan, wires }: Site): readonly Load[] {
  const waiting = new Set(wires.filter(each => isWaiting(job, each)).map(each => each.owner))
  const order = (load: Load) => {
    const index = job.box.places.indexOf(placeFor(job, plan, load) ?? ({} as never))
    return load.kind === 'heater' ? job.box.places.length : index
  }
  return job.loads.filter(each => waiting.has(each.id)).sort((a, b) => order(a) - order(b))
}

function loadText({ job, plan, wires }: Site, load: Load): SheetText {
  return text(load.kind === 'heater' ? 'loads.heater' : 'loads.plug', {
    load: load.label,
    place: placeFor(job, plan, load)?.label ?? '',
    wires: numbersOf(wires.filter(each => each.owner === load.id)),
  })
}

function ampsReading(
  { job, bounding }: Site,
  { label: load, command, amps, draw }: Expected,
): Reading {
  return {
    what:
      command === undefined
        ? text('read.amps-always', { load })
        : text('read.amps', { load, command: commandLabel(job.box, command) }),
    expected: draw.assumed
      ? text('expect.amps-not-known', { most: boundText(draw.to, bounding) })
      : text('expect.amps', { amps: amps.nominal, low: amps.low, high: amps.high }),
    unit: 'A',
  }
}

/** The mode that takes most from one leg, the first of equals. */
function worstMode({ verification }: Site): RunningMode | undefined {
  return verification.modes.reduce<RunningMode | undefined>(
    (worst, each) =>
      worst && Math.max(...worst.legAmps) >= Math.max(...each.legAmps) ? worst : each,
    undefined,
  )
}

const labels = ({ job }: Site, ids: readonly string[]): readonly string[] =>
  ids.map(id => commandLabel(job.box, id))

const hasEarth = (load: Load): boolean => load.leads.some(each => each.function === 'earth')

/** Earth to the metal of a load, once it is plugged in and before it gets power. */
const caseReading = ({ label: load }: Load): Reading => ({
  what: text('read.case', { load }),
  expected: text('expect.earth', { ohms: EARTH_OHMS }),
  unit: 'Ω',
})

export function loadsStep(site: Site): SheetStep {
  const { job, plan, feed, verification } = site
  const tried = triedLoads(site)
  const shown = (load: Load) => verification.expected.filter(each => each.load === load.id)
  const worst = worstMode(site)
  const limit = allowedAmps(job.box, plan.landing.settings.currentLimit.si)
  const pauses = verification.heatPausesWith
  return {
    name: 'loads',
    title: text('step.loads'),
    caution: { severity: 'danger', text: text('caution.loads') },
    licensed: true,
    actions: [
      text('loads.earth'),
      text('loads.air'),
      ...tried.map(load => loadText(site, load)),
      ...verification.assumptions.map(each =>
        text(each.kind === 'unknown' ? 'loads.unknown' : 'loads.range', {
          load: circuitLabel(job, verification, each),
          most: boundText(each.atMost, site.bounding),
        }),
      ),
      ...(worst && worst.commands.length > 1
        ? [text('loads.worst', { commands: labels(site, worst.commands) })]
        : []),
      ...(pauses.length > 0 ? [text('loads.heat-waits', { commands: labels(site, pauses) })] : []),
    ],
    readings: [
      ...tried.filter(hasEarth).map(caseReading),
      ...heaterOutputReadings(job, plan, feed),
      ...tried
        .filter(isPowered)
        .flatMap(shown)
        .map(each => ampsReading(site, each)),
      { what: text('read.worst'), expected: text('expect.at-most', { amps: limit }), unit: 'A' },
      { what: text('read.volts-loaded'), expected: text('expect.drop'), unit: 'V' },
    ],
  }
}

export function keypadStep({ job }: Site): SheetStep {
  const light = job.loads.find(each => each.kind === 'light')
  return {
    name: 'keypad',
    title: text('step.keypad'),
    caution: { severity: 'notice', text: text('caution.keypad') },
    licensed: false,
    actions: [
      text('keypad.fit'),
      text('keypad.keys'),
      ...(light ? [text('keypad.light', { load: light.label })] : []),
    ],
    readings: [],
  }
}

export function protectStep(site: Site): SheetStep {
  const devices = groundFaultLabels(site)
  return {
    name: 'protect',
    title: text('step.protect'),
    caution: { severity: 'danger', text: text('caution.protect') },
    licensed: false,
    actions: [
      ...devices.map(device => text('protect.button', { device })),
      text(`protect.${site.job.box.flowProof}`),
      text('protect.limit'),
      text('protect.heat-stops'),
    ],
    readings: [
      ...devices.map(
        (device): Reading => ({
          what: text('read.trips', { device }),
          expected: text('expect.yes'),
          unit: '',
        }),
      ),
      { what: text('read.heat-stops'), expected: text('expect.yes'), unit: '' },
      { what: text('read.water'), expected: text('expect.agree'), unit: '°' },
    ],
  }
}

export const closeStep = (): SheetStep => ({
  name: 'close',
  title: text('step.close'),
  caution: { severity: 'danger', text: text('caution.close') },
  licensed: false,
  actions: [
    text('close.off'),
    text('close.suction'),
    text('close.lid'),
    text('close.panels'),
    text('close.settings'),
    text('close.owner'),
  ],
  readings: [
    { what: text('read.name'), expected: undefined, unit: '' },
    { what: text('read.time'), expected: undefined, unit: '' },
  ],
})
