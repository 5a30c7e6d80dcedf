import type { SUPPLY_ASK_EN, SUPPLY_PAGE_EN, SUPPLY_RULE_EN, SUPPLY_SAYS_EN } from '../en/supply.ts'
import type { Table } from '../words.ts'

/** What each rule of the supply is about, as a heading. */
export const SUPPLY_RULE_ES: Table<typeof SUPPLY_RULE_EN> = {
  'SUPPLY-1': 'El conductor admite la bañera',
  'SUPPLY-2': 'El disyuntor protege el conductor',
  'SUPPLY-3': 'El disyuntor para todo a la vez',
  'SUPPLY-4': 'El disyuntor entre lo que la placa pide y admite',
  'SUPPLY-5': 'El seccionador admite lo que deja pasar su disyuntor',
  'SUPPLY-6': 'El conductor de tierra es bastante grande',
  'SUPPLY-7': 'Un neutro donde hace falta',
  'SUPPLY-8': 'El mismo conductor en los dos extremos',
  'SUPPLY-9': 'Voltios perdidos por el camino',
  'SUPPLY-10': 'Voltios que quedan cuando arranca una bomba',
  'SUPPLY-11': 'Una falta a tierra se corta a tiempo',
  'SUPPLY-12': 'El diferencial y lo que se conecta en él',
  'SUPPLY-13': 'Colores que dicen lo que llevan',
  'SUPPLY-14': 'Cableado apto para donde va',
  'SUPPLY-15': 'Espacio en el tubo',
  'SUPPLY-16': 'El tipo de alimentación',
  'SUPPLY-17': 'Ningún voltio al tacto',
  'SUPPLY-18': 'El neutro es bastante grande',
  'SUPPLY-19': 'Cada conductor en su borne',
  'SUPPLY-20': 'Sin marcas de calor',
  'SUPPLY-21': 'Cada pieza unida a la siguiente',
  'SUPPLY-40': 'El seccionador, fuera del alcance y a la vista',
  'SUPPLY-41': 'Un tomacorriente para otras cosas, ni cerca ni lejos',
  'SUPPLY-42': 'Tomacorrientes fuera del alcance',
  'SUPPLY-43': 'Tomacorrientes cercanos con protección diferencial',
  'SUPPLY-44': 'El tomacorriente de la bañera, al alcance de su cordón',
  'SUPPLY-45': 'Luces apartadas del agua o muy por encima',
  'SUPPLY-46': 'Interruptores de pared fuera del alcance',
  'SUPPLY-47': 'El metal cercano, unido a la equipotencial',
  'SUPPLY-48': 'El conductor que une el metal',
  'SUPPLY-49': 'El suelo y el piso alrededor de la bañera',
  'SUPPLY-50': 'Un interruptor para los usuarios que pare las bombas',
  'SUPPLY-51': 'La tierra de la alimentación',
  'SUPPLY-52': 'No dos tierras al alcance',
  'SUPPLY-53': 'Un circuito como los de bañeras portátiles',
  'SUPPLY-60': 'Sitio en la acometida de la casa',
}

