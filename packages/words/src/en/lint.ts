import type { LintId } from '@tubwright/core'

/** What lint says of a description that can be read, by id: what is, why it matters, what to do. */
export const LINT_EN = {
  'spot-taken': '{thing} and {other} are in one spot. Measure both again: the drawing shows one.',
  'outside-board':
    '{thing} is at {x}, {y}, beside the board, which is {width} × {height}. Positions count from its upper left corner.',
  'terminal-dead-end':
    'Terminal {terminal} is on node {node}, and nothing else is. Name the node as the part, jumper or terminal names it that it is joined to.',
  'terminal-below-contact':
    'Terminal {terminal} is rated {rated}, and contact {contact}, which feeds it, {carries}. The terminal is what counts.',
  'terminal-unused':
    'Terminal {terminal} is in no place, no feed and no sensor input: nobody will land anything on it.',
  'connector-misses-terminal':
    'No pin of connector {connector} is terminal {terminal} of “{place}”: its plug would leave that lead out.',
  'connector-pin-elsewhere':
    'Pin {pin} of connector {connector} is terminal {terminal}, which is not of “{place}”.',
  'supplied-plug-fits-no-socket':
    'The plug of “{load}” is “{plug}”, and no socket of the box has that shape: {sockets}. Equal words mean that a plug fits.',
  'place-socket-other-shape':
    'Connector {connector} of “{place}” is “{shape}”; “{load}” of the carton goes there, and its plug is “{plug}”.',
  'connector-unused': 'Connector {connector} is of no place.',
  'fuse-in-no-path':
    'No current gets from a feed to a load through {kind} {part}. One of its two nodes is misnamed, or it bridges itself.',
  'no-fuse-in-path':
    '“{place}” is fed from a line past every fuse and breaker of the box: only the breaker upstream protects it.',
  'contact-never-closed': 'No command closes contact {contact}: it stays open for ever.',
  'contact-never-opened':
    'Contact {contact} rests closed and no command opens it: it stays closed for ever.',
  'limit-contact-unsensed':
    'No sensor input opens limit contact {contact}. Right for a thermostat of its own; else name it under “opens” of the limit input.',
  'command-in-no-profile': 'No profile has command {command}: the box never gives it.',
  'command-of-no-output': 'Command {command} is that of no output of any place.',
  'output-never-on':
    '“{place}”, {function}: no profile puts it on, on any feed. Follow it from the feed: fuse, contact, node, terminal, command, profile.',
  'output-dead-on-feed':
    '“{place}”, {function}: no profile puts it on with feed “{feed}”; with another it does.',
  'output-on-when-off':
    '“{place}”, {function}: it is on with its command {command} off. On were: {on}.',
  'output-without-return':
    '“{place}” has an output and no common: no current can come back. Name the return under “common”.',
  'transformer-volts':
    'Transformer {part} gets {volts:V} with feed “{feed}” at best; its primary is made for {plate:V}.',
  'electronics-dead':
    'Electronics {part} do not get their volts with feed “{feed}”: the box would not wake.',
  'jumper-shorts-feed':
    'Jumper {jumper} at “{position}” shorts feed “{feed}”. Say under “jumpers” of that feed where it has to sit, or mend what it joins.',
  'feed-shorted': 'Feed “{feed}” is shorted with nothing on, wherever the jumpers sit.',
  'command-shorts-feed': 'Feed “{feed}” is shorted when these are on: {on}.',
  'feed-never-chosen':
    'Feed “{feed}” is never taken: wherever it would serve, “{other}” does. They have one system and as many conductors.',
  'no-limit':
    'The box has a heater and no contact with “role: limit”: nothing stops it when it runs too hot.',
  'limit-not-in-series':
    '“{place}” stays on with every limit contact open: a limit contact has to lie in its path.',
  'limit-opens-nothing':
    'What “{input}” opens carries no current while the heater is on: the limit would act on nothing.',
  'sensor-in-no-place':
    'The terminals of “{input}” are not those of one place that takes a probe: no probe can be landed there.',
  'profile-like-another':
    'Profile {profile} does what {other} does: the same modes on every feed, the same filtering.',
  'profile-never-heats':
    'Profile {profile} has the heat command and never heats: see “heatsWith” and “heatYieldsTo”.',
  'limit-like-another':
    'A current limit of {limit} lets run what {other} lets run, on every feed and profile.',
  'limit-changes-nothing':
    'Every current limit lets the same run: without “assumes” at a feed the box sheds nothing by it.',
  'yield-never-fires':
    'Heat yields to {command} with feed “{feed}”, and the two never run together in any profile.',
  'yield-shed-anyway':
    'Heat yields to {command} with feed “{feed}”; their assumed amps already keep them apart at the greatest current limit.',
  'exclusive-never-fires': 'No profile could run two of these together: {commands}.',
  'assumes-never-exceed':
    'The assumed amps of feed “{feed}” come to {most:A} at most; the lowest current limit lets {least:A} be drawn. Nothing is ever shed.',
  'too-many-commands':
    'Profile {profile} has more than {most} commands: its modes cannot be gone through, so nothing can be proven of it.',
  'not-all-tried':
    'Feed “{feed}”: {tried:number} of {of:number} or more states were tried. What was not tried is not shown.',
  'lead-in-no-circuit': 'Lead {lead} of “{load}” is in no circuit of it.',
  'plug-misses-lead': 'No pin of the plug of “{load}” is its lead {lead}.',
  'line-never-arrives':
    'What arrives as {function} never gets to terminal {terminal}, with everything closed.',
  'lines-joined': '{function} and {other} are joined inside the device, with everything closed.',
  'ground-fault-misses-line':
    'With every part open that {part} sums, {function} still goes through: the device would not see it.',
  'device-in-no-cable': 'No cable leads to device {device} or from it.',
  'nothing-moves-water':
    'No load says that it moves water through the heater (“movesWaterThroughHeater”): no box will be found to heat safely.',
  'no-ground-fault-device': 'No device of this supply has a ground-fault part.',
  'still-unknown': 'Not known yet: {reason}. A plan will give a bound, or ask for it.',
} as const satisfies Readonly<Record<LintId, string>>

/** What the command says around its findings. */
export const LINT_TALK_EN = {
  clean: '{file}: clean.',
  counted: '{file}: {warnings:number} to mend, {notices:number} to know.',
  refused: '{file} cannot be used yet: {errors:number} to mend first.',
  kinds: 'It may be a control box, a supply device or a survey: “schema: {kinds}”.',
  drawn: 'The board is drawn in {file}.',
  undrawn: 'The board was not drawn: {why}.',
  watching: 'Watching {file}. Save it to see it afresh; Ctrl-C ends.',
  gone: '{file} is gone; waiting for it to come back.',
  stopped: 'Stopped.',
  'watch-json': '--watch is for people and --json for programs: give one of them.',
  'out-alone': '--out says where --watch draws the board: give --watch with it.',
  'same-file': '{file} is the description itself: name another file for the drawing.',
  'warning-mark': 'WARNING',
  'notice-mark': 'NOTICE',
} as const
