import { isCord } from '../../domain/job.ts'
import type { Load } from '../../domain/load/load.ts'
import { isPowered } from '../../domain/load/load.ts'
import type { Expected, RunningMode } from '../verify/artifact.ts'
import type { Reading, SheetSetting, SheetStep, SheetWire } from './artifact.ts'
import { boundFor, boundLabel, boundText, withinBound } from './bounds.ts'
import type { SiteCircuit } from './circuits.ts'
import { idleCircuits, isSplit, mostFrom, servingCircuits } from './circuits.ts'
import { caseReading } from './cold-checks.ts'
import { isEarthedEarly, isHeater, isWaiting } from './fit-steps.ts'
import { flowReadings, flowTexts } from './flow-test.ts'
import { groundFaults, powerButton, protectButton } from './ground-faults.ts'
import { emptyOutputReadings, feedReadings, heaterOutputReadings, placeFor } from './live-checks.ts'
import type { SheetText } from './messages.ts'
import { text } from './messages.ts'
import { loadsOutside } from './outside.ts'
import type { Site } from './site.ts'
import { againTexts, fallingTexts, isLanded, numbersOf } from './site.ts'
import { commandLabel } from './together.ts'
import { aloneTexts } from './tub-points.ts'

/** Your own locks, circuit by circuit; that of one that no longer serves stays on. */
function onTexts({ job, circuits }: Site): readonly SheetText[] {
  if (isCord(job)) return [text('power.on-cord')]
  if (circuits.length < 2) return [text('power.on')]
  return circuits.map(({ name: circuit, serves }) =>
    text(serves ? 'power.on-circuit' : 'power.idle-stays', { circuit }),
  )
}

export function powerStep(site: Site): SheetStep {
  const { job, plan, feed, wires } = site
  const heater = wires.filter(
    each => isWaiting(job, each) && isHeater(job, each) && !isEarthedEarly(job, plan, each),
  )
  return {
    name: 'power',
    title: text('step.power'),
    caution: { severity: 'danger', text: text('caution.power') },
    licensed: true,
    actions: [
      text('power.ready'),
      ...(heater.length > 0 ? [text('power.ready-heater', { wires: numbersOf(heater) })] : []),
      ...onTexts(site),
      ...groundFaults(site).map(powerButton),
      text('power.read'),
    ],
    readings: feedReadings(job, feed, site.circuits),
    outside: [text('outside.feed')],
  }
}

const settingReadings = (
  settings: readonly SheetSetting[],
  message: 'read.setting' | 'read.setting-heat',
): readonly Reading[] =>
  settings.map(({ name, to }) => ({
    what: text(message, { setting: name }),
    expected: text('expect.value', { value: to }),
    unit: '',
  }))

export function settingsStep(site: Site): SheetStep {
  const { settings, plan, circuits } = site
  const falling = fallingTexts(site)
  return {
    name: 'settings',
    title: text('step.settings'),
    caution: { severity: 'warning', text: text('caution.settings') },
    licensed: false,
    actions: [
      text('set.dead'),
      ...aloneTexts('set.circuit-alone', plan, circuits),
      ...settings.map(({ name, to, entered }) =>
        text('set.enter', { setting: name, value: to, entered }),
      ),
      text('set.cycle'),
      ...(falling.length > 0 ? [text('set.falls', { settings: falling })] : []),
      text('set.point'),
    ],
    readings: settingReadings(settings, 'read.setting'),
    outside: [text('outside.setting')],
  }
}

