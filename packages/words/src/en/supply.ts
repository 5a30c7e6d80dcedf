/** What each rule of the supply is about, as a heading. */
export const SUPPLY_RULE_EN = {
  'SUPPLY-1': 'The conductor carries the tub',
  'SUPPLY-2': 'The breaker protects the conductor',
  'SUPPLY-3': 'The breaker for everything at once',
  'SUPPLY-4': 'The breaker between what the plate asks and allows',
  'SUPPLY-5': 'The disconnect carries what its breaker lets through',
  'SUPPLY-6': 'The earth conductor is large enough',
  'SUPPLY-7': 'A neutral where one is needed',
  'SUPPLY-8': 'The same conductor at both ends',
  'SUPPLY-9': 'Volts lost on the way',
  'SUPPLY-10': 'Volts left when a pump starts',
  'SUPPLY-11': 'A fault to earth is off in time',
  'SUPPLY-12': 'The ground-fault device and what lands on it',
  'SUPPLY-13': 'Colours that say what they carry',
  'SUPPLY-14': 'Wiring fit for where it lies',
  'SUPPLY-15': 'Room in the conduit',
  'SUPPLY-16': 'The kind of supply',
  'SUPPLY-17': 'No volts to touch',
  'SUPPLY-18': 'The neutral is large enough',
  'SUPPLY-19': 'Every conductor on its own terminal',
  'SUPPLY-20': 'No marks of heat',
  'SUPPLY-21': 'Every piece joined to the next',
  'SUPPLY-40': 'The disconnect out of reach and in sight',
  'SUPPLY-41': 'An outlet for other things, neither near nor far',
  'SUPPLY-42': 'Outlets out of reach',
  'SUPPLY-43': 'Outlets near the tub behind ground-fault protection',
  'SUPPLY-44': 'The outlet of the tub within reach of its cord',
  'SUPPLY-45': 'Lights away from the water or high above it',
  'SUPPLY-46': 'Wall switches out of reach',
  'SUPPLY-47': 'Metal near the tub joined to its bonding',
  'SUPPLY-48': 'The conductor that joins the metal',
  'SUPPLY-49': 'Ground and floor around the tub',
  'SUPPLY-50': 'A switch for users that stops the pumps',
  'SUPPLY-51': 'The earth of the supply',
  'SUPPLY-52': 'No two earths within reach',
  'SUPPLY-53': 'A circuit such as portable tubs have',
  'SUPPLY-60': 'Room on the service of the house',
} as const

