import type { COLOUR_EN, LINE_EN, SHEET_EN, SHEET_PAGE_EN } from '../en/sheet.ts'
import type { Table } from '../words.ts'
import { LADDER_ES } from './ladder.ts'

export const SHEET_ES: Table<typeof SHEET_EN> = {
  ...LADDER_ES,
  'head.supply': '{system}, {frequency}. Disyuntor {breaker}. Hasta la bañera: {wires}.',
  'head.limit': 'Límite de corriente: ajustado {setting} (de fábrica {factory}).',
  'head.limit-breaker':
    'Límite de corriente: ajustado {setting} (de fábrica {factory}). El ajuste nombra el disyuntor: la caja toma {allowed:A} como máximo.',
  'head.proven': 'Plan demostrado resolviendo su circuito.',
  'head.provided':
    'El plan cumple SIEMPRE QUE se atienda {points} de abajo. Sin atenderlo, no está demostrado que cumpla.',
  'head.proof':
    '{verdict} Resuelto: {modes} modos y {transitions} estados por los que pasa entre ellos ({solves} resoluciones). La ley de corrientes se cumple hasta {residual} de la mayor corriente.',
  'head.proof-modes':
    '{verdict} Resuelto: {modes} modos, y todo cambio entre ellos es uno de estos ({solves} resoluciones). La ley de corrientes se cumple hasta {residual} de la mayor corriente.',
  'head.margin':
    'El contacto o fusible más justo conserva un {margin:percent} de margen. Máximo de una línea: {amps:A}.',
  'head.margin-greatest':
    'Con cada consumo que no se conoce con exactitud en su valor mayor: el contacto o fusible más justo conserva un {margin:percent} de margen. Máximo de una línea: {amps:A}.',
  'head.not-proven': 'NO está demostrado que este plan cumpla. No construirlo.',
  'head.circuits':
    '{system}, {frequency}. A esta bañera llegan DOS circuitos. Un nombre sin circuito es del circuito 1.',
  'head.circuit':
    '{circuit}: disyuntor {breaker}. De una línea {limit} como máximo; el plan toma {amps:A}. Trae {wires}.',
  'head.circuit-idle': '{circuit}: disyuntor {breaker}. YA NO SIRVE a esta bañera. Ver más abajo.',
  'head.given':
    'De un conexionado de un archivo, como se construyó o se hizo a mano: no planeado aquí.',
  'head.changed': 'El plan es de la bañera DESPUÉS de los cambios de abajo, no como se encontró.',
  'system.split-phase': '120/240 V, dos líneas',
  'system.single-leg': '120 V, una línea',
  'system.two-legs-of-wye': '120/208 V, dos líneas de una estrella',
  'system.single-phase-230': '230 V, monofásico',
  'system.two-lives-230': '230 V entre dos líneas, sin neutro',
  'system.three-phase-230-400': '230/400 V, trifásico con neutro',
  'system.high-leg-delta': '120/240 V en triángulo (delta) con una línea alta',
  'breaker.known': '{amps:A}',
  'breaker.range': '{from:A} a {to:A}',
  'breaker.unknown': 'no conocido',

  'circuit.first': 'Circuito 1 ({device})',
  'circuit.second': 'Circuito 2 ({device})',
  'device.of-box': 'interruptor diferencial de {box}',
  'cut.heat-load':
    '{thing} muestra calor: fuera lo que se calentó, cortar hasta cobre limpio, extremos nuevos. No apretar ningún tornillo recalentado.',
  'cut.heat-device':
    '{thing} muestra calor: bloqueado aguas arriba, poner uno nuevo en su lugar; sus conductores, cortados hasta cobre limpio. No apretar ningún tornillo recalentado.',
  'cut.heat-cable':
    '{thing} muestra calor: ambos extremos cortados hasta cobre limpio, o un cable nuevo. No apretar ningún tornillo recalentado.',
  'live.turnable':
    'La clavija entra en los dos sentidos: tomar los dos conductores de cada carga como con tensión hasta que la clavija esté FUERA.',
  'mend.points': 'Corregir: {points} de la primera página.',
  'mend.file': 'Anotar lo que se cambió, en el archivo del conexionado.',
  'mend.judge': 'Hacerlo evaluar de nuevo, e imprimir su hoja de nuevo. Esta va a la basura.',
  'stop.kill':
    'La red y el agua matan. Cortar, bloquear y verificar la ausencia de tensión en cada par antes de meter una mano.',
  'stop.signs':
    'Parar y cortar en el tablero ante un hormigueo, humo, olor a quemado, o agua más caliente que lo ajustado mientras el calefactor toma corriente.',
  'stop.bypass':
    'Nunca puentear un limitador, una prueba de flujo, un termostato ni un interruptor diferencial. Tampoco para probar.',
  'stop.maker':
    'Las instrucciones del fabricante y el reglamento local prevalecen sobre esta hoja.',
  'stop.not-shown': 'NO está demostrado que este conexionado cumpla. Sin tensión. No construirlo.',
  'licence.US':
    'Aquí el cableado de suministro suele ser trabajo de un electricista con licencia, con permiso e inspección. Algunos estados exigen licencia también dentro de la bañera.',
  'licence.CA':
    'En la mayoría de las provincias el cableado de suministro es trabajo de un contratista con licencia, con permiso e inspección. La caja necesita una marca que la provincia acepte.',
  'licence.UK':
    'Aquí los circuitos nuevos o modificados son trabajo de una persona competente y registrada, y puede ser obligatorio notificarlos. Conservar el certificado.',
  'licence.EU':
    'Aquí el cableado de suministro sigue las reglas nacionales y a menudo es solo para instaladores registrados.',
  'licence.AU':
    'Aquí el cableado de suministro, y la reparación de equipos de red, es para personas con licencia. Lo acompaña un certificado.',
  'licence.NZ':
    'Aquí el cableado de suministro es para personas con licencia, con pocas excepciones. Lo acompaña un certificado.',
  'licence.ask':
    'Preguntar a la autoridad: ¿Quién puede hacer este trabajo en esta dirección? ¿Qué edición del reglamento rige? ¿Se necesita un permiso, una inspección o un certificado?',
  'licence.edition':
    'Reglas en que se basa esta hoja: la práctica común, y la edición nombrada con cada regla. Comprobar la edición vigente.',

  'open.none': 'No queda nada abierto.',
  'open.assumed-unknown':
    '{load}: consumo no conocido. El plan cumple siempre que consuma {bound}. Leer la placa, o medirlo en “{step}”.',
  'open.assumed-range':
    '{load}: consumo no conocido con exactitud. El plan cumple siempre que consuma {bound}. Medirlo en “{step}”.',
  'bound.most': '{amps:A} como máximo',
  'bound.both': '{least:A} como mínimo y {most:A} como máximo',
  'bound.load': '{load} ({commands})',
  'wires.run': '{from} a {to}',
  'open.re-identify':
    'Conductores n.º {wires} (* en el dibujo): color de neutro, con tensión de línea. Volver a marcarlos en ambos extremos.',
  'open.live-when-off':
    'Un conductor sigue con tensión con estas apagadas: {loads}. Poner la lista en la tapa.',
  'open.condition': '{load}, como se encontró: {condition}',
  'open.tub-note': 'Bañera: {note}',
  'open.box-note': 'Caja: {note}',
  'open.circuit-idle':
    '{circuit}, disyuntor {breaker}, ya no sirve: la caja no toma nada de él. Una persona con licencia lo retira en el tablero, o queda ahí cortado, bloqueado y rotulado. Mientras tanto sus conductores {wires} quedan aislados en la bañera. Hasta entonces alguien puede darles tensión.',
  'open.circuit-alone':
    '{circuit} alimenta ahora solo la caja, detrás de {breaker}: esta puede tomar {share:A} como máximo (80 %). El límite está ajustado a {setting}; nunca ajustarlo para los dos disyuntores juntos, ni para el mayor.',
  'open.turnable':
    'La clavija entra en los dos sentidos. El plan se evaluó en ambos. Línea y neutro pueden haber cambiado de lugar: cualquiera de los dos conductores de una carga puede tener tensión con ella apagada. Solo queda sin tensión con la clavija FUERA, y comprobado así.',
  'open.heat-load':
    '{thing} muestra calor. Sustituir cada clavija, terminal, lengüeta y conductor suyo que se calentó, y cortar cada conductor hasta cobre limpio. Un tornillo o terminal recalentado nunca se vuelve a apretar. Averiguar por qué se calentó antes de darle tensión.',
  'open.heat-device':
    '{thing} muestra calor. Sustituirlo, y cortar cada conductor suyo hasta cobre limpio. Un tornillo o terminal recalentado nunca se vuelve a apretar. Averiguar por qué se calentó antes de darle tensión.',
  'open.heat-cable':
    '{thing} muestra calor. Cortar cada conductor hasta cobre limpio; si entonces queda corto, sustituir el cable. Un tornillo o terminal recalentado nunca se vuelve a apretar. Averiguar por qué se calentó antes de darle tensión.',

  'function.leg1': 'línea 1',
  'function.leg2': 'línea 2',
  'function.leg3': 'línea 3',
  'function.second-leg1': 'línea 1 del circuito 2',
  'function.second-leg2': 'línea 2 del circuito 2',
  'function.second-neutral': 'neutro del circuito 2',
  'function.second-earth': 'tierra del circuito 2',
  'function.neutral': 'neutro',
  'function.line': 'línea',
  'function.earth': 'tierra',
  'function.hot': 'fase',
  'function.high': 'alta velocidad',
  'function.low': 'baja velocidad',
  'function.common': 'retorno',
  'function.signal': 'señal',
  'function.data': 'datos',
  'pin.high': 'alta',
  'pin.low': 'baja',
  'function.tail': 'conductor propio',
  'tail.white': 'Conductor propio del disyuntor, {device}',

  'owner.cable': '{cable}: {from} a {to}',
  'owner.load': '{load} → {place}',
  'owner.load-unplaced': '{load}: sin lugar, queda fuera de servicio',
  'plug.none': 'Conductores sin clavija.',
  'plug.own': 'Su propia clavija ({shape}) en {socket}.',
  'plug.adapter': 'Hacer un adaptador: {shape} a {socket}, {socketShape}.',
  'plug.adapter-bare': 'Montar una clavija en sus conductores: {socket}, {socketShape}.',
  'fix.screw': 'tornillo, {torque}',
  'fix.screw-maker': 'tornillo, par del fabricante',
  'fix.stud': 'espárrago, {torque}',
  'fix.stud-maker': 'espárrago, par del fabricante',
  'fix.tab': 'lengüeta',
  'fix.pin': 'pin de clavija',
  'note.re-identify': 'VOLVER A MARCAR: lleva la tensión de línea.',
  'note.insulated': 'AISLAR CON CAPUCHÓN. No se conecta en ningún sitio.',
  'note.loose': 'SUELTO. Aislarlo antes de dar tensión.',
  'note.moved': 'MOVER. Se encontró en {from}.',

  'setting.profile': 'Perfil de equipo',
  'setting.limit': 'Límite de corriente',
  'setting.after-reset': 'Tras un reinicio: {text}',
  'meter.unknown-amps': 'No conocido: {bound}; si no, parar. Anotarlo.',
  'together.heat-waits': 'La calefacción espera mientras funcione alguna de estas: {commands}.',
  'together.heat-with-any': 'Ninguna carga por sí sola detiene la calefacción.',
  'together.limit':
    'La caja se mantiene dentro de su límite de corriente de {setting}. Lo que no figura junto en ninguna fila no funciona junto.',
  'together.greatest':
    'Cada consumo que no se conoce con exactitud cuenta aquí con su valor mayor.',

  'tool.lock': 'Candado y etiqueta.',
  'tool.meter':
    'Medidor y puntas de categoría adecuada, y una fuente con tensión conocida para comprobarlo.',
  'tool.clamp': 'Pinza amperimétrica.',
  'tool.torque': 'Destornillador dinamométrico para {torques}.',
  'tool.crimp': 'Engastadora para los extremos de abajo.',
  'tool.insulated': 'Destornilladores aislados, guantes, alfombra seca.',
  'tool.labels': 'Cámara y etiquetas numeradas.',
  'tool.thermometer': 'Termómetro de confianza.',
  'tool.dry': 'Aspiradora de líquidos y toalla.',
  'part.adapter': 'Adaptador para {load}: de {plug} a {socket}.',
  'part.plug': 'Clavija para {load}, en sus conductores: {socket}.',
  'part.ferrules': 'Punteras huecas, {count}, cada una según su conductor.',
  'part.ring-terminals': 'Terminales de anillo, {count}.',
  'part.tab-terminals': 'Terminales de lengüeta aislados, {count}.',
  'part.caps': 'Capuchones aislantes, {count}.',
  'part.blanking-plate':
    'Tapa ciega: el recorte del teclado viejo es de {width:mm} × {height:mm}, el teclado cubre {ownWidth:mm} × {ownHeight:mm}.',
  'part.wider-hole':
    'El recorte del teclado debe crecer de {width:mm} × {height:mm} a {ownWidth:mm} × {ownHeight:mm}.',
  'part.marking': 'Manguitos de marcado, dos por cada conductor marcado *: {count}.',
  'part.gaskets': 'Juntas y anillos de unión del calefactor.',
  'part.bond':
    'Conductor y terminales equipotenciales, donde los viejos son cortos, delgados o verdosos: {size}.',
  'part.relief': 'Prensaestopas y sellos para cada entrada.',
  'part.heat-load':
    'Para {thing}, que muestra calor: clavija, terminales y lengüetas nuevos, y conductor para sustituir lo quemado.',
  'part.heat-device': 'Nuevo, del mismo tipo y valor nominal: {thing}, que muestra calor.',
  'part.heat-cable':
    'Para {thing}, que muestra calor: terminales nuevos, y cable para sustituirlo donde quede corto.',

  'step.lock': 'Bloquear y verificar la ausencia de tensión',
  'step.photo': 'Fotografiar y rotular',
  'step.remove': 'Sacar la caja vieja',
  'step.mount': 'Montar la caja',
  'step.land': 'Conectar los conductores',
  'step.supply': 'Conectar el suministro',
  'step.jumpers': 'Poner puentes y puentes de motor',
  'step.relief': 'Sujetar, dejar bucle, sellar',
  'step.cold': 'Comprobar en frío',
  'step.fill': 'Llenar',
  'step.power': 'Primera tensión, nada enchufado',
  'step.settings': 'Introducir los ajustes',
  'step.outputs': 'Activar cada salida, nada enchufado',
  'step.loads': 'Una carga cada vez',
  'step.keypad': 'Teclado y luz',
  'step.protect': 'Comprobar las protecciones',
  'step.close': 'Cerrar',
  'step.mend': 'Parar: primero corregirlo',

  'caution.lock': 'El lado de línea de {device} sigue con tensión. Mata.',
  'caution.lock-cord': '{device}: si otra persona vuelve a enchufarla, mata.',
  'caution.photo': 'Sin foto no hay vuelta atrás.',
  'caution.remove':
    'De las uniones sale agua. Mantenerla lejos del cableado. Los bordes de lámina y chapa cortan.',
  'caution.mount':
    'La caja y el calefactor pesan en un compartimento estrecho. Levantar entre dos.',
  'caution.land':
    'Un conductor en el borne equivocado puede dar tensión al agua. ¿Sigue bloqueado? Verificar de nuevo la ausencia de tensión.',
  'caution.supply':
    'El extremo del suministro es otra envolvente con partes propias con tensión. Bloqueado aquí no es bloqueado allí.',
  'caution.supply-cord':
    'Un cable con clavija ya conectado está a un empujón de tener tensión. La clavija queda fuera, a la vista.',
  'caution.jumpers':
    'Un puente mal puesto, en la tarjeta o en un motor, quema una carga o pone el suministro en cortocircuito. Moverlo sin tensión, nunca con ella.',
  'caution.relief':
    'Un conductor arrancado es un conductor con tensión. El agua sigue el cable hasta la caja.',
  'caution.cold':
    'Medir ohmios en un conductor con tensión hiere a la persona y daña el medidor. Verificar de nuevo la ausencia de tensión.',
  'caution.fill':
    'Un calefactor con aire dentro se quema en seco. Sacar el aire antes de dar tensión.',
  'caution.power':
    'Tarjeta con tensión. Nadie en el agua. Una segunda persona cerca. Una mano, alfombra seca, puntas adecuadas. Ningún propietario hace este paso.',
  'caution.settings':
    'Un límite de corriente demasiado alto quema el suministro. La tarjeta tiene tensión.',
  'caution.outputs':
    'Tarjeta con tensión, como antes. No tocar nada salvo los bornes con las puntas de prueba.',
  'caution.loads':
    'Nunca enchufar con tensión. Cortar, verificar la ausencia de tensión, enchufar, dar tensión. Cada vez.',
  'caution.keypad': 'Un teclado de otra marca no encaja. No forzar ninguna clavija.',
  'caution.protect': 'Si una no actúa, la bañera queda cortada y bloqueada. Nunca puentearla.',
  'caution.close': 'Una tapa de succión rota retiene a un bañista bajo el agua.',
  'caution.mend':
    'Dar tensión a un conexionado sin demostrar que cumple puede matar. Queda cortado y bloqueado.',
  'caution.lock-circuits':
    'A esta bañera llegan DOS circuitos: uno cortado NO es cortado. Los lados de línea siguen con tensión, en: {circuits}. Matan.',

  'lock.off': 'Cortar en {device}. Bloquear. Colgar la etiqueta propia.',
  'lock.cord': 'Sacar la clavija del tomacorriente: {device}. Mantenerla a la vista. Etiquetarla.',
  'lock.cord-means':
    'Desde aquí “cortar” y “bloquear” significan: clavija fuera, a la vista, etiquetada.',
  'lock.meter': 'Comprobar el medidor en una fuente con tensión conocida.',
  'lock.pairs': 'Medir cada par de abajo en la caja vieja.',
  'lock.neutral-stays':
    'EL NEUTRO SIGUE CONECTADO: {device} no lo abre, ni cortado ni disparado. Un defecto en otro lugar puede elevar su tensión. Medir también neutro a tierra antes de tocarlo.',
  'lock.meter-again': 'Comprobar otra vez el medidor en la fuente con tensión.',
  'lock.capacitors':
    'Esperar cinco minutos por los condensadores de motor. Comprobar que cada uno está descargado antes de tocarlo.',
  'lock.circuits-mean':
    'Desde aquí “cortar”, “bloquear” y “verificar la ausencia de tensión” se refieren a AMBOS circuitos, cada uno con su propio candado.',
  'lock.idle':
    '{circuit} ya no sirve. Su candado y su etiqueta SE QUEDAN cuando la bañera vuelve a tener tensión.',
  'lock.turnable':
    'La clavija se puede girar: ningún interruptor ni dispositivo disparado deja este cable sin tensión con certeza. Medir solo con la clavija FUERA.',
  'photo.open': 'Fotografiar la caja abierta, de frente, antes de tocar una clavija.',
  'photo.label': 'Rotular cada conductor en ambos extremos con su número de esta hoja.',
  'photo.function':
    'Fiarse de la función, no del color: seguir cada conductor hasta su motor o pieza.',
  'remove.water': 'Cerrar las válvulas del calefactor, o vaciar por debajo de él.',
  'remove.leads': 'Soltar los conductores de las cargas. Aislar cada conductor de suministro.',
  'remove.heat-marks': 'Tirar cada clavija, terminal o conductor que muestre calor.',
  'remove.probes': 'Sacar las sondas viejas. No reutilizar ninguna.',
  'remove.box': 'Sacar la caja y el calefactor. Secar el compartimento.',
  'remove.box-alone': 'Sacar la caja. El calefactor se queda. Secar el compartimento.',
  'remove.changes': 'Los cambios en la bañera van primero: {points} de la primera página.',
  'remove.left-out':
    '{load} queda fuera: aislar cada conductor por separado, de forma definitiva. Rotularlo.',
  'mount.box':
    'Montar {box} como muestra su fabricante: vertical, en seco, lejos de tubos calientes.',
  'mount.heater': 'Colocar {heater}. Juntas nuevas. Uniones a mano.',
  'mount.heater-kept': 'Conservar {heater}. Juntas nuevas. Uniones a mano.',
  'mount.probe': 'Meter {probe} hasta el fondo de su vaina: {place}.',
  'bond.wire':
    'Conductor equipotencial: {size}. De una sola pieza, o unido con una grapa hecha para ello.',
  'bond.size-us': 'cobre macizo, 8 AWG o más grueso, o el valor local si es mayor',
  'bond.size-local': 'cobre, con el calibre del fabricante o del reglamento local',
  'bond.join':
    'Unión equipotencial: unir {lug} con el borne equipotencial de cada uno de estos: {parts}; y con todo otro metal al alcance.',
  'bond.lug': 'el borne equipotencial {lug} de la caja ({torque})',
  'bond.lug-no-torque': 'el borne equipotencial {lug} de la caja (par según el fabricante)',
  'bond.lug-maker':
    'el borne equipotencial de la caja, como lo marca su fabricante (par según el fabricante)',
  'bond.torque':
    'Metal limpio bajo cada terminal, un conductor por terminal, par según cada pieza. Tirar de cada uno.',
  'place.water': 'agua de la bañera',
  'place.heater-inlet': 'tubo del calefactor, extremo de entrada',
  'place.heater-outlet': 'tubo del calefactor, extremo de salida',
  'land.supply-waits':
    'Dejar los conductores de suministro sueltos de la caja nueva, cada uno aislado, hasta terminar la comprobación en frío.',
  'land.supply': 'Conectar el suministro en la caja: conductores {wires}. La tierra primero.',
  'supply.upstream':
    'Antes de abrir cualquier envolvente aguas arriba: cortar en el disyuntor que la alimenta, bloquear, verificar también ahí la ausencia de tensión en cada par.',
  'supply.neutral-stays':
    'Ahí el neutro sigue conectado salvo que ese disyuntor lo abra. Medirlo también a tierra antes de tocarlo.',
  'supply.between':
    'Revisar los conductores entre las envolventes de suministro: {wires}. Cada uno en ambos extremos.',
  'supply.shut': 'Cerrar cada envolvente aguas arriba antes de dar tensión.',
  'supply.low-volts':
    'Aún cortado: enchufar ahora sondas, teclado y conductores de muy baja tensión, conductores {wires}.',
  'supply.upstream-circuits':
    'Antes de abrir cualquier envolvente aguas arriba: cortar en AMBOS disyuntores que la alimentan, bloquear cada uno, verificar también ahí la ausencia de tensión en cada par de ambos.',
  'supply.circuits-apart':
    'Mantener separados los circuitos: ningún neutro ni línea de uno en un borne del otro. Mirar la tabla de conductores dos veces.',
  'supply.circuit-idle':
    '{circuit}, disyuntor {breaker}, ya no sirve. Aislar sus conductores {wires} en la bañera, cada uno por separado; rotularlos. En el tablero: retirado por una persona con licencia, o cortado, bloqueado, rotulado.',
  'land.no-neutral':
    'Este suministro no tiene neutro. No conectar ninguno, ni tomarlo de la tierra.',
  'land.tail':
    'Comprobar que el conductor blanco propio (conductor {wire}) de {device} está en: {terminal}. Sin él, el dispositivo está ciego.',
  'land.move': 'MOVER el conductor {wire} en su extremo de suministro: de {from} a {to}.',
  'land.workmanship': 'Un conductor por borne. Solo cobre. Ningún hilo fuera. Tirar de cada uno.',
  'land.shared':
    'Solo aquí comparten borne los conductores, como permite su fabricante: {terminals}.',
  'land.torque':
    'Apretar cada tornillo y tuerca a su par (tabla de conductores). Pintar una raya que lo cruce.',
  'land.re-identify': 'Volver a marcar en ambos extremos: conductores n.º {wires}.',
  'land.low-volts':
    'Sondas y conductores de muy baja tensión {wires}: dejarlos también desenchufados hasta terminar la comprobación en frío.',
  'land.heater-earth': 'Conectar la tierra del calefactor: conductor {wires}.',
  'land.heater':
    'Conductores del calefactor {wires}: dejarlos fuera de sus bornes, cada uno aislado, hasta probar el calefactor.',
  'land.loads':
    'Conductores de carga {wires}: preparar ahora sus extremos. Dejarlos DESENCHUFADOS o fuera de sus bornes, cada uno aislado.',
  'land.caps': 'Aislar de forma definitiva: conductores n.º {wires}.',
  'jumper.move': 'MOVER {jumper} ({what}): {from} → {to}.',
  'jumper.leave': 'DEJAR {jumper} ({what}) en {to}. Comprobar que está ahí.',
  'strap.move': 'MOVER el puente de motor de {load}: {from} → {to}, como muestra su placa.',
  'strap.leave': 'DEJAR el puente de motor de {load} en {to}. Comprobar que está ahí.',
  'relief.clamp': 'Sujetar cada cable en su entrada. Tirar: no debe moverse.',
  'relief.loop': 'Dejar un bucle de goteo bajo cada entrada.',
  'relief.holes': 'Cerrar cada agujero sin usar.',
  'relief.clear': 'Atar los conductores lejos de tubos calientes y ventiladores.',
  'cold.dead': 'De nuevo sin tensión cada par, en los conductores de suministro aislados.',
  'cold.zero':
    'Primero juntar las puntas del medidor: ponerlo a cero, o restar lo que indica de cada lectura menor de 10 Ω.',
  'cold.insulation':
    'Prueba de aislamiento ({volts:V} continuos): conductores de suministro sueltos de la caja (un interruptor diferencial se destruye con ella), líneas y neutro unidos contra tierra: primero desenchufar o soltar {parts}. Si no, se destruye, o la prueba mide mal. Sano: cerca de {expected:ohm}; más de {least:ohm} basta, menos de {suspect:ohm} es sospechoso; una sola pieza buena: más de {good:ohm}. Un supresor de sobretensiones mide bajo por diseño y también debe estar fuera.',
  'fill.valves': 'Abrir cada válvula que se cerró en el calefactor. Del todo.',
  'fill.well': 'Llenar por el hueco del filtro, para que el agua empuje el aire hacia fuera.',
  'fill.air': 'Aflojar la unión más alta hasta que rezume. Apretar a mano.',
  'fill.look': 'Revisar cada unión por fugas. Secar el compartimento.',
  'power.ready': 'Cargas desenchufadas y aisladas. Sondas y teclado puestos.',
  'power.ready-heater': 'Conductores del calefactor {wires} sueltos y aislados.',
  'power.on': 'Quitar los candados y etiquetas propios, primero aguas arriba. Dar tensión.',
  'power.on-cord': 'Manos fuera de la caja. Enchufar.',
  'power.button': 'Pulsar el botón de prueba de {device}: debe disparar. Rearmar.',
  'power.read': 'Medir cada par de abajo.',
  'power.on-circuit':
    'Dar tensión: {circuit}. Quitar los candados y etiquetas propios, primero aguas arriba.',
  'power.idle-stays': 'SIGUE CORTADO, bloqueado y etiquetado: {circuit}.',
  'power.button-box':
    'Pulsar el botón de prueba de {device}, sin tocar nada más: debe disparar. {terminals} siguen CON TENSIÓN. Rearmar.',
  'set.dead':
    'Un interruptor, selector, palanca o puente dentro de la caja: cortar, bloquear, verificar la ausencia de tensión, ponerlo, manos fuera, dar tensión.',
  'set.enter': '{setting}: {value}. Introducirlo así: {entered}.',
  'set.cycle': 'Cortar durante diez segundos. Dar tensión. Volver a leer cada ajuste.',
  'set.falls':
    'Con cada corte de corriente la caja olvida: {settings}. Introducirlo ahora de nuevo, y volver a leerlo.',
  'set.again':
    'Hubo un corte: antes de poner nada en marcha, introducir de nuevo y volver a leer: {settings}.',
  'set.value': '{setting}: {value}',
  'set.point': 'Consigna de 40 °C (104 °F) como máximo.',
  'set.circuit-alone':
    '{circuit} alimenta solo la caja, detrás de {breaker}: nunca un límite que la deje tomar más de {share:A}. Planeado: {setting}.',
  'outputs.call': 'Activar una salida cada vez. Medir sus bornes.',
  'outputs.off': 'Cortar. Bloquear. Verificar la ausencia de tensión.',
  'loads.land':
    '{load}: cortar, verificar la ausencia de tensión, conectar en {place} (conductores {wires}), par de apriete. {amps} Dar tensión. Ponerla en marcha.',
  'loads.plug':
    '{load}: cortar, verificar la ausencia de tensión, enchufar en {place} (conductores {wires}). {amps} Dar tensión. Ponerla en marcha.',
  'loads.heater':
    '{load}, en último lugar: cortar, verificar la ausencia de tensión, conectar en {place} (conductores {wires}), par de apriete. {amps} Dar tensión. Primero debe moverse el agua. Después, calentar.',
  'loads.clamp': 'Pinza amperimétrica en el conductor {wire}.',
  'loads.amps': 'Medir amperios.',
  'loads.again':
    'Después de CADA “dar tensión” de este paso la caja ha olvidado: {settings}. Introducirlo y volver a leerlo antes de poner nada en marcha.',
  'loads.earth':
    'Con cada carga enchufada, aún sin tensión: ohmios del borne de tierra a su metal.',
  'loads.air':
    'Purgar el aire al arrancar cada bomba. Unos minutos de marcha para sacar el aire van antes de calentar.',
  'loads.worst':
    'Hacer funcionar a la vez la peor combinación: {commands}. Medir amperios en cada línea.',
  'loads.heat-waits':
    'Poner en marcha cada una de estas y comprobar que la calefacción para: {commands}.',
  'loads.bound':
    'Medir {load} en marcha: {bound}. Con cualquier otra lectura: parar, cortar, bloquear. El plan no está demostrado; planear de nuevo con lo medido.',
  'loads.worst-circuit':
    'Hacer funcionar a la vez la peor combinación del {circuit}: {commands}. Medir amperios en cada línea suya.',
  'keypad.fit': 'Asentar el teclado y su junta. Cable lejos de tubos.',
  'keypad.keys': 'Pulsar cada tecla. Cada una hace lo que dice su rótulo.',
  'keypad.light': '{load}: encender, apagar.',
  'protect.button': 'Botón de prueba de {device}: todo queda sin tensión. Rearmar.',
  'protect.button-neutral':
    'Botón de prueba de {device}: toda línea queda sin tensión; el neutro sigue conectado. Rearmar.',
  'protect.clamp':
    '¿Sigue la pinza amperimétrica en un conductor del calefactor (conductor {wire})? Si no: cortar, verificar la ausencia de tensión, ponerla ahí, dar tensión.',
  'protect.flow-maker':
    'Prueba de flujo: el ensayo del fabricante va primero. ¿Sin válvula en el calefactor? Solo el ensayo del fabricante. Nunca con el calefactor vacío, nunca con la protección de flujo puenteada.',
  'protect.flow-ready':
    'En marcha: {command}. Ajustar por encima de la temperatura del agua: calefacción encendida, amperios en la pinza. Una segunda persona junto al interruptor de corte.',
  'protect.pair-order':
    '¿Muestra la caja ambas sondas? Con todo el flujo la salida indica lo mismo que la entrada o un poco más. Si indica menos, están intercambiadas. Cortar, corregirlas.',
  'protect.pressure-switch':
    'Cerrar despacio la válvula entre bomba y calefactor; una detrás del calefactor eleva la presión y no demuestra nada. La calefacción debe parar, y aparecer la alarma de flujo, antes del cierre total.',
  'protect.flow-switch':
    'Cerrar despacio una válvula del calefactor. La calefacción debe parar, y aparecer la alarma de flujo, antes del cierre total.',
  'protect.probe-pair':
    'Estrangular despacio una válvula del calefactor hasta un hilo de agua, sin cerrarla nunca del todo. La salida se calienta más que la entrada: la calefacción debe parar, y aparecer la alarma de flujo.',
  'protect.flow-late':
    'Calefacción aún encendida {seconds} s después de caer el flujo, tubo caliente o golpeteo en él: cortar al instante, bloquear, abrir la válvula. La prueba de flujo ha fallado. La bañera queda cortada.',
  'protect.flow-back':
    'Abrir la válvula del todo. Borrar la alarma como dice el fabricante. La calefacción vuelve.',
  'protect.limit': 'Sobretemperatura: probar solo como dice el fabricante de la caja.',
  'protect.heat-stops':
    'Ajustar por debajo de la temperatura del agua: la calefacción debe parar. Volver al ajuste.',
  'protect.button-circuit':
    'Botón de prueba de {device}: su propio circuito queda sin tensión, el OTRO sigue con tensión. Rearmar.',
  'protect.button-box':
    'Botón de prueba de {device}: todo lo que está detrás queda sin tensión; {terminals} de la caja siguen CON TENSIÓN. Rearmar.',
  'close.off':
    'Cortar, bloquear, verificar la ausencia de tensión. Repasar una vez más cada tornillo y clavija.',
  'close.suction':
    'Tapas de succión enteras, fijas y con capacidad nominal para la bomba que tienen detrás. Si no, la bañera queda cerrada.',
  'close.lid':
    'Fijar en la tapa esta hoja y la lista de lo que sigue con tensión al apagar. Tapa cerrada, junta limpia.',
  'close.panels': 'Cables lejos de tubos calientes. Paneles puestos. Disyuntor rotulado.',
  'close.settings': 'Dar tensión. Volver a leer los ajustes una vez más.',
  'close.paper':
    'En el papel del propietario: “Tras cada corte de corriente volver a leer {settings}. Si se muestra otra cosa: apagar, no bañarse, y llamar al número de abajo.”',
  'close.falls':
    'Y en él: “Un corte de corriente cambia {setting} a: {fallsTo}. Debe ser: {value}. Hasta entonces la bañera queda apagada.”',
  'close.owner':
    'Mostrar al propietario: el interruptor de corte, el botón de prueba mensual, cuándo espera la calefacción.',
  'close.panels-circuits':
    'Cables lejos de tubos calientes. Paneles puestos. AMBOS disyuntores rotulados: “Bañera de hidromasaje, uno de dos. Apagar ambos.”',
  'close.idle':
    'En el tablero {circuit} se rotula: “Servía a la bañera de hidromasaje. Aislado allí. No encender.” Su candado se queda hasta que se retire.',
  'close.owner-circuits':
    'Mostrar al propietario: AMBOS interruptores de corte, de {circuits}, pues uno solo deja parte de la bañera con tensión; el botón de prueba mensual de cada uno; cuándo espera la calefacción.',

  'named.element': '{of}',
  'named.winding': 'devanado “{name}” de {of}',
  'named.probe': '{of}',
  'named.load-electronics': '{of}',
  'named.primary': 'el primario de {name} en {of}',
  'named.secondary': 'el secundario de {name} en {of}',
  'named.electronics': 'la electrónica {name} de {of}',
  'named.ground-fault': 'la electrónica diferencial {name} de {of}',
  'named.semiconductor': 'el triac {name} de {of}',
  'named.input': 'la entrada de sensor “{name}” de {of}',
  'named.board': 'la tarjeta de {of}',

  'outside.dead':
    'Distinto de 0 V: hay tensión. Manos fuera, tapa puesta. Buscar un segundo suministro o el interruptor equivocado. Seguir solo con 0 V.',
  'outside.cold':
    'No dar tensión. Cerrado donde debería estar abierto: revisar puentes y lo conectado. Resistencia abierta o fuera de valor: quemada, o no es esa. Sonda fuera de valor: mojada, rota, o no es esa.',
  'outside.bond':
    'Tierra o unión equipotencial alta: terminal flojo, pintura u óxido debajo, un conductor olvidado. Corregirlo, medir de nuevo.',
  'outside.feed':
    'Cortar, bloquear, averiguar por qué. No se enchufa nada antes de que cada par sea correcto.',
  'outside.setting':
    'Cortar, bloquear. Nada funciona con un ajuste que no se lee como se introdujo.',
  'outside.output': 'Cortar, bloquear, revisar puentes y conductores. No enchufar nada ahí.',
  'outside.case':
    'Tierra a metal alta o abierta: esa carga no recibe tensión. Revisar su conductor de tierra.',
  'outside.motor-high':
    'Amperios de motor por encima: cortar, bloquear, no seguir. Probable: puente de motor o puente para otra tensión, rodete trabado o que roza, cojinetes secos, condensador débil, tensión de suministro baja.',
  'outside.motor-low':
    'Amperios de motor por debajo: cortar, bloquear, no seguir. Probable: bolsa de aire, válvula cerrada, filtro obstruido, rodete flojo, las dos velocidades intercambiadas, la mitad de su tensión.',
  'outside.motor-none':
    'Sin amperios, o zumba y no gira: cortar, bloquear. Probable: clavija mal asentada, fusible abierto, el protector del propio motor, condensador muerto.',
  'outside.heater':
    'Amperios de calefactor a la mitad: media tensión, o media resistencia. Ninguno: sin flujo, limitador abierto, o la caja espera. Por encima: no es esa resistencia. Cortar, bloquear, averiguar por qué.',
  'outside.worst':
    'Una línea demasiado alta, o la tensión cae: cortar, bloquear. Buscar un terminal flojo en el camino, un límite equivocado, una carga en la línea equivocada.',
  'outside.protect': 'Cortar, bloquear, etiquetar. La bañera queda cortada hasta que actúe.',

  'read.pair': '{a} a {b}',
  'read.terminals': '{what} ({a} – {b})',
  'read.case': 'Borne de tierra – metal de {load}, conectada, sin tensión',
  'read.jumper': '{jumper}: {a} – {b}',
  'read.heater': '{load}, resistencia sola, conductores fuera de {terminals}',
  'read.winding': '{load}, desenchufada: {a} – {b}',
  'read.earth': 'Tierra: {a} a {all}, tubo del calefactor, metal de la caja. Anotar la mayor',
  'read.run': 'Tierra del tendido, con una punta de prueba larga puesta a cero: {a} – {b}',
  'read.bond': 'Borne equipotencial de la caja – metal de {load}',
  'read.bond-other': 'Borne equipotencial de la caja – otro metal al alcance. Anotar la mayor',
  'read.pressure-switch': 'Presostato, su clavija fuera, bomba parada',
  'read.flow-switch': 'Interruptor de flujo, su clavija fuera, bomba parada',
  'read.probe': '{probe}, desenchufada',
  'read.output': '{command}: {a} – {b}',
  'read.always-on': '{place}, siempre encendido: {a} – {b}',
  'read.amps': '{load}, {command}',
  'read.amps-always': '{load}, siempre encendida',
  'read.worst': 'Peor combinación, la línea más cargada',
  'read.volts-loaded': 'Tensión en la caja, peor combinación',
  'read.setting': '{setting}, leído de nuevo',
  'read.setting-heat': '{setting}, leído de nuevo antes de calentar',
  'read.trips': '{device} dispara',
  'read.heat-stops': 'La calefacción para cuando cae el flujo, tras',
  'read.flow-alarm': 'La caja muestra su alarma de flujo',
  'read.valves-open': 'Válvulas del calefactor abiertas del todo otra vez',
  'read.water': 'Agua indicada / termómetro',
  'read.time': 'Fecha y hora',
  'read.name': 'Hecho por',
  'read.call': 'A quién llamar: nombre y número',
  'read.worst-circuit': 'Peor combinación del {circuit}, la línea más cargada',
  'read.volts-circuit': 'Tensión del {circuit} en la caja, peor combinación',
  'expect.dead': '0 V',
  'expect.volts': '{volts:V} ({low:V} a {high:V})',
  'expect.low-volts': 'menos de {limit:V}',
  'expect.amps': '{amps} A ({low} A a {high} A)',
  'expect.amps-not-known': 'no conocido: {bound}; si no, parar',
  'expect.at-most': '{amps:A} como máximo',
  'expect.drop': 'a menos del 5 % de lo medido sin nada enchufado',
  'expect.joined': '{ohms} Ω como máximo',
  'expect.open': 'abierto (más de 1 MΩ)',
  'expect.above': 'más de {low:ohm}: cerca de {expected:ohm} de aislamiento',
  'expect.not-shown':
    'no demostrado. ¿Qué ohmios tiene {parts}? Cerca de 0 Ω: cortocircuito, parar',
  'expect.charges': '{reading}; antes sube, pues se carga un condensador: {loads}',
  'expect.ohms': '{ohms} Ω ({low} a {high})',
  'expect.earth': '{ohms} Ω como máximo (según el modelo {expected})',
  'expect.run': 'menos de {ohms} Ω (según el modelo {expected})',
  'expect.bond': 'menos de {ohms} Ω',
  'expect.seconds': '{seconds} s como máximo',
  'expect.probe':
    '{at10} a 10 °C, {at20} a 20, {at30} a 30, {at40} a 40, cada uno dentro del {band:percent}',
  'expect.value': '{value}',
  'expect.yes': 'sí',
  'expect.agree': 'a menos de 1 °C (2 °F)',
  'expect.breaker-first': '80 % de su disyuntor: averiguar cuál es; si no, parar',
  'expect.turned':
    '{volts} o menos de {limit:V}: uno de los dos conductores es la línea, el otro no',
}