export const outputsStep = ({ job, plan, feed }: Site): SheetStep => ({
  name: 'outputs',
  title: text('step.outputs'),
  caution: { severity: 'danger', text: text('caution.outputs') },
  licensed: true,
  actions: [text('outputs.call'), text('outputs.off')],
  readings: emptyOutputReadings(job, plan, feed),
  outside: [text('outside.output')],
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

/** The lead that carries all that a load draws, at whatever speed: what a clamp meter goes round. */
function clampOn(load: Load, wires: readonly SheetWire[]): SheetWire | undefined {
  if (!isPowered(load)) return undefined
  const shared = load.leads.find(({ id }) =>
    load.circuits.every(({ across }) => (across as readonly string[]).includes(id)),
  )
  return wires.find(each => each.id === `${load.id}.${shared?.id}`)
}

function loadText({ job, plan, wires }: Site, load: Load): SheetText {
  const own = wires.filter(
    each => each.owner === load.id && !isEarthedEarly(job, plan, each) && isLanded(each),
  )
  const clamp = clampOn(load, own)
  const message = placeFor(job, plan, load)?.connector === undefined ? 'loads.land' : 'loads.plug'
  return text(load.kind === 'heater' ? 'loads.heater' : message, {
    load: load.label,
    place: placeFor(job, plan, load)?.label ?? '',
    wires: numbersOf(own),
    amps: clamp ? text('loads.clamp', { wire: clamp.number }) : text('loads.amps'),
  })
}

/** What is measured at a load whose draw is not known, right where it is first run. */
const boundTexts = ({ job, verification, bounds }: Site, load: Load): readonly SheetText[] =>
  bounds
    .filter(each => each.load === load.id)
    .map(each =>
      text('loads.bound', { load: boundLabel(job, verification, each), bound: boundText(each) }),
    )

function ampsReading({ job, bounds }: Site, each: Expected): Reading {
  const { label: load, command, draw } = each
  const bound = boundFor(bounds, each.load, each.circuit)
  const { low, nominal, high } = withinBound(each.amps, bound)
  return {
    what:
      command === undefined
        ? text('read.amps-always', { load })
        : text('read.amps', { load, command: commandLabel(job.box, command) }),
    expected:
      draw.assumed && bound
        ? text('expect.amps-not-known', { bound: boundText(bound) })
        : text('expect.amps', { amps: nominal, low, high }),
    unit: 'A',
  }
}

/** The mode that takes most from one leg of a circuit, the first of equals. */
function worstMode({ verification }: Site, circuit: SiteCircuit): RunningMode | undefined {
  return verification.modes.reduce<RunningMode | undefined>(
    (worst, each) => (worst && mostFrom(circuit, worst) >= mostFrom(circuit, each) ? worst : each),
    undefined,
  )
}

const labels = ({ job }: Site, ids: readonly string[]): readonly string[] =>
  ids.map(id => commandLabel(job.box, id))

/** What runs for the greatest reading: on a split tub once a circuit. */
function worstTexts(site: Site): readonly SheetText[] {
  const { circuits } = site
  const isTwo = isSplit(circuits)
  return servingCircuits(circuits).flatMap(circuit => {
    const worst = worstMode(site, circuit)
    if (!worst || worst.commands.length < (isTwo ? 1 : 2)) return []
    const commands = labels(site, worst.commands)
    return [
      isTwo
        ? text('loads.worst-circuit', { circuit: circuit.name, commands })
        : text('loads.worst', { commands }),
    ]
  })
}

/** Amps and volts of each circuit when the worst runs, against what it may carry. */
function worstReadings({ circuits }: Site): readonly Reading[] {
  const isTwo = isSplit(circuits)
  return servingCircuits(circuits).flatMap(({ name: circuit, limit }): readonly Reading[] => [
    {
      what: isTwo ? text('read.worst-circuit', { circuit }) : text('read.worst'),
      expected:
        limit === undefined
          ? text('expect.breaker-first')
          : text('expect.at-most', { amps: limit }),
      unit: 'A',
    },
    {
      what: isTwo ? text('read.volts-circuit', { circuit }) : text('read.volts-loaded'),
      expected: text('expect.drop'),
      unit: 'V',
    },
  ])
}

const hasEarth = (load: Load): boolean => load.leads.some(each => each.function === 'earth')

/** What is read at one load, in the order in which it is read: dead first. */
function loadReadings(site: Site, load: Load): readonly Reading[] {
  const { job, plan, feed, settings, verification } = site
  const isHeaterLoad = load.kind === 'heater'
  const falling = settings.filter(each => each.fallsTo !== undefined)
  return [
    ...(hasEarth(load) ? [caseReading(job, plan.landing, feed, load)] : []),
    ...(isHeaterLoad ? settingReadings(falling, 'read.setting-heat') : []),
    ...(isHeaterLoad ? heaterOutputReadings(job, plan, feed) : []),
    ...verification.expected
      .filter(each => each.load === load.id)
      .map(each => ampsReading(site, each)),
  ]
}

export function loadsStep(site: Site): SheetStep {
  const { job, verification } = site
  const tried = triedLoads(site)
  const pauses = verification.heatPausesWith
  const falling = fallingTexts(site)
  return {
    name: 'loads',
    title: text('step.loads'),
    caution: { severity: 'danger', text: text('caution.loads') },
    licensed: true,
    actions: [
      text('loads.earth'),
      text('loads.air'),
      ...(falling.length > 0 ? [text('loads.again', { settings: falling })] : []),
      ...tried.flatMap(load => [loadText(site, load), ...boundTexts(site, load)]),
      ...job.loads.filter(each => !tried.includes(each)).flatMap(load => boundTexts(site, load)),
      ...worstTexts(site),
      ...(pauses.length > 0 ? [text('loads.heat-waits', { commands: labels(site, pauses) })] : []),
    ],
    readings: [...tried.flatMap(load => loadReadings(site, load)), ...worstReadings(site)],
    outside: loadsOutside(tried),
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
    outside: [],
  }
}

/** Before the power comes back for the last time: where a setting falls back, it is entered after. */
const clampTexts = ({ job, wires }: Site): readonly SheetText[] =>
  job.loads
    .filter(each => each.kind === 'heater')
    .flatMap(load => {
      const clamp = clampOn(load, wires)
      return clamp ? [text('protect.clamp', { wire: clamp.number })] : []
    })

export function protectStep(site: Site): SheetStep {
  const devices = groundFaults(site)
  return {
    name: 'protect',
    title: text('step.protect'),
    caution: { severity: 'danger', text: text('caution.protect') },
    // The box is open and live while heat is watched on a clamp meter.
    licensed: true,
    actions: [
      ...clampTexts(site),
      ...devices.map(protectButton),
      ...againTexts(site),
      ...flowTexts(site),
      text('protect.limit'),
      text('protect.heat-stops'),
    ],
    readings: [
      ...devices.map(
        ({ device }): Reading => ({
          what: text('read.trips', { device }),
          expected: text('expect.yes'),
          unit: '',
        }),
      ),
      ...flowReadings(),
      { what: text('read.water'), expected: text('expect.agree'), unit: '°' },
    ],
    outside: [text('outside.protect')],
  }
}

/** What goes on the owner's paper: what to read back after a power cut, and what a reset changes. */
function ownerTexts({ settings }: Site): readonly SheetText[] {
  const value = ({ name, to }: SheetSetting) => text('set.value', { setting: name, value: to })
  return [
    text('close.paper', { settings: settings.map(value) }),
    ...settings.flatMap(({ name, to, fallsTo }) =>
      fallsTo === undefined ? [] : [text('close.falls', { setting: name, fallsTo, value: to })],
    ),
  ]
}

export function closeStep(site: Site): SheetStep {
  const { circuits } = site
  const isTwo = isSplit(circuits)
  return {
    name: 'close',
    title: text('step.close'),
    caution: { severity: 'danger', text: text('caution.close') },
    licensed: false,
    actions: [
      text('close.off'),
      text('close.suction'),
      text('close.lid'),
      text(isTwo ? 'close.panels-circuits' : 'close.panels'),
      ...idleCircuits(circuits).map(each => text('close.idle', { circuit: each.name })),
      text('close.settings'),
      ...againTexts(site),
      isTwo
        ? text('close.owner-circuits', { circuits: circuits.map(each => each.name) })
        : text('close.owner'),
      ...ownerTexts(site),
    ],
    readings: [
      { what: text('read.call'), expected: undefined, unit: '' },
      { what: text('read.name'), expected: undefined, unit: '' },
      { what: text('read.time'), expected: undefined, unit: '' },
    ],
    outside: [],
  }
}