/** What each finding on the supply says: figures on both sides; the verdict stands before it. */
export const SUPPLY_SAYS_EN = {
  'conductor-carries':
    '{cable}: {size} carries {may:A} where it lies; the tub takes {draws:A}, which counts as {is:A} for hours.',
  'conductor-carries-plain': '{cable}: {size} carries {may:A} where it lies; the tub takes {is:A}.',
  'breaker-before-conductor':
    '{cable}: {size} carries {carries:A} where it lies, and a breaker of {may:A} at most may stand before it; this one is {is:A}.',
  'breaker-for-load':
    'Everything at once takes {draws:A}; for hours that counts as {is:A}. The breaker is {may:A}. Where it is too small the box is set lower.',
  'breaker-for-load-plain':
    'Everything at once takes {is:A}; the breaker is {may:A}. Where it is too small the box is set lower.',
  'least-circuit': 'The plate asks for a circuit of {may:A} at least; the breaker is {is:A}.',
  'largest-breaker': 'The plate allows a breaker of {may:A} at most; this one is {is:A}.',
  enclosure: '{device} may carry {may:A}; the breaker before it is {is:A}.',
  'no-earth': '{cable} brings no earth conductor.',
  'earth-by-heat':
    '{cable}: the earth is {size}, less than its table asks; a fault of {amps:A} for {seconds:number} s needs {may:number} mm² by its heat.',
  'earth-size': '{cable}: behind {breaker:A} the earth has to be {least} at least; it is {size}.',
  'neutral-there': '{cable} brings a neutral.',
  'neutral-size':
    '{cable}: behind {breaker:A} the neutral has to be {least} at least; it is {size}.',
  'neutral-bare':
    '{cable}: a bare conductor serves as neutral. Earth is never a neutral: current on it makes metal live.',
  'neutral-missing':
    '{cable} brings no neutral, and these need one: {loads}. Its earth must not serve for it. Lay a cable with a neutral, or change these loads and the box to ones without.',
  'neutral-and-earth-missing': '{cable} brings neither neutral nor earth; {loads} need a neutral.',
  'hidden-joint':
    '{cable}: {conductor} is {size}, {colour} at one end and {otherSize}, {otherColour} at the other. Somewhere between there is a joint.',
  'volt-drop':
    'Over {metres:length} out and back, {amps:A} take {volts:V} ({is:percent}); {may:percent} may be lost.',
  'volt-drop-advice':
    'Over {metres:length} out and back, {amps:A} take {volts:V} ({is:percent}); {may:percent} is good practice, not a rule: below it length alone explains no fault.',
  'pump-start':
    'When {load} starts it takes {amps:A} for a moment, and the run takes {volts:V} ({is:percent} of its plate); from {may:percent} on it may not get away.',
  'fault-loop':
    'A fault to earth at the tub meets {is:ohm}: {start:ohm} before the run and {run:ohm} in it. A {type} breaker of {breaker:A} is off in time up to {may:ohm}.',
  'fault-loop-device':
    'A fault to earth at the tub meets {is:ohm}: {start:ohm} before the run and {run:ohm} in it. The breaker alone is not sure to be off in time; the residual-current device of {trip:A} is, up to {may:ohm}.',
  'fault-loop-electrode':
    'With an earth electrode of its own a fault meets {is:ohm}: {start:ohm} before the run and {run:ohm} in it. The residual-current device of {trip:A} is off in time up to {may:ohm}.',
  'electrode-unsteady':
    'With an earth electrode of its own a fault meets {is:ohm}: {start:ohm} before the run and {run:ohm} in it. The residual-current device of {trip:A} would be off in time, but an electrode over {may:ohm} may not stay what it is as the ground dries.',
  'no-ground-fault': 'No ground-fault device watches this circuit.',
  'ground-fault-trip':
    'The ground-fault device trips by {is:A}; to protect people it has to by {may:A}.',
  'ground-fault-asleep':
    '{device} has no supply for its own electronics: it protects nobody. Look where its tail lands.',
  'ground-fault-trips':
    '{device} sees {is:A} as soon as the loads to neutral run and trips by {may:A}: the neutral of the tub lands past it. It belongs on the device, not on the bar.',
  'ground-fault-blind-neutral':
    '{device} would see {is:A} with the first load to neutral and trip by {may:A}: the neutral of the tub lands past it. With loads between the legs alone that shows nowhere.',
  'ground-fault-leakage': '{device} sees {is:A} with everything on; it may trip from {may:A} on.',
  'ground-faults-in-row':
    '{count:number} ground-fault devices stand in a row: either may trip first, and all have to be reset.',
  'colour-right': '{cable}: {conductor} is {colour}, as it should be.',
  'colour-taped': '{cable}: {conductor} is {colour} and taped {taped}: at {size} that serves.',
  'colour-taped-small':
    '{cable}: {conductor} is {colour} and taped {taped}. At {size} tape does not serve: its colour has to run along its whole length.',
  'colour-wrong': '{cable}: {conductor} is {colour}, which does not stand for what it carries.',
  'earth-insulated': '{cable}: its earth is insulated ({colour}).',
  'earth-bare': '{cable}: its earth is bare. Outside a sheath it has to be insulated.',
  'earth-bare-indoors':
    '{cable}: its earth is bare within the sheath, which many accept indoors up to the disconnect.',
  'sheathed-outdoors':
    '{cable}: sheathed cable is not for the weather. From the house on single insulated wires in conduit.',
  'flexible-piece':
    '{cable}: the last flexible piece is {is:length}; {may:length} is the old limit and still a rule of thumb.',
  'conduit-fill':
    '{cable}: {count:number} conductors take {is:mm2} of the {trade} in {conduit} conduit; {may:mm2} may be filled.',
  'high-leg':
    'One leg stands near 208 V to neutral: a high-leg delta. It serves no tub; an electrician has to give another supply.',
  'heater-power': '{load}: {volts:V} on a plate of {plate:V} gives {power:percent} of its power.',
  'landed-elsewhere':
    '{cable}: {conductor} sits on {terminal} of {device}; it belongs on {expected}. Off and locked before it is moved.',
  'landed-right': '{cable}: every conductor lands on its own terminal.',
  parallel:
    '{cable}: two conductors do the work of one. Where one comes loose the other burns; conductors of this size are never doubled.',
  'heat-mark-device':
    '{thing} shows heat. Replace it, and cut each conductor on it back to bright copper. A heated screw or lug is never tightened again. Find out why it got hot before it gets power.',
  'heat-mark-cable':
    '{thing} shows heat. Cut each conductor back to bright copper; where it is too short then, replace the cable. A heated screw or lug is never tightened again. Find out why it got hot before it gets power.',
  'no-heat-mark': '{thing} shows no marks of heat.',
  'earth-aluminium': '{cable}: the earth of a tub has to be copper.',
  'line-as-earth':
    '{cable}: {conductor} is {colour} and carries a line. Whoever comes next takes it for earth.',
  'line-as-neutral':
    '{cable}: {conductor} is {colour} and carries a line: it has to be marked again at both ends.',
  'neutral-missing-line':
    '{cable} brings no neutral: with one line nothing runs without it, and its earth must not serve for it.',
  'cord-as-run':
    '{cable}: a cord is no wiring. It is not buried, and as the cord of a tub it is at most 15 ft long.',
  'cord-length': '{cable} is {is:length} long; the cord of a tub is {may:length} at most.',
  'plate-frequency': '{load} is made for {may:Hz}; the supply has {is:Hz}.',
  'same-line': 'Two hots of this circuit come from one leg: between them there is nothing.',
  'not-covered-joined':
    '{thing} is joined to nothing: which wire goes in, and which comes out? What is said of the run leaves it out.',
  'not-covered-cable': 'Whether this cable may lie in wet conduit is not told: ask which it is.',
  'plate-volts': '{load}: {volts:V} on a plate of {plate:V} ({share:percent}).',
  'plate-volts-low':
    '{load}: {volts:V} on a plate of {plate:V} ({share:percent}). Motors are made for a tenth less than their plate; below it many run hot. Look whether its plate names these volts too, or ask its maker.',
  'touch-felt':
    'Somebody felt a shock or a tingle. Nobody in, off and locked at the panel, until an electrician has found the cause: that it went away clears nothing.',
  'touch-volts':
    'From {from} to {to}: {is:V}; above {may:V} somebody has to look, and above 5 V nobody goes in.',
  'touch-same-metal':
    'From {from} to {to}: {is:V}. That is the same metal twice and says nothing of the ground: measure against a spike in the soil, two or three metres off.',
  'touch-from-outside':
    'From {from} to {to}: {is:V} with every load of the tub unplugged. It comes from outside the tub: an electrician or the supplier has to look.',
  'disconnect-distance':
    'The disconnect is {is:length} from the tub as one reaches for it; {may:length} is the least. Where it is too near, move the disconnect or the tub: moving the tub often costs less.',
  'disconnect-zone':
    'The disconnect is {is:length} from the tub; it belongs beyond {may:length}, and behind a 30 mA device in the zone after that. Where it is too near, move the disconnect or the tub.',
  'disconnect-pool':
    'The disconnect is {is:length} from the tub. Beyond {may:length} it is outside the zones of a pool; those of a small tub of its own are not covered here: nearer, ask.',
  'disconnect-sight':
    'The disconnect is seen from the tub and stands {is:length} away; {may:length} at most counts as in sight. Where it is too far, move the disconnect or the tub.',
  'disconnect-unseen':
    'The disconnect is not seen from the equipment of the tub: that the tub is seen from the disconnect is not enough. Up to {may:length} away and in view it would serve: move the disconnect or the tub.',
  'disconnect-lock':
    'The disconnect is not in view, or farther than {may:length}: then it has to be one that can be locked open. Look at it.',
  'convenience-there':
    'An outlet for other things stands between {least:length} and {may:length} from the tub.',
  'convenience-missing':
    'No outlet for other things stands between {least:length} and {may:length} from the tub; one right at the tub is too near and does not count. Where an inspector wants it elsewhere, ask for it in writing.',
  'receptacle-distance':
    '{outlet} is {is:length} from the tub; {may:length} is the least. Where it is too near, move the outlet or the tub.',
  'receptacle-zone':
    '{outlet} is {is:length} from the tub; outlets belong beyond {may:length}. Where it is too near, move the outlet or the tub.',
  'receptacle-pool':
    '{outlet} is {is:length} from the tub. Beyond {may:length} it is outside the zones of a pool; those of a small tub of its own are not covered here: nearer, ask.',
  'receptacle-protection':
    '{outlet} is {is:length} from the tub; up to {may:length} an outlet has to be behind a ground-fault device.',
  cord: '{outlet} is {is:length} from the tub; the cord of a tub reaches {may:length} at most, and no other cord may lengthen it.',
  'light-absence':
    '{light} is {is:length} from the tub, level, and {height:length} over the water; up to {may:length} level no light may be lower than {below:length}.',
  'light-protection':
    '{light} is {is:length} from the tub, level, and {height:length} over the water; up to {may:length} level and lower than {below:length} it has to be behind a ground-fault device.',
  'light-sealed':
    '{light} is {is:length} from the tub, level, and {height:length} over the water; up to {may:length} level and lower than {below:length} only fittings sealed for it serve, behind a ground-fault device. Look at its marking, and ask the inspector.',
  'light-protection-level':
    '{light} is {is:length} from the tub; up to {may:length} a light has to be behind a ground-fault device.',
  'light-more-level':
    '{light} is {is:length} from the tub; up to {may:length} a light has to be behind a ground-fault device. Whether one may be so near at all is not covered here: ask.',
  'light-pool-level':
    '{light} is {is:length} from the tub. Beyond {may:length} it is outside the zones of a pool; those of a small tub of its own are not covered here: nearer, ask.',
  'light-absence-zone':
    '{light} is {is:length} from the tub, level, and {height:length} over the water; up to {may:length} level and {below:length} over the floor no light of full voltage may be.',
  'light-protection-zone':
    '{light} is {is:length} from the tub, level, and {height:length} over the water; up to {may:length} level and {below:length} over the floor it has to be behind a 30 mA device.',
  'switch-distance':
    '{switch} is {is:length} from the tub; {may:length} is the least. Where it is too near, move the switch or the tub.',
  'switch-zone':
    '{switch} is {is:length} from the tub; it belongs beyond {may:length}, and behind a 30 mA device in the zone after that.',
  'switch-pool':
    '{switch} is {is:length} from the tub. Beyond {may:length} it is outside the zones of a pool; those of a small tub of its own are not covered here: nearer, ask.',
  metal:
    '{metal} is {is:length} from the tub; up to {may:length} fixed metal has to be joined to its bonding.',
  'metal-authority':
    '{metal} is {is:length} from the tub; up to {may:length} metal may have to be joined to its bonding, and inspectors differ on tubs in one piece: ask.',
  'bond-size': 'The bonding conductor is {size}; it has to be {least} solid copper at least.',
  'bond-stranded':
    'The bonding conductor is {size}, stranded; it has to be solid copper, {least} at least.',
  'bond-not-needed':
    'Ground and floor are exempt and no listed metal is near: no bonding conductor is asked for.',
  'ground-exempt':
    'The rim stands {is:in} over every surface within {near:in} of it; from {may:in} on ground and floor need no bonding. Steps that do not conduct do not count. A deck built later ends this: ask at every visit.',
  'ground-on-a-floor':
    'A listed tub in one piece on a finished floor indoors: the floor needs no bonding.',
  'ground-bonded': 'Ground and floor around the tub are joined to its bonding.',
  'ground-unbonded':
    'Ground and floor around the tub are not joined to its bonding. A listed tub in one piece outdoors is exempt where its rim stands {may:in} over every surface within {near:in}; this one stands {is:in} over the highest.',
  'emergency-none': 'A one-family dwelling needs no switch for users that stops the pumps.',
  'emergency-needed':
    'Users need a switch that stops the pumps: look whether it is there, and ask the inspector how far it may be.',
  'emergency-needed-at':
    'Users need a switch that stops the pumps, in sight and {may:length} from the tub at least: look whether it is there.',
  'earth-combined':
    'The supplier brings neutral and earth as one ({earthing}). Some keep the earth of the house; some give the tub an electrode of its own and residual-current protection; an electrode on the bonding should have {ohms:ohm} or less. The designer of the installation decides: nothing is advised here. A voltage of the water is read against a spike in the soil 2 to 3 m away, never against the earth of the tub.',
  'earth-apart': 'The supply brings its earth apart from the neutral ({earthing}).',
  'earth-electrode':
    'The supply brings no earth: the installation has an electrode of its own ({earthing}), and a residual-current device sees to every fault.',
  'two-earths':
    '{metal} is {is:length} from the tub; up to {may:length} people reach both. With {earthing} the tub may get another earth than this metal has, and two earths within reach are a danger of their own: the designer has to know of it.',
  'tub-range':
    'The breaker is {is:A}; circuits of portable tubs go up to {may:A}. Beyond, each branch gets a ground-fault device of its own: work for an engineer or an electrician.',
  demand:
    'With the tub by its plate ({tubs:kVA}) the house counts for {is:kVA}; a main breaker of {main:A} gives {may:kVA}.',
  'demand-needed':
    'Whether the service has room needs a demand calculation of the whole house by an electrician. The tub counts by its plate, {tubs:kVA}; sums of breakers say nothing.',
  'not-covered-drop':
    'The volts where the run begins are far from what this supply gives: see first how it is landed.',
  'not-covered-loop': 'What this breaker asks of the loop is not covered here: ask.',
  'not-covered-loop-tt':
    'With an earth electrode of its own the residual-current device has to do it: ask the designer.',
  'not-covered-ground-fault': 'When the device has to trip is not covered here: ask.',
  'conduit-fill-thin':
    '{cable}: {count:number} conductors take {is:mm2} of the {trade} in {conduit} conduit, and {may:mm2} may be filled. That is with thin insulation, printed THHN or THWN; with thick, such as TW or THW, they are too many.',
  'not-covered-fill': 'How full this conduit may be is not covered here: ask.',
  'not-covered-ampacity': 'What this conductor may carry as it lies is not covered here: ask.',
  'not-covered-load': 'How this load counts is not covered here: ask.',
  'not-covered-neutral': 'How large this neutral has to be is not covered here: ask.',
  'not-covered-neutral-load':
    '{cable}: all that hangs on one leg and neutral takes {is:A}, and a neutral of {size} carries {may:A}. On which leg each of them goes the box decides: take {least} for it, as for the lines.',
  'not-covered-earth-heat':
    '{cable}: how hot a fault near its start makes this earth hangs on what the breaker lets through: ask its maker, or take the size of the table.',
  'not-covered-earth': 'How large this earth conductor has to be is not covered here: ask.',
  'not-covered-disconnect': 'How near the disconnect may be is not covered here: ask.',
  'not-covered-disconnect-sight':
    'How far the disconnect may be, and whether it has to be in sight, is not covered here: ask.',
  'not-covered-convenience':
    'Whether an outlet for other things has to be there is not covered here: ask.',
  'not-covered-receptacle': 'How near an outlet may be is not covered here: ask.',
  'not-covered-receptacle-protection':
    'Which outlets need ground-fault protection is not covered here: ask.',
  'not-covered-cord': 'How long the cord of a tub may be is not covered here: ask.',
  'not-covered-light': 'Where a light may be is not covered here: ask.',
  'not-covered-gazebo':
    'Whether a gazebo that is closed in counts as indoors the inspector says: ask before anything is said of its lights.',
  'not-covered-switch': 'How near a wall switch may be is not covered here: ask.',
  'not-covered-in-a-room':
    'In a room the rules of bathrooms count, which are not covered here: ask.',
  'not-covered-metal': 'Which metal has to be joined to the bonding is not covered here: ask.',
  'not-covered-bond': 'How large the bonding conductor has to be is not covered here: ask.',
  'not-covered-ground': 'Whether ground and floor have to be bonded is not covered here: ask.',
  'not-covered-emergency':
    'Whether users need a switch that stops the pumps is not covered here: ask.',
  'not-covered-earthing': 'What the earth of the supply asks at a tub is not covered here: ask.',
  'not-covered-demand': 'How the demand of a house is counted is not covered here: ask.',
} as const