export const SHEET_PAGE_ES: Table<typeof SHEET_PAGE_EN> = {
  title: 'Hoja de trabajo',
  for: 'para',
  by: 'por',
  region: 'Región',
  job: 'Trabajo',
  stop: 'Antes que nada',
  licence: 'Quién puede hacer esto',
  open: 'Abierto, supuesto, encontrado',
  supply: 'La alimentación',
  supplyStop: 'No le dé tensión.',
  supplyOpen:
    '{count:number} puntos de la alimentación no están demostrados: los nombra la página para el electricista.',
  remarks: 'Notas',
  board: 'La tarjeta, como se encuentra',
  device: 'El extremo del suministro',
  boardRest: 'Puentes no dibujados',
  fuses: 'Fusibles en la tarjeta',
  lines: 'Líneas',
  wires: 'Tabla de conductores',
  number: 'N.º',
  lead: 'Función',
  colour: 'Color',
  size: 'Calibre',
  far: 'Extremo de suministro',
  terminal: 'Borne',
  fixing: 'Fijación',
  note: 'Nota',
  done: 'Hecho',
  jumpers: 'Puentes',
  jumper: 'Puente',
  factory: 'De fábrica',
  planned: 'Planeado',
  action: 'Hacer',
  move: 'MOVER',
  leave: 'dejar',
  straps: 'Puentes en los motores',
  strap: 'Puente de motor de',
  found: 'Encontrado',
  settings: 'Ajustes',
  setting: 'Ajuste',
  setTo: 'Ajustar a',
  entered: 'Cómo',
  change: 'CAMBIAR',
  keep: 'como está',
  meter: 'Lo que debe indicar el medidor',
  load: 'Carga',
  output: 'Salida',
  between: 'Entre',
  volts: 'Tensión',
  amps: 'Corriente',
  low: 'mín.',
  nominal: 'nominal',
  high: 'máx.',
  alwaysOn: 'siempre encendido',
  together: 'Lo que puede funcionar junto',
  runs: 'Juntas',
  heats: 'Calienta',
  yes: 'sí',
  waits: 'espera',
  lid: 'Con tensión al apagar (para la tapa)',
  lidNone: 'Nada sigue con tensión al apagar.',
  tools: 'Traer',
  parts: 'Hacer o comprar',
  steps: 'Pasos',
  licensed: 'Aquí suele ser trabajo con licencia',
  reading: 'Lectura',
  shouldBe: 'Debe ser',
  read: 'Leído',
  outside: 'Fuera del margen',
  point: 'punto 1 de la primera página',
  ladder: 'Diagrama de escalera',
  ladderSays:
    'De izquierda a derecha en cada peldaño. El cobre con un punto está unido; las líneas que solo se cruzan, no. En una carga: borne, número de conductor, símbolo, número de conductor, borne. Dos cifras en un contacto: resistivo, motor.',
  ladderTable: 'La escalera en palabras',
  ladderElsewhere: 'peldaño {rung}',
  rung: 'Peldaño',
  runsThrough: 'De riel a riel',
  isFor: 'Para',
  joint: 'unión con el peldaño {rung}',
  openEnd: 'abierto',
  empty: 'vacío',
  earthed: 'tierra',
  wireIs: 'conductor {number}',
  restsClosed: 'cerrado en reposo',
  designations: 'Qué es cada designación',
  designation: 'Nombre',
  what: 'Qué es',
  rating: 'Valor nominal',
  own: 'En la tarjeta',
  rungs: 'Peldaños',
  photos: 'Mapa de fotos: qué estaba dónde antes',
  loadSheet: 'Hoja de cargas, para la tapa',
  plate: 'Placa',
  measured: 'Medido',
  terminals: 'Bornes, conductores',
  strapAndJumper: 'Puente de motor, puente',
  protects: 'Fusible, contacto',
  command: 'Orden',
  liveOff: 'Con tensión al apagar',
  live: 'CON TENSIÓN',
  strapAt: 'puente de motor {volts}',
  no: 'no',
  off: 'queda apagado',
  notLanded: 'aislado',
  notShown: 'NO demostrado que cumpla',
  changeFirst: 'Antes de que este plan cumpla, cambiar: {change}',
  changesFirst: 'Cambios en la bañera',
  partOnly: 'Una parte de la hoja de trabajo. La hoja completa prevalece sobre ella.',
}

export const COLOUR_ES: Table<typeof COLOUR_EN> = {
  black: 'negro',
  brown: 'marrón',
  red: 'rojo',
  orange: 'naranja',
  yellow: 'amarillo',
  green: 'verde',
  blue: 'azul',
  violet: 'violeta',
  grey: 'gris',
  white: 'blanco',
  pink: 'rosa',
  turquoise: 'turquesa',
  'green-yellow': 'verde/amarillo',
  bare: 'cobre desnudo',
}

export const LINE_ES: Table<typeof LINE_EN> = {
  leg1: 'línea 1 o línea',
  leg2: 'línea 2',
  leg3: 'línea 3',
  neutral: 'neutro',
  earth: 'tierra',
  hot: 'fase conmutada',
  low: 'baja velocidad',
  return: 'retorno',
  signal: 'señal',
}