/** What each finding on the supply says: figures on both sides; the verdict stands before it. */
export const SUPPLY_SAYS_ES: Table<typeof SUPPLY_SAYS_EN> = {
  'conductor-carries':
    '{cable}: {size} admite {may:A} tal como va; la bañera consume {draws:A}, que durante horas cuenta como {is:A}.',
  'conductor-carries-plain':
    '{cable}: {size} admite {may:A} tal como va; la bañera consume {is:A}.',
  'breaker-before-conductor':
    '{cable}: {size} admite {carries:A} tal como va, y delante puede haber un disyuntor de {may:A} como máximo; este es de {is:A}.',
  'breaker-for-load':
    'Todo a la vez consume {draws:A}; durante horas cuenta como {is:A}. El disyuntor es de {may:A}. Si es pequeño, la caja se ajusta más bajo.',
  'breaker-for-load-plain':
    'Todo a la vez consume {is:A}; el disyuntor es de {may:A}. Si es pequeño, la caja se ajusta más bajo.',
  'least-circuit': 'La placa pide un circuito de {may:A} como mínimo; el disyuntor es de {is:A}.',
  'largest-breaker': 'La placa admite un disyuntor de {may:A} como máximo; este es de {is:A}.',
  enclosure: '{device} admite {may:A}; el disyuntor de delante es de {is:A}.',
  'no-earth': '{cable} no trae conductor de tierra.',
  'earth-by-heat':
    '{cable}: la tierra es de {size}, menos de lo que pide su tabla; una falta de {amps:A} durante {seconds:number} s necesita {may:number} mm² por su calor.',
  'earth-size':
    '{cable}: tras {breaker:A} la tierra ha de ser de {least} como mínimo; es de {size}.',
  'neutral-there': '{cable} trae un neutro.',
  'neutral-size':
    '{cable}: tras {breaker:A} el neutro ha de ser de {least} como mínimo; es de {size}.',
  'neutral-bare':
    '{cable}: un conductor desnudo hace de neutro. La tierra nunca es neutro: la corriente por ella pone el metal en tensión.',
  'neutral-missing':
    '{cable} no trae neutro, y estos lo necesitan: {loads}. Su tierra no debe servir de neutro. Tienda un cable con neutro, o cambie estas cargas y la caja por otras sin él.',
  'neutral-and-earth-missing': '{cable} no trae ni neutro ni tierra; {loads} necesitan neutro.',
  'hidden-joint':
    '{cable}: {conductor} es {size}, {colour} en un extremo y {otherSize}, {otherColour} en el otro. En algún punto hay un empalme.',
  'volt-drop':
    'En {metres:length} de ida y vuelta, {amps:A} pierden {volts:V} ({is:percent}); puede perderse {may:percent}.',
  'volt-drop-advice':
    'En {metres:length} de ida y vuelta, {amps:A} pierden {volts:V} ({is:percent}); {may:percent} es buena práctica, no una regla: por debajo, la longitud sola no explica ningún fallo.',
  'pump-start':
    'Al arrancar, {load} consume {amps:A} un momento y el tramo pierde {volts:V} ({is:percent} de su placa); desde {may:percent} puede no arrancar.',
  'fault-loop':
    'Una falta a tierra en la bañera encuentra {is:ohm}: {start:ohm} antes del tramo y {run:ohm} en él. Un disyuntor {type} de {breaker:A} corta a tiempo hasta {may:ohm}.',
  'fault-loop-device':
    'Una falta a tierra en la bañera encuentra {is:ohm}: {start:ohm} antes del tramo y {run:ohm} en él. El disyuntor solo no corta a tiempo con seguridad; el diferencial de {trip:A} sí, hasta {may:ohm}.',
  'fault-loop-electrode':
    'Con un electrodo de tierra propio una falta encuentra {is:ohm}: {start:ohm} antes del tramo y {run:ohm} en él. El diferencial de {trip:A} corta a tiempo hasta {may:ohm}.',
  'electrode-unsteady':
    'Con un electrodo de tierra propio una falta encuentra {is:ohm}: {start:ohm} antes del tramo y {run:ohm} en él. El diferencial de {trip:A} cortaría a tiempo, pero un electrodo de más de {may:ohm} puede no quedarse como está cuando el suelo se seca.',
  'no-ground-fault': 'Ningún diferencial vigila este circuito.',
  'ground-fault-trip':
    'El diferencial dispara como muy tarde con {is:A}; para proteger a las personas ha de hacerlo con {may:A}.',
  'ground-fault-asleep':
    '{device} no tiene alimentación para su electrónica: no protege a nadie. Mire dónde va su cable.',
  'ground-fault-trips':
    '{device} ve {is:A} en cuanto funcionan las cargas a neutro y dispara con {may:A}: el neutro de la bañera no pasa por él. Va en el dispositivo, no en la barra.',
  'ground-fault-blind-neutral':
    '{device} vería {is:A} con la primera carga a neutro y dispararía con {may:A}: el neutro de la bañera no pasa por él. Con cargas solo entre fases no se nota.',
  'ground-fault-leakage': '{device} ve {is:A} con todo en marcha; puede disparar desde {may:A}.',
  'ground-faults-in-row':
    'Hay {count:number} diferenciales en serie: puede disparar cualquiera primero, y hay que rearmarlos todos.',
  'colour-right': '{cable}: {conductor} es {colour}, como debe.',
  'colour-taped': '{cable}: {conductor} es {colour} con cinta {taped}: en {size} eso sirve.',
  'colour-taped-small':
    '{cable}: {conductor} es {colour} con cinta {taped}. En {size} la cinta no sirve: su color ha de recorrerlo entero.',
  'colour-wrong': '{cable}: {conductor} es {colour}, que no corresponde a lo que lleva.',
  'earth-insulated': '{cable}: su tierra está aislada ({colour}).',
  'earth-bare': '{cable}: su tierra está desnuda. Fuera de una cubierta ha de estar aislada.',
  'earth-bare-indoors':
    '{cable}: su tierra está desnuda dentro de la cubierta, lo que muchos aceptan en interior hasta el seccionador.',
  'sheathed-outdoors':
    '{cable}: el cable con cubierta no es para la intemperie. Desde la casa, hilos aislados en tubo.',
  'flexible-piece':
    '{cable}: el último tramo flexible mide {is:length}; {may:length} es el límite antiguo y aún la regla de oficio.',
  'conduit-fill':
    '{cable}: {count:number} conductores ocupan {is:mm2} de un tubo {conduit} de {trade} in; puede llenarse {may:mm2}.',
  'high-leg':
    'Una fase está cerca de 208 V a neutro: un triángulo con fase alta. No sirve a ninguna bañera; un electricista ha de dar otra alimentación.',
  'heater-power': '{load}: {volts:V} en una placa de {plate:V} dan {power:percent} de su potencia.',
  'landed-elsewhere':
    '{cable}: {conductor} está en {terminal} de {device}; va en {expected}. Apagar y bloquear antes de moverlo.',
  'landed-right': '{cable}: cada conductor está en su borne.',
  parallel:
    '{cable}: dos conductores hacen el trabajo de uno. Si uno se suelta, el otro arde; los de este tamaño nunca se doblan.',
  'heat-mark-device':
    '{thing} muestra calor. Sustituirlo, y cortar cada conductor suyo hasta cobre limpio. Un tornillo o terminal recalentado nunca se vuelve a apretar. Averiguar por qué se calentó antes de darle tensión.',
  'heat-mark-cable':
    '{thing} muestra calor. Cortar cada conductor hasta cobre limpio; si entonces queda corto, sustituir el cable. Un tornillo o terminal recalentado nunca se vuelve a apretar. Averiguar por qué se calentó antes de darle tensión.',
  'no-heat-mark': '{thing} no muestra calor.',
  'earth-aluminium': '{cable}: la tierra de una bañera ha de ser de cobre.',
  'line-as-earth':
    '{cable}: {conductor} es {colour} y lleva una línea. Quien venga después lo tomará por tierra.',
  'line-as-neutral':
    '{cable}: {conductor} es {colour} y lleva una línea: ha de marcarse de nuevo en los dos extremos.',
  'neutral-missing-line':
    '{cable} no trae neutro: con una sola línea nada funciona sin él, y su tierra no debe hacer de neutro.',
  'cord-as-run':
    '{cable}: un cordón no es cableado. No se entierra, y como cordón de una bañera mide 15 ft como máximo.',
  'cord-length': '{cable} mide {is:length}; el cordón de una bañera mide {may:length} como máximo.',
  'plate-frequency': '{load} está hecho para {may:Hz}; la alimentación tiene {is:Hz}.',
  'same-line': 'Los dos vivos de este circuito vienen de una misma línea: entre ellos no hay nada.',
  'not-covered-joined':
    '{thing} no está unido a nada: ¿qué conductor entra y cuál sale? Lo que se dice del tramo lo deja fuera.',
  'not-covered-cable': 'No se ha dicho si este cable puede ir en tubo mojado: preguntar cuál es.',
  'plate-volts': '{load}: {volts:V} en una placa de {plate:V} ({share:percent}).',
  'plate-volts-low':
    '{load}: {volts:V} en una placa de {plate:V} ({share:percent}). Los motores admiten un décimo menos que su placa; por debajo muchos se calientan. Mire si su placa nombra también estos voltios, o pregunte a su fabricante.',
  'touch-felt':
    'Alguien sintió una descarga o un hormigueo. Nadie dentro, apagado y bloqueado en el cuadro hasta que un electricista halle la causa: que se haya ido no aclara nada.',
  'touch-volts':
    'De {from} a {to}: {is:V}; por encima de {may:V} alguien ha de mirarlo, y por encima de 5 V no entra nadie.',
  'touch-same-metal':
    'De {from} a {to}: {is:V}. Es el mismo metal dos veces y no dice nada del suelo: medir contra una pica en la tierra, a dos o tres metros.',
  'touch-from-outside':
    'De {from} a {to}: {is:V} con todas las cargas de la bañera desenchufadas. Viene de fuera: ha de mirarlo un electricista o la compañía.',
  'disconnect-distance':
    'El seccionador está a {is:length} de la bañera para quien lo alcanza; lo mínimo es {may:length}. Si está demasiado cerca, mover el seccionador o la bañera: mover la bañera suele costar menos.',
  'disconnect-zone':
    'El seccionador está a {is:length} de la bañera; le corresponde estar a más de {may:length}, y tras un diferencial de 30 mA en la zona siguiente. Si está demasiado cerca, mover el seccionador o la bañera.',
  'disconnect-pool':
    'El seccionador está a {is:length} de la bañera. A más de {may:length} queda fuera de las zonas de una piscina; las de una bañera pequeña aparte no están cubiertas aquí: más cerca, preguntar.',
  'disconnect-sight':
    'El seccionador se ve desde la bañera y está a {is:length}; hasta {may:length} cuenta como a la vista. Si está demasiado lejos, mover el seccionador o la bañera.',
  'disconnect-unseen':
    'El seccionador no se ve desde el equipo de la bañera: que la bañera se vea desde el seccionador no basta. Hasta {may:length} y a la vista serviría: mover el seccionador o la bañera.',
  'disconnect-lock':
    'El seccionador no está a la vista, o está a más de {may:length}: entonces ha de poder bloquearse abierto. Mirarlo.',
  'convenience-there':
    'Un tomacorriente para otras cosas está entre {least:length} y {may:length} de la bañera.',
  'convenience-missing':
    'Ningún tomacorriente para otras cosas está entre {least:length} y {may:length} de la bañera; uno junto a la bañera está demasiado cerca y no cuenta. Si un inspector lo quiere en otro sitio, pedirlo por escrito.',
  'receptacle-distance':
    '{outlet} está a {is:length} de la bañera; lo mínimo es {may:length}. Si está demasiado cerca, mover el tomacorriente o la bañera.',
  'receptacle-zone':
    '{outlet} está a {is:length} de la bañera; a los tomacorrientes les corresponde estar a más de {may:length}. Si está demasiado cerca, mover el tomacorriente o la bañera.',
  'receptacle-pool':
    '{outlet} está a {is:length} de la bañera. A más de {may:length} queda fuera de las zonas de una piscina; las de una bañera pequeña aparte no están cubiertas aquí: más cerca, preguntar.',
  'receptacle-protection':
    '{outlet} está a {is:length} de la bañera; hasta {may:length} un tomacorriente ha de estar tras un diferencial.',
  cord: '{outlet} está a {is:length} de la bañera; el cordón de una bañera alcanza {may:length} como máximo, y ningún otro cordón puede alargarlo.',
  'light-absence':
    '{light} está a {is:length} de la bañera, en horizontal, y a {height:length} sobre el agua; hasta {may:length} en horizontal ninguna luz puede estar más baja que {below:length}.',
  'light-protection':
    '{light} está a {is:length} de la bañera, en horizontal, y a {height:length} sobre el agua; hasta {may:length} en horizontal y más baja que {below:length} ha de estar tras un diferencial.',
  'light-sealed':
    '{light} está a {is:length} de la bañera, en horizontal, y a {height:length} sobre el agua; hasta {may:length} en horizontal y más baja que {below:length} solo sirven luminarias selladas para ello, tras un diferencial. Mirar su marcado y preguntar al inspector.',
  'light-protection-level':
    '{light} está a {is:length} de la bañera; hasta {may:length} una luz ha de estar tras un diferencial.',
  'light-more-level':
    '{light} está a {is:length} de la bañera; hasta {may:length} una luz ha de estar tras un diferencial. Si puede estar tan cerca no está cubierto aquí: preguntar.',
  'light-pool-level':
    '{light} está a {is:length} de la bañera. A más de {may:length} queda fuera de las zonas de una piscina; las de una bañera pequeña aparte no están cubiertas aquí: más cerca, preguntar.',
  'light-absence-zone':
    '{light} está a {is:length} de la bañera, en horizontal, y a {height:length} sobre el agua; hasta {may:length} en horizontal y {below:length} sobre el piso no puede haber luces a plena tensión.',
  'light-protection-zone':
    '{light} está a {is:length} de la bañera, en horizontal, y a {height:length} sobre el agua; hasta {may:length} en horizontal y {below:length} sobre el piso ha de estar tras un diferencial de 30 mA.',
  'switch-distance':
    '{switch} está a {is:length} de la bañera; lo mínimo es {may:length}. Si está demasiado cerca, mover el interruptor o la bañera.',
  'switch-zone':
    '{switch} está a {is:length} de la bañera; le corresponde estar a más de {may:length}, y tras un diferencial de 30 mA en la zona siguiente.',
  'switch-pool':
    '{switch} está a {is:length} de la bañera. A más de {may:length} queda fuera de las zonas de una piscina; las de una bañera pequeña aparte no están cubiertas aquí: más cerca, preguntar.',
  metal:
    '{metal} está a {is:length} de la bañera; hasta {may:length} el metal fijo ha de estar unido a su equipotencial.',
  'metal-authority':
    '{metal} está a {is:length} de la bañera; hasta {may:length} puede que el metal haya de estar unido a su equipotencial, y los inspectores difieren en bañeras de una pieza: preguntar.',
  'bond-size':
    'El conductor equipotencial es de {size}; ha de ser de cobre rígido de {least} como mínimo.',
  'bond-stranded':
    'El conductor equipotencial es de {size}, cableado; ha de ser de cobre rígido, de {least} como mínimo.',
  'bond-not-needed':
    'El suelo y el piso están exentos y no hay metal cercano en la lista: no se pide conductor equipotencial.',
  'ground-exempt':
    'El borde está a {is:in} sobre toda superficie a menos de {near:in}; desde {may:in} el suelo y el piso no necesitan unión equipotencial. Los peldaños que no conducen no cuentan. Una tarima posterior acaba con esto: preguntar en cada visita.',
  'ground-on-a-floor':
    'Una bañera certificada de una pieza sobre piso terminado en interior: el piso no necesita unión equipotencial.',
  'ground-bonded': 'El suelo y el piso alrededor de la bañera están unidos a su equipotencial.',
  'ground-unbonded':
    'El suelo y el piso alrededor de la bañera no están unidos a su equipotencial. Una bañera certificada de una pieza al aire libre está exenta si su borde está a {may:in} sobre toda superficie a menos de {near:in}; este está a {is:in} sobre la más alta.',
  'emergency-none':
    'Una vivienda de una familia no necesita un interruptor para los usuarios que pare las bombas.',
  'emergency-needed':
    'Los usuarios necesitan un interruptor que pare las bombas: mirar si está, y preguntar al inspector a qué distancia puede estar.',
  'emergency-needed-at':
    'Los usuarios necesitan un interruptor que pare las bombas, a la vista y a {may:length} de la bañera como mínimo: mirar si está.',
  'earth-combined':
    'La compañía trae neutro y tierra en uno ({earthing}). Unos conservan la tierra de la casa; otros dan a la bañera un electrodo propio y protección diferencial; un electrodo en la equipotencial debería tener {ohms:ohm} o menos. Decide el proyectista de la instalación: aquí no se aconseja nada. Una tensión del agua se lee contra una pica en el terreno a 2 o 3 m, nunca contra la tierra de la bañera.',
  'earth-apart': 'La alimentación trae la tierra aparte del neutro ({earthing}).',
  'earth-electrode':
    'La alimentación no trae tierra: la instalación tiene un electrodo propio ({earthing}), y un diferencial se ocupa de toda falta.',
  'two-earths':
    '{metal} está a {is:length} de la bañera; hasta {may:length} se alcanzan ambos. Con {earthing} la bañera puede recibir otra tierra que la de este metal, y dos tierras al alcance son un peligro propio: el proyectista ha de saberlo.',
  'tub-range':
    'El disyuntor es de {is:A}; los circuitos de bañeras portátiles llegan a {may:A}. Más allá cada derivación recibe su propio diferencial: trabajo para un ingeniero o un electricista.',
  demand:
    'Con la bañera por su placa ({tubs:kVA}) la casa cuenta {is:kVA}; un disyuntor general de {main:A} da {may:kVA}.',
  'demand-needed':
    'Si la acometida tiene sitio pide un cálculo de demanda de toda la casa por un electricista. La bañera cuenta por su placa, {tubs:kVA}; las sumas de disyuntores no dicen nada.',
  'not-covered-drop':
    'Los voltios donde empieza el tramo están lejos de los de esta alimentación: vea primero cómo está conectada.',
  'not-covered-loop': 'Lo que este disyuntor pide del bucle no está cubierto aquí: pregunte.',
  'not-covered-loop-tt':
    'Con una toma de tierra propia ha de hacerlo el diferencial: pregunte al proyectista.',
  'not-covered-ground-fault':
    'Cuándo ha de disparar el dispositivo no está cubierto aquí: pregunte.',
  'conduit-fill-thin':
    '{cable}: {count:number} conductores ocupan {is:mm2} del tubo {conduit} de {trade} in, y pueden llenarse {may:mm2}. Eso con aislamiento fino, marcado THHN o THWN; con uno grueso, como TW o THW, son demasiados.',
  'not-covered-fill': 'Cuánto puede llenarse este tubo no está cubierto aquí: pregunte.',
  'not-covered-ampacity':
    'Lo que admite este conductor tal como va no está cubierto aquí: pregunte.',
  'not-covered-load': 'Cómo cuenta esta carga no está cubierto aquí: pregunte.',
  'not-covered-neutral': 'Qué sección ha de tener este neutro no está cubierto aquí: preguntar.',
  'not-covered-neutral-load':
    '{cable}: todo lo que cuelga de una línea y el neutro consume {is:A}, y un neutro de {size} lleva {may:A}. En qué línea va cada cosa lo decide la caja: ponga {least}, como en las líneas.',
  'not-covered-earth-heat':
    '{cable}: cuánto calienta esta tierra una falta cerca de su principio depende de lo que deja pasar el disyuntor: pregunte a su fabricante, o ponga la sección de la tabla.',
  'not-covered-earth': 'Qué sección ha de tener esta tierra no está cubierto aquí: pregunte.',
  'not-covered-disconnect':
    'A qué distancia puede estar el seccionador no está cubierto aquí: preguntar.',
  'not-covered-disconnect-sight':
    'Hasta dónde puede estar el seccionador, y si ha de estar a la vista, no está cubierto aquí: preguntar.',
  'not-covered-convenience':
    'Si ha de haber un tomacorriente para otras cosas no está cubierto aquí: preguntar.',
  'not-covered-receptacle':
    'A qué distancia puede estar un tomacorriente no está cubierto aquí: preguntar.',
  'not-covered-receptacle-protection':
    'Qué tomacorrientes necesitan protección diferencial no está cubierto aquí: preguntar.',
  'not-covered-cord':
    'Qué largo puede tener el cordón de una bañera no está cubierto aquí: preguntar.',
  'not-covered-light': 'Dónde puede haber una luz no está cubierto aquí: preguntar.',
  'not-covered-gazebo':
    'Si un cenador cerrado cuenta como interior lo dice el inspector: preguntar antes de juzgar sus luces.',
  'not-covered-switch':
    'A qué distancia puede estar un interruptor de pared no está cubierto aquí: preguntar.',
  'not-covered-in-a-room':
    'En una habitación cuentan las reglas de los baños, que no están cubiertas aquí: preguntar.',
  'not-covered-metal':
    'Qué metal ha de unirse a la equipotencial no está cubierto aquí: preguntar.',
  'not-covered-bond':
    'Qué calibre ha de tener el conductor equipotencial no está cubierto aquí: preguntar.',
  'not-covered-ground':
    'Si el suelo y el piso han de unirse a la equipotencial no está cubierto aquí: preguntar.',
  'not-covered-emergency':
    'Si los usuarios necesitan un interruptor que pare las bombas no está cubierto aquí: preguntar.',
  'not-covered-earthing':
    'Qué pide la tierra de la alimentación en una bañera no está cubierto aquí: preguntar.',
  'not-covered-demand': 'Cómo se cuenta la demanda de una casa no está cubierto aquí: preguntar.',
}

