import type { Colour, SheetMessage } from '@tubwright/core'
import { LADDER_EN } from './ladder.ts'

/** The work sheet in English, by message: short, and said to the person at the tub. */
export const SHEET_EN: Readonly<Record<SheetMessage, string>> = {
  ...LADDER_EN,
  'head.supply': '{system}, {frequency}. Breaker {breaker}. To the tub: {wires}.',
  'head.limit': 'Current limit: set {setting} (factory {factory}).',
  'head.limit-breaker':
    'Current limit: set {setting} (factory {factory}). The setting names the breaker: the box draws at most {allowed:A}.',
  'head.proven': 'Plan proven by solving its circuit.',
  'head.provided':
    'The plan holds PROVIDED you heed {points} below. Not heeded, it is not shown to hold.',
  'head.proof':
    '{verdict} Solved: {modes} modes and {transitions} states that it passes between them ({solves} solves). The current law holds to {residual} of the largest current.',
  'head.proof-modes':
    '{verdict} Solved: {modes} modes, and every change between them is one of these ({solves} solves). The current law holds to {residual} of the largest current.',
  'head.margin':
    'Tightest contact or fuse keeps {margin:percent} in hand. Most from one leg: {amps:A}.',
  'head.margin-greatest':
    'With each draw that is not exactly known at its greatest: tightest contact or fuse keeps {margin:percent} in hand. Most from one leg: {amps:A}.',
  'head.not-proven': 'This plan is NOT shown to hold. Do not build it.',
  'head.circuits':
    '{system}, {frequency}. TWO circuits reach this tub. A name without a circuit is of Circuit 1.',
  'head.circuit':
    '{circuit}: breaker {breaker}. From one leg at most {limit}; the plan takes {amps:A}. Brings {wires}.',
  'head.circuit-idle': '{circuit}: breaker {breaker}. It NO LONGER SERVES this tub. See below.',
  'head.given': 'Of a landing from a file, as built or made by hand: not planned here.',
  'head.changed': 'The plan is of the tub AFTER the changes below, not as it was found.',
  'system.split-phase': '120/240 V, two legs',
  'system.single-leg': '120 V, one leg',
  'system.two-legs-of-wye': '120/208 V, two legs of a wye',
  'system.single-phase-230': '230 V, single-phase',
  'system.two-lives-230': '230 V between two lives, no neutral',
  'system.three-phase-230-400': '230/400 V, three-phase with neutral',
  'system.high-leg-delta': '120/240 V delta with a high leg',
  'breaker.known': '{amps:A}',
  'breaker.range': '{from:A} to {to:A}',
  'breaker.unknown': 'not known',

  'circuit.first': 'Circuit 1 ({device})',
  'circuit.second': 'Circuit 2 ({device})',
  'device.of-box': 'the ground-fault device in {box}',
  'cut.heat-load':
    '{thing} shows heat: off with what got hot, back to bright copper, new ends. Tighten no heated screw.',
  'cut.heat-device':
    '{thing} shows heat: locked off upstream of it, put a new one in its place; its conductors back to bright copper. Tighten no heated screw.',
  'cut.heat-cable':
    '{thing} shows heat: both ends back to bright copper, or a new cable. Tighten no heated screw.',
  'live.turnable':
    'The plug goes in both ways round: take either lead of every load for live until the plug is OUT.',
  'mend.points': 'Put right: {points} of the first page.',
  'mend.file': 'Write down what was changed, in the file of the landing.',
  'mend.judge': 'Have it judged again, and print its sheet again. This one goes in the bin.',
  'stop.kill':
    'Mains and water kill. Switch off, lock, and prove every pair dead before a hand goes in.',
  'stop.signs':
    'Stop and switch off at the panel for a tingle, smoke, a smell of burning, or water hotter than set while the heater draws.',
  'stop.bypass':
    'Never bridge a limit, a flow proof, a thermostat or a ground-fault device. Not for a test either.',
  'stop.maker': 'The maker’s instructions and the local code win over this sheet.',
  'stop.not-shown': 'This landing is NOT shown to hold. No power. Do not build it.',
  'licence.US':
    'Supply wiring is usually work for a licensed electrician here, with permit and inspection. Some states license work inside the tub too.',
  'licence.CA':
    'Supply wiring is work for a licensed contractor in most provinces, with permit and inspection. The box needs a mark that the province accepts.',
  'licence.UK':
    'New or altered circuits are work for a competent registered person here and may be notifiable. Keep the certificate.',
  'licence.EU':
    'Supply wiring follows national rules here and is often for registered installers only.',
  'licence.AU':
    'Supply wiring, and repair of mains equipment, is for licensed people here. A certificate goes with it.',
  'licence.NZ':
    'Supply wiring is for licensed people here, with narrow exceptions. A certificate goes with it.',
  'licence.ask':
    'Ask the authority: Who may do this work at this address? Which edition of the code applies? Is a permit, an inspection or a certificate needed?',
  'licence.edition':
    'Rules behind this sheet: common practice, and the edition named with each rule. Verify the edition in force.',

  'open.none': 'Nothing is left open.',
  'open.assumed-unknown':
    '{load}: draw not known. The plan holds provided it draws {bound}. Read the plate, or measure it in “{step}”.',
  'open.assumed-range':
    '{load}: draw not exactly known. The plan holds provided it draws {bound}. Measure it in “{step}”.',
  'bound.most': 'at most {amps:A}',
  'bound.both': 'at least {least:A} and at most {most:A}',
  'bound.load': '{load} ({commands})',
  'wires.run': '{from} to {to}',
  'open.re-identify':
    'Wire no. {wires} (* in the drawing): coloured as neutral, carries line volts. Mark it again at both ends.',
  'open.live-when-off': 'A lead stays live when these are off: {loads}. Put the list in the lid.',
  'open.condition': '{load} as found: {condition}',
  'open.tub-note': 'Tub: {note}',
  'open.box-note': 'Box: {note}',
  'open.circuit-idle':
    '{circuit}, breaker {breaker}, no longer serves: the box takes nothing from it. A licensed person takes it away at the panel, or it stays off, locked and labelled there. Meanwhile its wires {wires} are capped at the tub. Until then somebody can make them live.',
  'open.circuit-alone':
    '{circuit} alone feeds the box now, behind {breaker}: it may draw {share:A} at most (80 %). The limit is set to {setting}; never set it for the two breakers together, nor for the larger one.',
  'open.turnable':
    'The plug goes in both ways round. The plan was judged both ways. Line and neutral may have changed places: either lead of a load may be live when it is off. It is dead only with the plug OUT, and tested so.',
  'open.heat-load':
    '{thing} shows heat. Replace every plug, lug, tab and lead of it that got hot, and cut each conductor back to bright copper. A heated screw or lug is never tightened again. Find out why it got hot before it gets power.',
  'open.heat-device':
    '{thing} shows heat. Replace it, and cut each conductor on it back to bright copper. A heated screw or lug is never tightened again. Find out why it got hot before it gets power.',
  'open.heat-cable':
    '{thing} shows heat. Cut each conductor back to bright copper; where it is too short then, replace the cable. A heated screw or lug is never tightened again. Find out why it got hot before it gets power.',

  'function.leg1': 'leg 1',
  'function.leg2': 'leg 2',
  'function.leg3': 'leg 3',
  'function.second-leg1': 'leg 1 of circuit 2',
  'function.second-leg2': 'leg 2 of circuit 2',
  'function.second-neutral': 'neutral of circuit 2',
  'function.second-earth': 'earth of circuit 2',
  'function.neutral': 'neutral',
  'function.line': 'line',
  'function.earth': 'earth',
  'function.hot': 'hot',
  'function.high': 'high speed',
  'function.low': 'low speed',
  'function.common': 'return',
  'function.signal': 'signal',
  'function.data': 'data',
  'pin.high': 'high',
  'pin.low': 'low',
  'function.tail': 'own tail',
  'tail.white': 'Breaker’s own tail, {device}',

  'owner.cable': '{cable}: {from} to {to}',
  'owner.load': '{load} → {place}',
  'owner.load-unplaced': '{load}: no place, stays off',
  'plug.none': 'Bare leads.',
  'plug.own': 'Its own plug ({shape}) into {socket}.',
  'plug.adapter': 'Make an adapter: {shape} to {socket}, {socketShape}.',
  'plug.adapter-bare': 'Make a plug on its bare leads: {socket}, {socketShape}.',
  'fix.screw': 'screw, {torque}',
  'fix.screw-maker': 'screw, maker’s torque',
  'fix.stud': 'stud, {torque}',
  'fix.stud-maker': 'stud, maker’s torque',
  'fix.tab': 'push-on tab',
  'fix.pin': 'plug pin',
  'note.re-identify': 'MARK AGAIN: it carries line volts.',
  'note.insulated': 'CAP IT. It lands nowhere.',
  'note.loose': 'LOOSE. Cap it before power.',
  'note.moved': 'MOVE IT. It was found on {from}.',

  'setting.profile': 'Equipment profile',
  'setting.limit': 'Current limit',
  'setting.after-reset': 'After a reset: {text}',
  'meter.unknown-amps': 'Not known: {bound}, else stop. Write it down.',
  'together.heat-waits': 'Heat waits while any of these runs: {commands}.',
  'together.heat-with-any': 'No single load stops the heat.',
  'together.limit':
    'The box keeps within its current limit of {setting}. What stands in no row together does not run together.',
  'together.greatest': 'Each draw that is not exactly known counts here at its greatest.',

  'tool.lock': 'Lock and tag.',
  'tool.meter': 'Rated meter and leads, and a known live source to prove it on.',
  'tool.clamp': 'Clamp meter.',
  'tool.torque': 'Torque driver for {torques}.',
  'tool.crimp': 'Crimper for the ends below.',
  'tool.insulated': 'Insulated drivers, gloves, dry mat.',
  'tool.labels': 'Camera and numbered labels.',
  'tool.thermometer': 'Thermometer you trust.',
  'tool.dry': 'Wet vacuum and towel.',
  'part.adapter': 'Adapter for {load}: from {plug} to {socket}.',
  'part.plug': 'Plug for {load}, on its bare leads: {socket}.',
  'part.ferrules': 'Ferrules, {count}, each to suit its wire.',
  'part.ring-terminals': 'Ring terminals, {count}.',
  'part.tab-terminals': 'Insulated tab terminals, {count}.',
  'part.caps': 'Insulating caps, {count}.',
  'part.blanking-plate':
    'Blanking plate: the old keypad hole is {width:mm} × {height:mm}, the keypad covers {ownWidth:mm} × {ownHeight:mm}.',
  'part.wider-hole':
    'The keypad hole must grow from {width:mm} × {height:mm} to {ownWidth:mm} × {ownHeight:mm}.',
  'part.marking': 'Marking sleeves, two for each wire marked *: {count}.',
  'part.gaskets': 'Heater gaskets and union rings.',
  'part.bond': 'Bond wire and lugs, where the old ones are short, thin or green: {size}.',
  'part.relief': 'Strain reliefs and seals for every entry.',
  'part.heat-load':
    'For {thing}, which shows heat: new plug, lugs and tabs, and lead to replace what is burnt.',
  'part.heat-device': 'New, of the same kind and rating: {thing}, which shows heat.',
  'part.heat-cable':
    'For {thing}, which shows heat: new lugs, and cable to replace it where it gets too short.',

  'step.lock': 'Lock off and prove dead',
  'step.photo': 'Photograph and label',
  'step.remove': 'Take the old box out',
  'step.mount': 'Mount the box',
  'step.land': 'Land the leads',
  'step.supply': 'Land the supply',
  'step.jumpers': 'Set jumpers and straps',
  'step.relief': 'Clamp, loop, seal',
  'step.cold': 'Check it cold',
  'step.fill': 'Fill',
  'step.power': 'First power, nothing plugged in',
  'step.settings': 'Enter the settings',
  'step.outputs': 'Call each output, nothing plugged in',
  'step.loads': 'One load at a time',
  'step.keypad': 'Keypad and light',
  'step.protect': 'Prove the protections',
  'step.close': 'Close up',
  'step.mend': 'Stop: put it right first',

  'caution.lock': 'The line side of {device} stays live. It kills.',
  'caution.lock-cord': '{device}: plugged in again by somebody else, it kills.',
  'caution.photo': 'No photo, no way back.',
  'caution.remove':
    'Water runs out of the unions. Keep it off the wiring. Foil and sheet edges cut.',
  'caution.mount': 'Box and heater are heavy in a tight bay. Lift with two.',
  'caution.land':
    'A wire on the wrong terminal can make water live. Still locked off? Prove dead again.',
  'caution.supply':
    'The supply end is another enclosure with live parts of its own. Locked off here is not locked off there.',
  'caution.supply-cord':
    'A cord that is landed is one push from live. The plug stays out, in sight.',
  'caution.jumpers':
    'A jumper or strap in the wrong place burns a load or shorts the supply. Move it dead, never live.',
  'caution.relief': 'A pulled wire is a live wire. Water follows a cable into the box.',
  'caution.cold': 'Ohms on a live wire hurt you and the meter. Prove dead again.',
  'caution.fill': 'A heater with air in it burns dry. Air out before power.',
  'caution.power':
    'Live board. Nobody in the water. Second person near. One hand, dry mat, rated leads. No owner does this step.',
  'caution.settings': 'A current limit set too high cooks the supply. The board is live.',
  'caution.outputs': 'Live board, as before. Touch nothing but the probe tips to the terminals.',
  'caution.loads': 'Never plug in live. Off, prove dead, plug, on. Each time.',
  'caution.keypad': 'A keypad of another make does not fit. Force no plug.',
  'caution.protect': 'If one fails to act, the tub stays off and locked. Never bridge it.',
  'caution.close': 'A broken suction cover holds a bather under water.',
  'caution.mend': 'Power on a landing that is not shown to hold can kill. It stays off and locked.',
  'caution.lock-circuits':
    'TWO circuits reach this tub: one off is NOT off. The line sides stay live, at: {circuits}. They kill.',

  'lock.off': 'Switch off at {device}. Lock it. Hang your tag.',
  'lock.cord': 'Pull it out of its outlet: {device}. Keep it in sight. Tag it.',
  'lock.cord-means': 'From here on “off” and “lock” mean: plug out, in sight, tagged.',
  'lock.meter': 'Prove the meter on a known live source.',
  'lock.pairs': 'Read every pair below at the old box.',
  'lock.neutral-stays':
    'NEUTRAL STAYS CONNECTED: {device} does not open it, off or tripped. A fault elsewhere can lift it. Test neutral to earth as well before you touch it.',
  'lock.meter-again': 'Prove the meter on the live source again.',
  'lock.capacitors':
    'Wait five minutes for motor capacitors. Prove each one empty before you touch it.',
  'lock.circuits-mean':
    'From here on “off”, “lock” and “prove dead” mean BOTH circuits, each with a lock of its own.',
  'lock.idle': '{circuit} no longer serves. Its lock and tag STAY when the tub comes on again.',
  'lock.turnable':
    'The plug turns: no switch and no tripped device makes this cord dead for sure. Test with the plug OUT only.',
  'photo.open': 'Photograph the open box, straight on, before you touch a plug.',
  'photo.label': 'Label each wire at both ends with its number from this sheet.',
  'photo.function': 'Trust function, not colour: follow each lead to its motor or part.',
  'remove.water': 'Shut the valves at the heater, or drain below it.',
  'remove.leads': 'Take the leads off. Cap each supply wire.',
  'remove.heat-marks': 'Throw away every plug, lug or lead that shows heat.',
  'remove.probes': 'Take the old probes out. Use none again.',
  'remove.box': 'Take box and heater out. Dry the bay.',
  'remove.box-alone': 'Take the box out. The heater stays. Dry the bay.',
  'remove.changes': 'Changes at the tub come first: {points} of the first page.',
  'remove.left-out': '{load} is left out: cap each of its leads by itself, for good. Label it.',
  'mount.box': 'Mount {box} as its maker shows: upright, dry, clear of hot pipe.',
  'mount.heater': 'Fit {heater}. New gaskets. Unions by hand.',
  'mount.heater-kept': 'Keep {heater}. New gaskets. Unions by hand.',
  'mount.probe': 'Seat {probe} fully in its pocket: {place}.',
  'bond.wire': 'Bond wire: {size}. In one piece, or joined by a clamp made for it.',
  'bond.size-us': 'solid copper, 8 AWG or thicker, or the local figure if that is more',
  'bond.size-local': 'copper, size by the maker’s or local figure',
  'bond.join':
    'Bond: from {lug} to the bond lug of each of these: {parts}; and to any other metal within reach.',
  'bond.lug': 'lug {lug} of the box ({torque})',
  'bond.lug-no-torque': 'lug {lug} of the box (torque by the maker’s figure)',
  'bond.lug-maker': 'the bond lug of the box, as its maker marks it (torque by the maker’s figure)',
  'bond.torque':
    'Bright metal under each lug, one wire a lug, torque by the figure of each part. Pull each one.',
  'place.water': 'water of the tub',
  'place.heater-inlet': 'heater tube, inlet end',
  'place.heater-outlet': 'heater tube, outlet end',
  'land.supply-waits':
    'Leave the supply wires off the new box, each capped, until the cold check is done.',
  'land.supply': 'Land the supply at the box: wires {wires}. Earth first.',
  'supply.upstream':
    'Before you open any enclosure upstream: off at the breaker that feeds it, lock, prove every pair dead there too.',
  'supply.neutral-stays':
    'Neutral there stays connected unless that breaker opens it. Test it to earth as well before you touch it.',
  'supply.between': 'Look at the wires between the supply enclosures: {wires}. Each at both ends.',
  'supply.shut': 'Close every upstream enclosure before power.',
  'supply.low-volts': 'Still off: plug in probes, keypad and low-voltage leads now, wires {wires}.',
  'supply.upstream-circuits':
    'Before you open any enclosure upstream: off at BOTH breakers that feed it, lock each, prove every pair of both dead there too.',
  'supply.circuits-apart':
    'Keep the circuits apart: no neutral and no line of one on a terminal of the other. See the wire table twice.',
  'supply.circuit-idle':
    '{circuit}, breaker {breaker}, no longer serves. Cap its wires {wires} at the tub, each by itself; label them. At the panel: taken away by a licensed person, or off, locked, labelled.',
  'land.no-neutral': 'This supply has no neutral. Land none, and take none from earth.',
  'land.tail':
    'See that the white tail (wire {wire}) of {device} sits on: {terminal}. Off it, the device is blind.',
  'land.move': 'MOVE wire {wire} at its supply end: from {from} to {to}.',
  'land.workmanship': 'One wire a terminal. Copper only. No strand outside. Pull each one.',
  'land.shared': 'Only here wires share a terminal, as its maker allows: {terminals}.',
  'land.torque': 'Turn each screw and nut to its torque (wire table). Paint a line across it.',
  'land.re-identify': 'Mark again at both ends: wire no. {wires}.',
  'land.low-volts':
    'Probes and low-voltage leads {wires}: leave unplugged too, until the cold check is done.',
  'land.heater-earth': 'Land the earth of the heater: wire {wires}.',
  'land.heater':
    'Heater leads {wires}: leave off their terminals, each capped, until the heater is tried.',
  'land.loads':
    'Load leads {wires}: make up their ends now. Leave them UNPLUGGED or off their terminals, each capped.',
  'land.caps': 'Cap for good: wire no. {wires}.',
  'jumper.move': 'MOVE {jumper} ({what}): {from} → {to}.',
  'jumper.leave': 'LEAVE {jumper} ({what}) at {to}. See that it sits there.',
  'strap.move': 'MOVE the strap of {load}: {from} → {to}, as its plate shows.',
  'strap.leave': 'LEAVE the strap of {load} at {to}. See that it sits there.',
  'relief.clamp': 'Clamp each cable at its entry. Pull: it must not move.',
  'relief.loop': 'Leave a drip loop below each entry.',
  'relief.holes': 'Close every unused hole.',
  'relief.clear': 'Tie leads clear of hot pipe and fans.',
  'cold.dead': 'Every pair dead again, at the capped supply wires.',
  'cold.zero':
    'Meter leads together first: zero it, or take what it shows off every reading below 10 Ω.',
  // Surge suppressors are described in no file.
  'cold.insulation':
    'Insulation test ({volts:V} direct): supply wires off the box (a ground-fault device dies of it), lines and neutral joined against earth: first unplug or take off {parts}. It dies, or the test reads wrong. Sound: near {expected:ohm}; above {least:ohm} will do, below {suspect:ohm} is suspect; one good part alone: above {good:ohm}. A surge suppressor reads low by design and has to be off too.',
  'fill.valves': 'Open every valve that you shut at the heater. Fully.',
  'fill.well': 'Fill through the filter well, so that water pushes the air out.',
  'fill.air': 'Loosen the highest union until it weeps. Tighten by hand.',
  'fill.look': 'Look at every union for leaks. Dry the bay.',
  'power.ready': 'Loads unplugged and capped. Probes and keypad in.',
  'power.ready-heater': 'Heater leads {wires} off and capped.',
  'power.on': 'Your own locks and tags off, upstream first. On.',
  'power.on-cord': 'Hands out of the box. Plug in.',
  'power.button': 'Press the test button of {device}: it must trip. Reset.',
  'power.read': 'Read every pair below.',
  'power.on-circuit': 'On: {circuit}. Your own locks and tags off, upstream first.',
  'power.idle-stays': 'STAYS OFF, locked and tagged: {circuit}.',
  'power.button-box':
    'Press the test button of {device}, and touch nothing else: it must trip. {terminals} stay LIVE. Reset.',
  'set.dead':
    'A switch, dial, lever or cap inside the box: off, lock, prove dead, set it, hands out, on.',
  'set.enter': '{setting}: {value}. Enter it so: {entered}.',
  'set.cycle': 'Off for ten seconds. On. Read every setting back.',
  'set.falls':
    'At each power cut the box forgets: {settings}. Enter it again now, and read it back.',
  'set.again': 'Power was off: before anything runs, enter again and read back: {settings}.',
  'set.value': '{setting}: {value}',
  'set.point': 'Set point 40 °C (104 °F) at most.',
  'set.circuit-alone':
    '{circuit} alone feeds the box, behind {breaker}: never a limit that lets it draw more than {share:A}. Planned: {setting}.',
  'outputs.call': 'Call one output at a time. Read its terminals.',
  'outputs.off': 'Off. Lock. Prove dead.',
  'loads.land':
    '{load}: off, prove dead, land at {place} (wires {wires}), torque. {amps} On. Run it.',
  'loads.plug': '{load}: off, prove dead, plug in at {place} (wires {wires}). {amps} On. Run it.',
  'loads.heater':
    '{load}, last: off, prove dead, land at {place} (wires {wires}), torque. {amps} On. Water must move first. Then heat.',
  'loads.clamp': 'Clamp meter round wire {wire}.',
  'loads.amps': 'Read amps.',
  'loads.again':
    'After EVERY “on” in this step the box has forgotten: {settings}. Enter it and read it back before anything runs.',
  'loads.earth': 'After each load is plugged in, still off: ohms from the earth lug to its metal.',
  'loads.air': 'Bleed air as each pump starts. An air-clearing run of minutes comes before heat.',
  'loads.worst': 'Run the worst together: {commands}. Read amps in each leg.',
  'loads.heat-waits': 'Start any of these and see that heat stops: {commands}.',
  'loads.bound':
    'Measure {load} running: {bound}. Any other reading: stop, off, lock. The plan is not proven; plan again with what you read.',
  'loads.worst-circuit':
    'Run the worst together on {circuit}: {commands}. Read amps in each leg of it.',
  'keypad.fit': 'Seat keypad and seal. Cable clear of pipe.',
  'keypad.keys': 'Press every key. Each does what its label says.',
  'keypad.light': '{load}: on, off.',
  'protect.button': 'Test button of {device}: everything goes dead. Reset.',
  'protect.button-neutral':
    'Test button of {device}: every line goes dead; neutral stays connected. Reset.',
  // How flow is throttled, and what has to follow: common practice, no source.
  'protect.clamp':
    'Clamp meter still round a heater lead (wire {wire})? If not: off, prove dead, put it there, on.',
  'protect.flow-maker':
    'Flow proof: the maker’s own test goes first. No valve at the heater? The maker’s test alone. Never an empty heater, never a bridged proof.',
  'protect.flow-ready':
    'Running: {command}. Set above water temperature: heat on, amps on the clamp meter. A second person stays at the off switch.',
  'protect.pair-order':
    'Does the box show both probes? At full flow the outlet reads the inlet or a little more. Less: the two are exchanged. Off, put them right.',
  'protect.pressure-switch':
    'Slowly shut the valve between pump and heater; one behind the heater raises the pressure and proves nothing. Heat must stop, and the flow alarm come, before it is quite shut.',
  'protect.flow-switch':
    'Slowly shut a valve of the heater. Heat must stop, and the flow alarm come, before it is quite shut.',
  'protect.probe-pair':
    'Slowly throttle a valve of the heater to a trickle, never quite shut. The outlet grows warmer than the inlet: heat must stop, and the flow alarm come.',
  'protect.flow-late':
    'Heat still on {seconds} s after the flow fell, a hot tube, or a knock in it: off at once, lock, valve open. The flow proof has failed. The tub stays off.',
  'protect.flow-back': 'Open the valve fully. Clear the alarm as the maker says. Heat comes back.',
  'protect.limit': 'Over-temperature: test only as the maker of the box says.',
  'protect.heat-stops': 'Set below water temperature: heat must stop. Set back.',
  'protect.button-circuit':
    'Test button of {device}: its own circuit goes dead, the OTHER stays live. Reset.',
  'protect.button-box':
    'Test button of {device}: everything behind it goes dead; {terminals} of the box stay LIVE. Reset.',
  'close.off': 'Off, lock, prove dead. Once more round every screw and plug.',
  'close.suction':
    'Suction covers whole, fixed, and rated for the pump behind them. If not, the tub stays shut.',
  'close.lid': 'Fix this sheet and the live-when-off list in the lid. Lid closed, seal clean.',
  'close.panels': 'Cables clear of hot pipe. Panels on. Breaker labelled.',
  'close.settings': 'On. Read the settings back once more.',
  'close.paper':
    'On the owner’s paper: “After every power cut read back {settings}. Anything else shown: switch off, do not bathe, and call the number below.”',
  'close.falls':
    'And on it: “A power cut changes {setting} to: {fallsTo}. It must be: {value}. Until then the tub stays off.”',
  'close.owner': 'Show the owner: off switch, monthly test button, when heat waits.',
  'close.panels-circuits':
    'Cables clear of hot pipe. Panels on. BOTH breakers labelled: “Hot tub, one of two. Switch off both.”',
  'close.idle':
    'At the panel {circuit} is labelled: “Served the hot tub. Capped there. Do not switch on.” Its lock stays until it is taken away.',
  'close.owner-circuits':
    'Show the owner: BOTH off switches, of {circuits}, for one alone leaves part of the tub live; the monthly test button of each; when heat waits.',

  'named.element': '{of}',
  'named.winding': 'winding “{name}” of {of}',
  'named.probe': '{of}',
  'named.load-electronics': '{of}',
  'named.primary': 'the primary of {name} on {of}',
  'named.secondary': 'the secondary of {name} on {of}',
  'named.electronics': 'the electronics {name} of {of}',
  'named.ground-fault': 'the ground-fault electronics {name} of {of}',
  'named.semiconductor': 'the triac {name} of {of}',
  'named.input': 'the sensor input “{name}” of {of}',
  'named.board': 'the board of {of}',

  // What the trade suspects first: common practice, no source.
  'outside.dead':
    'Not 0 V: it is not dead. Hands out, lid on. Look for a second supply or the wrong switch. Go on at 0 V only.',
  'outside.cold':
    'No power. Closed where open should be: look at jumpers and at what is landed. Element open or off: burnt out, or not that element. Probe off: wet, broken, or not that probe.',
  'outside.bond':
    'Earth or bond high: loose lug, paint or rust under it, a wire missed. Mend it, measure again.',
  'outside.feed': 'Off, lock, find out why. Nothing is plugged in before every pair is right.',
  'outside.setting': 'Off, lock. Nothing runs on a setting that does not read back.',
  'outside.output': 'Off, lock, look at jumpers and wires. Plug nothing in there.',
  'outside.case': 'Earth to metal high or open: that load gets no power. Look at its earth lead.',
  'outside.motor-high':
    'Motor amps above: off, lock, do not go on. Likely: strap or jumper for other volts, jammed or rubbing impeller, dry bearings, weak capacitor, low supply volts.',
  'outside.motor-low':
    'Motor amps below: off, lock, do not go on. Likely: air lock, shut valve, clogged filter, loose impeller, the two speeds exchanged, half its volts.',
  'outside.motor-none':
    'No amps, or a hum and no turning: off, lock. Likely: plug not seated, fuse open, the motor’s own cut-out, dead capacitor.',
  'outside.heater':
    'Heater amps about half: half its volts, or half its element. None: no flow, limit open, or the box waits. Above: not that element. Off, lock, find out why.',
  'outside.worst':
    'One leg too high, or volts sag: off, lock. Look for a loose lug on the way, a wrong limit, a load on the wrong leg.',
  'outside.protect': 'Off, lock, tag. The tub stays off until it acts.',

  'read.pair': '{a} to {b}',
  'read.terminals': '{what} ({a} – {b})',
  'read.case': 'Earth lug – metal of {load}, connected, power off',
  'read.jumper': '{jumper}: {a} – {b}',
  'read.heater': '{load}, element alone, leads off {terminals}',
  'read.winding': '{load}, unplugged: {a} – {b}',
  'read.earth': 'Earth: {a} to {all}, heater tube, box metal. Write the highest',
  'read.run': 'Earth of the run, by a long test lead zeroed with it: {a} – {b}',
  'read.bond': 'Bond lug of the box – metal of {load}',
  'read.bond-other': 'Bond lug of the box – other metal in reach. Write the highest',
  'read.pressure-switch': 'Pressure switch, its plug off, pump at rest',
  'read.flow-switch': 'Flow switch, its plug off, pump at rest',
  'read.probe': '{probe}, unplugged',
  'read.output': '{command}: {a} – {b}',
  'read.always-on': '{place}, always on: {a} – {b}',
  'read.amps': '{load}, {command}',
  'read.amps-always': '{load}, always on',
  'read.worst': 'Worst together, highest leg',
  'read.volts-loaded': 'Volts at the box, worst together',
  'read.setting': '{setting}, read back',
  'read.setting-heat': '{setting}, read back before heat',
  'read.trips': '{device} trips',
  'read.heat-stops': 'Heat stops once the flow falls, after',
  'read.flow-alarm': 'The box shows its flow alarm',
  'read.valves-open': 'Heater valves fully open again',
  'read.water': 'Water shown / thermometer',
  'read.time': 'Date and time',
  'read.name': 'Done by',
  'read.call': 'Who to call: name and number',
  'read.worst-circuit': 'Worst together on {circuit}, highest leg',
  'read.volts-circuit': 'Volts of {circuit} at the box, worst together',
  'expect.dead': '0 V',
  'expect.volts': '{volts:V} ({low:V} to {high:V})',
  'expect.low-volts': 'below {limit:V}',
  'expect.amps': '{amps} A ({low} A to {high} A)',
  'expect.amps-not-known': 'not known: {bound}, else stop',
  'expect.at-most': 'at most {amps:A}',
  'expect.drop': 'within 5 % of nothing plugged in',
  'expect.joined': 'at most {ohms} Ω',
  'expect.open': 'open (above 1 MΩ)',
  'expect.above': 'above {low:ohm}: near {expected:ohm} of insulation',
  // That near 0 is a short whatever the winding: common practice, no source.
  'expect.not-shown': 'not shown. What are the ohms of {parts}? Near 0 Ω: a short, stop',
  'expect.charges': '{reading}; climbs first, for a capacitor charges: {loads}',
  'expect.ohms': '{ohms} Ω ({low} to {high})',
  'expect.earth': 'at most {ohms} Ω (by the model {expected})',
  'expect.run': 'below {ohms} Ω (by the model {expected})',
  'expect.bond': 'below {ohms} Ω',
  'expect.seconds': 'at most {seconds} s',
  'expect.probe':
    '{at10} at 10 °C, {at20} at 20, {at30} at 30, {at40} at 40, each within {band:percent}',
  'expect.value': '{value}',
  'expect.yes': 'yes',
  'expect.agree': 'within 1 °C (2 °F)',
  'expect.breaker-first': '80 % of its breaker: find out which it is, else stop',
  'expect.turned':
    '{volts} or below {limit:V}: one of the two conductors is the line, the other is not',
}

