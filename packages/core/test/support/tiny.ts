import { readControlBox, readSurvey } from '@tubwright/formats'
import type { Job } from '../../src/index.ts'
import { jobOf } from '../../src/index.ts'
import { demoDevices } from './demo.ts'

const terminal = (id: string, node: string, kind: string, x: number) =>
  `    - { id: ${id}, node: ${node}, class: ${node === 'PE' ? 'earth' : 'mains'}, kind: screw, rated: 20 A, at: [${x} mm, ${kind} mm] }`

/** A box small enough to go through every landing: two places for a pump, one for the heater. */
const BOX = `
schema: control-box/1
id: tiny
label: Tiny box
maker: nobody
regions: [US]
frequencies: [60 Hz]
size: { width: 100 mm, height: 100 mm, depth: 50 mm }
largestBreaker: 20 A
board:
  size: { width: 100 mm, height: 100 mm }
  earth: PE
  terminals:
${terminal('A1', 'L1', '10', 10)}
${terminal('A2', 'N', '10', 20)}
${terminal('A4', 'PE', '10', 30)}
${terminal('P1', 'P-HI', '50', 10)}
${terminal('P3', 'RET', '50', 20)}
${terminal('P4', 'PE', '50', 30)}
${terminal('Q1', 'Q-HI', '50', 40)}
${terminal('Q3', 'RET', '50', 50)}
${terminal('Q4', 'PE', '50', 60)}
${terminal('H1', 'H-HI', '90', 10)}
${terminal('H2', 'N', '90', 20)}
${terminal('H4', 'PE', '90', 30)}
  parts:
    - { id: F1, kind: fuse, across: [L1, L1-F], rated: 20 A }
    - { id: R1, kind: contact, across: [L1-F, P-HI], rated: { resistive: 10 A, motor: 6 A } }
    - { id: R2, kind: contact, across: [L1-F, Q-HI], rated: { resistive: 16 A, motor: 12 A } }
    - { id: RL, kind: contact, role: limit, across: [L1-F, H-F], rated: { resistive: 16 A } }
    - { id: R3, kind: contact, across: [H-F, H-HI], rated: { resistive: 16 A } }
  jumpers:
    - id: J1
      label: where the pump returns
      positions:
        - { id: open, joins: [] }
        - { id: neutral, joins: [[RET, N]] }
      factory: open
      rated: 16 A
feeds:
  - { id: one-leg, label: one leg, system: single-leg, lands: { leg1: A1, neutral: A2, earth: A4 } }
places:
  - { id: first, label: First pump, takes: [pump], lands: { hot: P1, common: P3, earth: P4 }, commands: { hot: first } }
  - { id: second, label: Second pump, takes: [pump], lands: { hot: Q1, common: Q3, earth: Q4 }, commands: { hot: second } }
  - { id: heater, label: Heater, takes: [heater], lands: { hot: H1, common: H2, earth: H4 }, commands: { hot: heat } }
commands:
  - { id: first, label: first, closes: [R1] }
  - { id: second, label: second, closes: [R2] }
  - { id: heat, label: heat, closes: [R3] }
heat: heat
profiles:
  - { id: one, label: first heats, entered: down, commands: [first, heat], heatsWith: [first] }
  - { id: two, label: second heats, entered: up, commands: [second, heat], heatsWith: [second] }
profileFactory: one
currentLimit: { offered: [12 A, 16 A], factory: 12 A, names: draw, entered: switch 2 }
flowProof: pressure-switch
supplied:
  - kind: heater
    id: heater
    label: Heater
    volts: 120 V
    leads:
      - { id: hot, function: hot, size: 12 AWG, colour: black }
      - { id: common, function: common, size: 12 AWG, colour: black }
      - { id: earth, function: earth, size: 12 AWG, colour: green }
    circuits:
      - { id: element, across: [hot, common], power: 1 kW }
`

const TUB = `
schema: survey/1
id: tiny-tub
title: Tiny tub
region: US
supply:
  system: single-leg
  frequency: 60 Hz
  breaker: 20 A
  devices: [{ id: plug, device: cord-plug-ground-fault }]
  cables:
    - id: cord
      label: Cord
      from: plug
      to: box
      length: 10 ft
      moulded: true
      conductors:
        - { id: leg1, function: leg1, size: 12 AWG, colour: black, from: L1 }
        - { id: neutral, function: neutral, size: 12 AWG, colour: white, from: N }
        - { id: earth, function: earth, size: 12 AWG, colour: green, from: EB }
loads:
  - kind: pump
    id: pump
    label: Pump
    volts: 120 V
    movesWaterThroughHeater: [run]
    leads:
      - { id: hot, function: hot, size: 14 AWG, colour: black }
      - { id: common, function: common, size: 14 AWG, colour: black }
      - { id: earth, function: earth, size: 14 AWG, colour: green }
    circuits:
      - { id: run, across: [hot, common], amps: AMPS, powerFactor: 0.9 }
`

/** The tiny tub on the tiny box, with a pump of so many amps. */
export function tinyJob(amps: string): Job {
  const box = readControlBox('tiny box', BOX)
  const tub = readSurvey('tiny tub', TUB.replace('AMPS', amps), demoDevices)
  if (!box.value || !tub.value)
    throw new Error(JSON.stringify([...box.diagnostics, ...tub.diagnostics], null, 2))
  return jobOf(tub.value, box.value, demoDevices)
}