/** Words around the findings on the supply. */
export const SUPPLY_PAGE_ES: Table<typeof SUPPLY_PAGE_EN> = {
  title: 'Alimentación de {tub}',
  book: 'Según {book}; deciden el código local y la autoridad.',
  'no-book':
    'Aquí no hay código de esta región: pregunte a la autoridad. No se usa nada de otra región.',
  place: 'El lugar y la casa',
  'place-not-told':
    'Nadie ha dicho qué hay alrededor de la bañera: no se juzgan distancias, luces, enchufes ni equipotencial.',
  'at-worst': 'En el peor caso: {sentence}',
  'depends-on': '{title}: depende de {asks}.',
  'holds-for': 'Se cumple para {values} ({of}).',
  'no-margin': '{sentence} Justo en el límite: sin margen.',
  differ:
    '{sentence} Los expertos lo leen de otro modo: {strict} según la lectura estricta, {lenient} según la otra. Hasta que decida {decides}, cuenta la estricta.',
  'decides-authority': 'la autoridad',
  'decides-designer': 'el proyectista de la instalación',
  clause: '{standard} {edition}, {clause}',
  'from-memory': '{clause} (de memoria)',
  circuit: 'Circuito {index}',
  breaker: 'disyuntor {amps}',
  'breaker-unknown': 'disyuntor desconocido',
  takes: 'todo a la vez consume {amps}',
  fitted: 'Contado con {box}, calefactor y todo.',
  'fitted-limit': 'Contado con {box}, calefactor y todo, ajustada a {limit:A} como máximo.',
  'takes-unknown': 'no se sabe lo que consume',
  carries: 'admite {amps}',
  'carries-unknown': 'lo que admite no está cubierto',
  ask: 'Qué preguntar, lo más revelador primero',
  'nothing-to-ask':
    'Nada más que averiguar en la bañera: ninguna respuesta cambiaría un veredicto.',
  ways: 'Qué se puede hacer, lo más barato primero',
  keep: 'Dejar la alimentación como está.',
  'set-lower':
    'Dejarla, y ajustar la caja para que consuma {limit:A} como máximo: entonces no funciona todo a la vez.',
  'change-breaker': 'Cambiar el disyuntor por uno de {breaker:A}.',
  'change-wire': 'Cambiar el cable a {size} de cobre, y el disyuntor por uno de {breaker:A}.',
  'way-holds': 'Esto sirve.',
  'way-breaks': 'Esto no sirve: {against}.',
  'way-differs': 'Según la lectura más estricta esto no sirve: {against}.',
  'way-besides': 'Lo que además no cumple: {besides}.',
  'way-open': 'Si esto sirve está abierto: vea qué preguntar.',
  holds: 'Se cumple.',
  breaks: 'No se cumple.',
  open: 'No todo está demostrado.',
  'yard-title': 'El entorno de {tub}, desde arriba',
  'yard-says': '{sign} {thing}, {distance}: {verdict}',
  'yard-tub': 'bañera',
  'yard-disconnect': 'seccionador',
  'yard-receptacles': 'tomacorriente',
  'yard-lights': 'luz',
  'yard-switches': 'interruptor de pared',
  'yard-metal': 'metal fijo',
  'yard-unknown': 'distancia desconocida',
  'yard-range': 'de {from} a {to}',
  'yard-rest': 'Sin dibujar',
  'yard-size':
    'La bañera se dibuja redonda y de 2 m de ancho; las distancias van a escala, los ángulos no.',
  'yard-beyond': 'Más allá de la línea de puntos la escala es menor.',
}

