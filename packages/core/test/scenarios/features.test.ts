import { describe, expect, test } from 'vitest'
import type { Colour, ControlBox, Job, Landing, Load } from '../../src/index.ts'
import {
  boardNode,
  COLOUR_LETTERS,
  jobOf,
  matchEquipment,
  observe,
  planAndProve,
  plantOf,
  statesOf,
  verifyPlan,
} from '../../src/index.ts'
import { demoBox, demoBoxes, demoDevices, demoJob, demoTub } from '../support/demo.ts'
import { findingsOf, messages, planned, proposed, slipped } from '../support/judged.ts'

// What boxes and loads of the demo have, each seen to do what it says.

/** A job solved with these commands on. */
function solvedWith(job: Job, landing: Landing, ...commands: readonly string[]) {
  const plant = plantOf(job, landing)
  if (!plant.ok) throw new Error('not solved')
  const { solved } = observe(plant.value, { kind: 'mode', commands: new Set(commands) })
  return {
    at: (node: string) => solved.potential(boardNode('box', node)),
    across: (a: string, b: string) => solved.across(boardNode('box', a), boardNode('box', b)),
  }
}

const modesOf = (job: Job, landing: Landing): readonly ReadonlySet<string>[] => {
  const states = statesOf(job, landing)
  if (!states.ok) throw new Error('too many')
  return states.value.flatMap(each => (each.kind === 'mode' ? [each.commands] : []))
}

const loadOf = (tub: string, id: string): Load => {
  const load = demoTub(tub).loads.find(each => each.id === id)
  if (!load) throw new Error(`no ${id} in ${tub}`)
  return load
}

const pumpOf = (tub: string, id: string) => {
  const load = loadOf(tub, id)
  if (load.kind !== 'pump') throw new Error(`${id} is no pump`)
  return load
}

describe('relays', () => {
  const job = demoJob('wye-208', 'dunlin-208')
  const landing = proposed(job)

  test('a changeover speed relay: at rest at low, commanded at high, never both', () => {
    const low = solvedWith(job, landing, 'pump-a-low')
    expect([low.across('PA-LO', 'L2') > 200, low.across('PA-SP', 'PA-HI') > 20]).toEqual([
      true,
      true,
    ])
    const high = solvedWith(job, landing, 'pump-a-high')
    expect(high.across('PA-HI', 'L2')).toBeGreaterThan(200)
    const verdict = messages(findingsOf(job, landing))
    expect(verdict).not.toContain('two-speeds-together')
  })

  test('a contactor opens both poles of the heater', () => {
    const poles = job.box.board.parts.filter(
      each => each.kind === 'contact' && each.type === 'contactor',
    )
    expect(poles).toHaveLength(2)
    const off = solvedWith(job, landing)
    expect([off.at('HT-1') < 60, off.at('HT-2') < 60]).toEqual([true, true])
  })

  test('relays on both legs leave nothing live at pump B, a relay on one leg leaves the return', () => {
    const off = solvedWith(job, landing)
    expect(off.at('PB-1')).toBeLessThan(60)
    expect(off.at('PB-2')).toBeLessThan(60)
    const live = findingsOf(job, landing).filter(each => each.message === 'live-when-off')
    expect(live.map(each => each.subjects[0])).toEqual(['pump-a'])
  })

  test('audio without a command is on in every mode', () => {
    expect(solvedWith(job, landing).across('AU', 'N')).toBeGreaterThan(110)
  })

  test('two heater relays in series behind the limit: either one stops it', () => {
    const teal = demoJob('plain-breaker-230', 'teal-32')
    for (const id of ['limit', 'rel-heat-1', 'rel-heat-2']) {
      const stuck = {
        ...teal.box,
        commands: teal.box.commands.map(each => ({
          ...each,
          closes: each.closes.filter(contact => contact !== id),
        })),
        board: {
          ...teal.box.board,
          parts: teal.box.board.parts.map(each =>
            each.id === id && each.kind === 'contact'
              ? { ...each, role: 'command' as const }
              : each,
          ),
        },
      }
      const open = jobOf(teal.tub, stuck, demoDevices)
      const solved = solvedWith(open, proposed(open), 'heat', 'pump-low')
      expect(solved.across('HT-1', 'N')).toBeLessThan(60)
    }
  })
})