/** Words around the findings on the supply. */
export const SUPPLY_PAGE_EN = {
  title: 'Supply of {tub}',
  book: 'By {book}; the local code and the authority decide.',
  'no-book':
    'No code book of this region is here: ask the authority. Nothing of another region is used.',
  place: 'The place and the house',
  'place-not-told':
    'Nobody has told what stands around the tub: distances, lights, outlets and bonding are not judged.',
  'at-worst': 'At worst: {sentence}',
  'depends-on': '{title}: it depends on {asks}.',
  'holds-for': 'It holds for {values} ({of}).',
  'no-margin': '{sentence} Exactly at its limit: no margin.',
  differ:
    '{sentence} Experts read this differently: {strict} by the stricter reading, {lenient} by the other. Until {decides} decides, the stricter one counts.',
  'decides-authority': 'the authority',
  'decides-designer': 'the designer of the installation',
  clause: '{standard} {edition}, {clause}',
  'from-memory': '{clause} (from memory)',
  circuit: 'Circuit {index}',
  breaker: 'breaker {amps}',
  'breaker-unknown': 'breaker not known',
  takes: 'everything at once takes {amps}',
  fitted: 'Counted with {box}, heater and all.',
  'fitted-limit': 'Counted with {box}, heater and all, set to draw {limit:A} at most.',
  'takes-unknown': 'what it takes is not known',
  carries: 'carries {amps}',
  'carries-unknown': 'what it carries is not covered',
  ask: 'What to ask, the most telling first',
  'nothing-to-ask': 'Nothing more to find out at the tub: no answer would change a verdict.',
  ways: 'What can be done, the cheapest first',
  keep: 'Keep the supply as it is.',
  'set-lower':
    'Keep it, and set the box to draw {limit:A} at most: not everything runs at once then.',
  'change-breaker': 'Change the breaker to {breaker:A}.',
  'change-wire': 'Change the wire to {size} copper, and the breaker to {breaker:A}.',
  'way-holds': 'This does.',
  'way-breaks': 'This does not do: {against}.',
  'way-differs': 'By the stricter reading this does not do: {against}.',
  'way-besides': 'What breaks besides: {besides}.',
  'way-open': 'Whether this does is open: see what to ask.',
  holds: 'It holds.',
  breaks: 'It breaks.',
  open: 'Not all of it is shown.',
  'yard-title': 'The yard of {tub}, from above',
  'yard-says': '{sign} {thing}, {distance}: {verdict}',
  'yard-tub': 'tub',
  'yard-disconnect': 'disconnect',
  'yard-receptacles': 'outlet',
  'yard-lights': 'light',
  'yard-switches': 'wall switch',
  'yard-metal': 'fixed metal',
  'yard-unknown': 'distance not known',
  'yard-range': '{from} to {to}',
  'yard-rest': 'Not drawn',
  'yard-size': 'The tub is drawn round and 2 m wide; distances are to scale, angles are not.',
  'yard-beyond': 'Beyond the dotted line the scale is smaller.',
} as const