/** Headings, column heads and small words of the page itself. */
export const SHEET_PAGE_EN = {
  title: 'Work sheet',
  for: 'for',
  by: 'by',
  region: 'Region',
  job: 'Job',
  stop: 'Before anything else',
  licence: 'Who may do this',
  open: 'Open, assumed, found',
  supply: 'The supply',
  supplyStop: 'Do not power it.',
  supplyOpen:
    '{count:number} points of the supply are not shown: the electrician’s page names them.',
  remarks: 'Notes',
  board: 'The board, as you find it',
  device: 'The supply end',
  boardRest: 'Jumpers not drawn',
  fuses: 'Fuses on the board',
  lines: 'Lines',
  wires: 'Wire table',
  number: 'No.',
  lead: 'Lead',
  colour: 'Colour',
  size: 'Size',
  far: 'Supply end',
  terminal: 'Terminal',
  fixing: 'Fix',
  note: 'Note',
  done: 'Done',
  jumpers: 'Jumpers',
  jumper: 'Jumper',
  factory: 'Factory',
  planned: 'Planned',
  action: 'Do',
  move: 'MOVE',
  leave: 'leave',
  straps: 'Straps in the motors',
  strap: 'Strap of',
  found: 'Found',
  settings: 'Settings',
  setting: 'Setting',
  setTo: 'Set to',
  entered: 'How',
  change: 'CHANGE',
  keep: 'as it is',
  meter: 'What the meter should read',
  load: 'Load',
  output: 'Output',
  between: 'Between',
  volts: 'Volts',
  amps: 'Amps',
  low: 'low',
  nominal: 'nominal',
  high: 'high',
  alwaysOn: 'always on',
  together: 'What may run together',
  runs: 'Together',
  heats: 'Heat',
  yes: 'yes',
  waits: 'waits',
  lid: 'Live when off (for the lid)',
  lidNone: 'Nothing stays live when off.',
  tools: 'Bring',
  parts: 'Make or buy',
  steps: 'Steps',
  licensed: 'Normally licensed work here',
  reading: 'Reading',
  shouldBe: 'Should be',
  read: 'Read',
  outside: 'Outside band',
  point: 'point 1 of the first page',
  ladder: 'Ladder diagram',
  ladderSays:
    'From left to right on each rung. Copper with a dot is joined; lines that only cross are not. At a load: terminal, wire number, sign, wire number, terminal. Two figures at a contact: resistive, motor.',
  ladderTable: 'The ladder in words',
  ladderElsewhere: 'rung {rung}',
  rung: 'Rung',
  runsThrough: 'From rail to rail',
  isFor: 'For',
  joint: 'joint with rung {rung}',
  openEnd: 'open',
  empty: 'empty',
  earthed: 'earth',
  wireIs: 'wire {number}',
  restsClosed: 'closed at rest',
  designations: 'What each designation is',
  designation: 'Name',
  what: 'What',
  rating: 'Rating',
  own: 'On the board',
  rungs: 'Rungs',
  photos: 'Photo map: what sat where before',
  loadSheet: 'Load sheet, for the lid',
  plate: 'Plate',
  measured: 'Measured',
  terminals: 'Terminals, wires',
  strapAndJumper: 'Strap, jumper',
  protects: 'Fuse, contact',
  command: 'Command',
  liveOff: 'Live when off',
  live: 'LIVE',
  strapAt: 'strap {volts}',
  no: 'no',
  off: 'stays off',
  notLanded: 'capped',
  notShown: 'NOT shown to hold',
  changeFirst: 'Before this plan holds, change: {change}',
  changesFirst: 'Changes at the tub',
  partOnly: 'One part of the work sheet. The whole sheet wins over it.',
} as const satisfies Readonly<Record<string, string>>

/** Colours as people say them, by the name in the files. */
export const COLOUR_EN: Readonly<Record<Colour, string>> = {
  black: 'black',
  brown: 'brown',
  red: 'red',
  orange: 'orange',
  yellow: 'yellow',
  green: 'green',
  blue: 'blue',
  violet: 'violet',
  grey: 'grey',
  white: 'white',
  pink: 'pink',
  turquoise: 'turquoise',
  'green-yellow': 'green/yellow',
  bare: 'bare',
}

/** What each kind of line in the drawing stands for. */
export const LINE_EN = {
  leg1: 'leg 1 or line',
  leg2: 'leg 2',
  leg3: 'leg 3',
  neutral: 'neutral',
  earth: 'earth (ground)',
  hot: 'switched hot',
  low: 'low speed',
  return: 'return',
  signal: 'signal',
} as const