describe('a triac', () => {
  const job = demoJob('plain-breaker-230', 'teal-32')
  const landing = proposed(job)

  test('leaks while off: the open output is no dead one', () => {
    const bare = slipped(landing, {
      ends: { 'blower.hot': 'insulated', 'blower.common': 'insulated' },
    })
    expect(solvedWith(job, bare).at('BL-HI')).toBeGreaterThan(100)
    expect(solvedWith(job, landing).at('BL-HI')).toBeLessThan(5)
  })

  test('below its least load it is told', () => {
    const loads = job.tub.loads.map(load =>
      load.id === 'blower' && 'circuits' in load
        ? {
            ...load,
            circuits: load.circuits.map(each => ({
              ...each,
              amps: { kind: 'known' as const, value: { si: 0.03 as never, text: '30 mA' } },
            })),
          }
        : load,
    )
    const weak = jobOf({ ...job.tub, loads }, job.box, demoDevices)
    expect(messages(findingsOf(weak, landing))).toContain('below-least-load')
    expect(messages(findingsOf(job, landing))).not.toContain('below-least-load')
  })
})

describe('transformers', () => {
  test('an auto-transformer does not isolate: its output stands at mains to earth', () => {
    const { job, landing } = planned('two-lives-230', 'redshank-230')
    const on = solvedWith(job, landing, 'pump-low', 'ozone')
    expect(on.across('OZ-HI', 'OZ-RET')).toBeCloseTo(120, -1)
    expect(on.at('OZ-RET')).toBeGreaterThan(100)
  })

  test('the jumper picks the tap: on 230 V the tap for 120 V gives nearly twice the volts', () => {
    const { job, landing } = planned('turnable-230', 'tern-2')
    expect(landing.jumpers['JT']).toBe('v230')
    const wrong = slipped(landing, { jumpers: { JT: 'v120' } })
    expect(solvedWith(job, landing).across('LV', 'LV-COM')).toBeLessThan(13)
    expect(solvedWith(job, wrong).across('LV', 'LV-COM')).toBeGreaterThan(20)
  })

  test('primaryOhms is measured, a range, unknown or not said', () => {
    const kinds = demoBoxes().map(({ board }) => {
      const [trafo] = board.parts.filter(each => each.kind === 'transformer')
      return trafo?.primaryOhms?.kind
    })
    expect(new Set(kinds)).toEqual(new Set([undefined, 'known', 'range', 'unknown']))
  })
})

describe('ground-fault devices', () => {
  const parts = [...demoDevices.values()].flatMap(({ id, board }) =>
    board.parts.flatMap(part => (part.kind === 'ground-fault' ? [{ id, part }] : [])),
  )

  test('those of 6 mA have electronics that live on the supply and see neutral tied to earth', () => {
    for (const { part } of parts.filter(each => each.part.trip.to.si < 0.01)) {
      expect(part.poweredFrom).toHaveLength(2)
      expect(part.seesNeutralEarth).toBe(true)
    }
  })

  test('those of 30 mA need no supply', () => {
    const late = parts.filter(each => each.part.trip.to.si > 0.01)
    expect(late.length).toBeGreaterThan(3)
    for (const { part } of late)
      expect([part.poweredFrom, part.seesNeutralEarth]).toEqual([undefined, false])
  })
})

describe('a board with a photo', () => {
  test.each(['teal-32', 'tern-2'])('%s: a pin lies where its pixels say', id => {
    const { board } = demoBox(id)
    const [across, down] = board.photo?.pixels ?? [0, 0]
    expect(across / board.size.width.si).toBeCloseTo(down / board.size.height.si, 6)
    const pinned = [...board.terminals, ...board.jumpers].filter(each =>
      each.at?.[0].text.endsWith(' px'),
    )
    expect(pinned.length).toBeGreaterThan(0)
    for (const { at } of pinned) {
      const x = Number(at?.[0].text.replace(' px', ''))
      expect(at?.[0].si).toBeCloseTo((x / across) * board.size.width.si, 9)
    }
  })
})

describe('terminals', () => {
  test('one screw takes the return of two loads, where its maker says so', () => {
    const { job, landing } = planned('split-two-legs', 'whimbrel-2')
    const shared = job.box.board.terminals.find(each => each.id === 'T17')
    expect(shared?.conductors).toBe(2)
    expect(landing.ends['ozonator.common']).toBe('box.T17')
    const three = slipped(landing, {
      ends: { 'pump.common': 'box.T17', 'light.common': 'box.T17' },
    })
    expect(messages(findingsOf(job, three))).toContain('too-many-on-a-terminal')
  })
})