/** What is asked for, by where the survey has it: a few words each. */
export const SUPPLY_ASK_ES: Table<typeof SUPPLY_ASK_EN> = {
  'supply.breaker': 'valor del disyuntor',
  'supply.breakerType': 'tipo del disyuntor: B, C o D',
  'supply.earthing': 'cómo se pone a tierra la instalación: TN-S, TN-C-S, TT',
  'supply.earthLoop': 'impedancia de bucle al inicio del tramo',
  'supply.devices.breaker': 'valor del disyuntor',
  'supply.devices.terminals': 'para qué están marcados los bornes',
  'supply.devices.enclosure': 'valor de la envolvente o del conmutador',
  'supply.cables.where': 'por dónde va',
  'supply.cables.material': 'cobre o aluminio',
  'supply.cables.insulation': 'para qué está hecho su aislamiento',
  'supply.cables.method': 'cómo va: tubo, cable con cubierta, cordón …',
  'supply.cables.ambient': 'el aire más caliente a su alrededor',
  'supply.cables.alongside': 'cuántos otros conductores cargados van con él',
  'supply.cables.conduit.kind': 'clase de tubo',
  'supply.cables.conduit.size': 'medida del tubo',
  'plate.draws': 'amperios de la placa de la bañera, con calefactor y todo',
  'plate.minimumCircuit': 'circuito mínimo de la placa',
  'plate.maximumProtection': 'mayor disyuntor de la placa',
  codeEdition: 'edición adoptada del código',
  'loads.circuits': 'lo que consume al arrancar',
  'yard.setting': 'en interior o al aire libre',
  'yard.dwelling': 'vivienda de una familia u otra',
  'yard.selfContained': 'certificada y de una pieza sobre el suelo',
  'yard.rimHeight': 'altura del borde sobre la superficie más alta cercana',
  'yard.groundBonded': 'si suelo y tarima están unidos a la equipotencial',
  'yard.disconnect': 'un interruptor que desconecta la bañera para trabajar',
  'yard.disconnect.distance': 'distancia del seccionador',
  'yard.disconnect.inSight': 'si el seccionador está a la vista',
  'yard.disconnect.reach': 'camino al seccionador alrededor de una barrera',
  'yard.receptacles': 'enchufes cerca de la bañera',
  'yard.receptacles.distance': 'distancia',
  'yard.receptacles.groundFault': 'si lo protege un diferencial',
  'yard.receptacles.feedsTub': 'si la bañera se enchufa ahí',
  'yard.lights.distance': 'distancia',
  'yard.lights.height': 'altura sobre el agua',
  'yard.lights.groundFault': 'si la protege un diferencial',
  'yard.switches.distance': 'distancia',
  'yard.metal': 'metal fijo cerca de la bañera',
  'yard.metal.distance': 'distancia',
  'yard.metal.bonded': 'si está unido a la equipotencial',
  'yard.bond': 'conductor que une el metal',
  'yard.bond.size': 'sección del conductor equipotencial',
  'yard.bond.strands': 'conductor equipotencial rígido o cableado',
  'service.main': 'valor del disyuntor general',
  'service.area': 'superficie habitable',
  'service.complete': 'si están todas las cargas fijas',
  'service.loads': 'cargas fijas de la casa',
  'service.loads.power': 'potencia de la placa',
  'touch.felt': 'si alguien sintió un hormigueo',
  'touch.readings.unplugged': 'si todas las cargas estaban desenchufadas',
}