/** What is asked for, by where the survey has it: a few words each. */
export const SUPPLY_ASK_EN = {
  'supply.breaker': 'rating of the breaker',
  'supply.breakerType': 'type of the breaker: B, C or D',
  'supply.earthing': 'how the installation is earthed: TN-S, TN-C-S, TT',
  'supply.earthLoop': 'loop impedance at the start of the run',
  'supply.devices.breaker': 'rating of the breaker',
  'supply.devices.terminals': 'what the terminals are marked for',
  'supply.devices.enclosure': 'rating of the enclosure or switch',
  'supply.cables.where': 'where it lies',
  'supply.cables.material': 'copper or aluminium',
  'supply.cables.insulation': 'what its insulation is made for',
  'supply.cables.method': 'how it is held: conduit, sheathed cable, cord …',
  'supply.cables.ambient': 'the hottest air around it',
  'supply.cables.alongside': 'how many other loaded conductors lie with it',
  'supply.cables.conduit.kind': 'kind of conduit',
  'supply.cables.conduit.size': 'trade size of the conduit',
  'plate.draws': 'amps on the plate of the tub, heater and all',
  'plate.minimumCircuit': 'least circuit on the plate',
  'plate.maximumProtection': 'largest breaker on the plate',
  codeEdition: 'adopted edition of the code',
  'loads.circuits': 'what it takes at the start',
  'yard.setting': 'indoors or outdoors',
  'yard.dwelling': 'one-family dwelling or other',
  'yard.selfContained': 'listed and in one piece above ground',
  'yard.rimHeight': 'height of the rim over the highest surface near it',
  'yard.groundBonded': 'whether ground and deck are joined to the bonding',
  'yard.disconnect': 'a switch that turns the tub off for work',
  'yard.disconnect.distance': 'distance of the disconnect',
  'yard.disconnect.inSight': 'whether the disconnect is in sight',
  'yard.disconnect.reach': 'way to the disconnect round a barrier',
  'yard.receptacles': 'outlets near the tub',
  'yard.receptacles.distance': 'distance',
  'yard.receptacles.groundFault': 'whether a ground-fault device protects it',
  'yard.receptacles.feedsTub': 'whether the tub is plugged in there',
  'yard.lights.distance': 'distance',
  'yard.lights.height': 'height over the water',
  'yard.lights.groundFault': 'whether a ground-fault device protects it',
  'yard.switches.distance': 'distance',
  'yard.metal': 'fixed metal near the tub',
  'yard.metal.distance': 'distance',
  'yard.metal.bonded': 'whether it is bonded',
  'yard.bond': 'conductor that joins the metal',
  'yard.bond.size': 'size of the bonding conductor',
  'yard.bond.strands': 'bonding conductor solid or stranded',
  'service.main': 'rating of the main breaker',
  'service.area': 'living area',
  'service.complete': 'whether every fixed load is listed',
  'service.loads': 'fixed loads of the house',
  'service.loads.power': 'power on the plate',
  'touch.felt': 'whether anybody felt a tingle',
  'touch.readings.unplugged': 'whether every load was unplugged',
} as const