describe('modes', () => {
  test('heatYieldsTo: on a 120 V plug heat waits for high speed', () => {
    const { job, landing } = planned('turnable-230', 'tern-2')
    const cord = jobOf(demoTub('turnable-120'), job.box, demoDevices)
    expect(job.box.feeds.find(each => each.system === 'single-leg')?.heatYieldsTo).toEqual([
      'pump-high',
    ])
    for (const on of modesOf(cord, landing))
      expect(on.has('heat') && on.has('pump-high')).toBe(false)
  })

  test('assumesOn: line by line more may run together than on one line', () => {
    const three = planned('three-phase-400', 'curlew-400')
    const one = jobOf(
      { ...three.job.tub, supply: demoTub('long-feeder-230').supply },
      three.job.box,
      demoDevices,
    )
    expect(modesOf(three.job, three.landing).length).toBeGreaterThan(
      modesOf(one, three.landing).length,
    )
  })

  test.each(demoBoxes())(
    '$id never runs what is exclusive, nor heats without what heatsWith names',
    box => {
      const [profile] = box.profiles.filter(each => each.id === box.profileFactory)
      expect(profile?.heatsWith.length).toBeGreaterThan(0)
      for (const command of profile?.filtersWith ?? []) expect(profile?.commands).toContain(command)
      const tub = demoTub('everyday-240-plain')
      const job = jobOf(tub, box, demoDevices)
      const settings = { profile: box.profileFactory, currentLimit: box.currentLimit.factory }
      const landing: Landing = { ...proposed(demoJob('everyday-240-plain', 'heron-4')), settings }
      for (const on of modesOf(job, landing)) {
        for (const set of box.exclusive)
          expect(set.filter(each => on.has(each)).length).toBeLessThanOrEqual(1)
        if (on.has(box.heat)) expect(profile?.heatsWith.some(each => on.has(each))).toBe(true)
      }
    },
  )
})

describe('settings', () => {
  test('are entered by small-switches, keypad or jumper', () => {
    const by = (pick: (box: ControlBox) => readonly (string | undefined)[]) =>
      new Set(demoBoxes().flatMap(pick))
    const every = new Set([undefined, 'small-switches', 'keypad', 'jumper'])
    expect(by(box => [box.currentLimit.by])).toEqual(every)
    expect(by(box => box.profiles.map(each => each.by))).toEqual(every)
  })

  test('a current limit that names the breaker allows 80 % of it', () => {
    const { job, landing, proven } = planned('three-phase-400', 'curlew-400')
    expect(job.box.currentLimit.names).toBe('breaker')
    expect(landing.settings.currentLimit.si).toBe(16)
    const margin = proven.verification.findings.find(each => each.message === 'no-margin')
    expect(margin?.params['allowed']).toBeCloseTo(12.8, 9)
  })

  test('afterReset says in words what resetsTo says to the judge', () => {
    for (const { resetsTo, afterReset } of demoBoxes())
      if (resetsTo) expect(afterReset?.length).toBeGreaterThan(10)
    const { job, landing } = planned('long-feeder-230', 'curlew-400')
    const verdict = verifyPlan(job, landing)
    expect(job.box.resetsTo?.currentLimit?.si).toBe(16)
    expect(verdict.ok && messages(verdict.value.findings)).not.toContain('unsafe-after-reset')
  })

  test('largestBreaker and regions refuse a box by its plate', () => {
    const tub = demoTub('long-feeder-230')
    const reasons = (box: string) =>
      matchEquipment(tub, [demoBox(box)]).boxes[0]?.shortfalls.map(each => each.message)
    expect(reasons('sorrel-32')).toContain('not-for-region')
    expect(reasons('tern-2')).toContain('breaker-too-large')
  })
})

describe('probes of a pair that proves the flow', () => {
  const { job, landing } = planned('three-phase-400', 'curlew-400')

  test('sit at heater-inlet and heater-outlet, on inputs of duty flow-inlet and flow-outlet', () => {
    expect(job.box.flowProof).toBe('probe-pair')
    expect(job.box.sensors.map(each => [each.duty, each.reads])).toEqual([
      ['control', 'water'],
      ['flow-inlet', 'heater-inlet'],
      ['flow-outlet', 'heater-outlet'],
      ['limit', 'heater-outlet'],
    ])
  })

  test('exchanged they are a danger, though they read the same', () => {
    const found = findingsOf(
      job,
      slipped(landing, {
        ends: {
          'inlet-probe.signal': landing.ends['outlet-probe.signal'] ?? '',
          'outlet-probe.signal': landing.ends['inlet-probe.signal'] ?? '',
        },
      }),
    )
    const misplaced = found.filter(each => each.message === 'probe-misplaced')
    expect(misplaced.map(each => each.subjects[0]).toSorted()).toEqual(['inlet', 'outlet'])
  })
})

describe('what a survey says of a motor', () => {
  test('capacitors, by use and place', () => {
    expect(pumpOf('wye-208', 'pump-a').capacitors).toMatchObject([
      { use: 'run', place: 'on the motor', capacitance: { text: '30 uF' } },
    ])
    expect(
      pumpOf('three-phase-400', 'pump').capacitors.map(each => [each.use, each.place]),
    ).toEqual([
      ['start', 'in a box of its own'],
      ['run', 'in a box of its own'],
    ])
    expect(pumpOf('plain-breaker-230', 'pump').capacitors[0]?.place).toBe('in the control box')
  })

  test('startSwitch: centrifugal, relay or none; startsOn; thermalCutOut', () => {
    expect(pumpOf('wye-208', 'pump-a')).toMatchObject({
      startSwitch: 'centrifugal',
      startsOn: 'high',
      thermalCutOut: true,
    })
    expect(pumpOf('three-phase-400', 'pump').startSwitch).toBe('relay')
    expect(pumpOf('plain-breaker-230', 'pump').startSwitch).toBe('none')
  })

  test('ohms and inrush of a winding, known, a range or unknown', () => {
    const [high] = pumpOf('wye-208', 'pump-a').circuits
    expect([high?.ohms?.kind, high?.inrush?.kind]).toEqual(['known', 'known'])
    const [other] = pumpOf('plain-breaker-230', 'pump').circuits
    expect([other?.ohms?.kind, other?.inrush?.kind]).toEqual(['range', 'unknown'])
    const [variable] = pumpOf('variable-speed', 'pump').circuits
    expect(variable?.ohms).toEqual({ kind: 'unknown', reason: 'does not exist' })
  })
})

describe('lights and cells by their current', () => {
  test('a light for alternating current goes to the output that gives it, and no other', () => {
    expect(messages(findingsOf(...proposal('wye-208', 'dunlin-208')))).not.toContain(
      'light-on-wrong-current',
    )
    const match = matchEquipment(demoTub('wye-208'), [demoBox('knot-3')])
    const about = match.boxes[0]?.shortfalls.filter(each => each.subjects[0] === 'light')
    expect(about?.map(each => each.message)).toEqual(['no-place'])
  })

  test('a mains lamp is served by the output for it', () => {
    const { landing } = planned('three-phase-400', 'curlew-400')
    expect(landing.ends['lamp.hot']).toBe('box.N1')
  })

  const proposal = (tub: string, box: string): [Job, Landing] => {
    const job = demoJob(tub, box)
    return [job, proposed(job)]
  }
})

describe('a variable-speed pump', () => {
  const job = demoJob('variable-speed', 'knot-3')
  const landing = proposed(job)

  test('lands its data line at the terminal for it, the rest at the relays', () => {
    expect(landing.ends['pump.data']).toBe('box.vp-d')
    expect(landing.ends['pump.hot']).toBe('box.vp-h')
  })

  test('a box without a data terminal has no place for it', () => {
    const match = matchEquipment(demoTub('variable-speed'), [demoBox('heron-4')])
    const about = match.boxes[0]?.shortfalls.filter(each => each.subjects[0] === 'pump')
    expect(about?.map(each => each.message)).toEqual(['no-place'])
  })

  // Not yet: a lead of function data is judged as any other lead of a mains load.
  test('has a plan: its data line and its mains leads are apart inside it', () => {
    expect(planAndProve(job).ok).toBe(true)
  })

  test('the data line on a mains terminal is a danger', () => {
    const found = findingsOf(job, slipped(landing, { ends: { 'pump.data': 'box.oz-h' } }))
    expect(found.some(each => each.severity === 'danger')).toBe(true)
  })
})

describe('a heater that the tub keeps', () => {
  test('is on a box whose flowProof was made for another: not shown', () => {
    const box = demoBox('heron-4')
    const own = box.supplied.filter(each => each.kind === 'heater')
    const tub = demoTub('everyday-240-plain')
    const job = jobOf({ ...tub, loads: [...tub.loads, ...own] }, box, demoDevices)
    const told = findingsOf(job, proposed(job)).find(each => each.message === 'flow-proof-unproven')
    expect(told?.params['proof']).toBe(box.flowProof)
  })
})

describe('colours', () => {
  // Letters of IEC 60757 as the trade knows them.
  test.each<[Colour, string]>([
    ['brown', 'BN'],
    ['orange', 'OG'],
    ['yellow', 'YE'],
    ['blue', 'BU'],
    ['violet', 'VT'],
    ['grey', 'GY'],
    ['pink', 'PK'],
    ['turquoise', 'TQ'],
    ['green-yellow', 'GNYE'],
  ])('%s is %s', (colour, letters) => {
    expect(COLOUR_LETTERS[colour]).toBe(letters)
  })
})
