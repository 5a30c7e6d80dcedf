import type { LINT_EN, LINT_TALK_EN } from '../en/lint.ts'
import type { Table } from '../words.ts'

export const LINT_ES: Table<typeof LINT_EN> = {
  'spot-taken':
    '{thing} y {other} están en el mismo punto. Medir ambos otra vez: el dibujo muestra uno solo.',
  'outside-board':
    '{thing} está en {x}, {y}, fuera de la tarjeta, que mide {width} × {height}. Las posiciones se cuentan desde su esquina superior izquierda.',
  'terminal-dead-end':
    'El borne {terminal} está en el nodo {node}, y nada más lo está. Dar al nodo el nombre que usa la pieza, el puente o el borne al que está unido.',
  'terminal-below-contact':
    'El borne {terminal} es de {rated}, y el contacto {contact}, que lo alimenta, de {carries}. Lo que cuenta es el borne.',
  'terminal-unused':
    'El borne {terminal} no está en ningún lugar, alimentación ni entrada de sensor: nadie conectará nada en él.',
  'connector-misses-terminal':
    'Ningún pin del conector {connector} es el borne {terminal} de “{place}”: su clavija dejaría fuera ese conductor.',
  'connector-pin-elsewhere':
    'El pin {pin} del conector {connector} es el borne {terminal}, que no es de “{place}”.',
  'supplied-plug-fits-no-socket':
    'La clavija de “{load}” es “{plug}”, y ninguna toma de la caja tiene esa forma: {sockets}. Palabras iguales significan que una clavija entra.',
  'place-socket-other-shape':
    'El conector {connector} de “{place}” es “{shape}”; ahí va “{load}” del embalaje, y su clavija es “{plug}”.',
  'connector-unused': 'El conector {connector} no es de ningún lugar.',
  'fuse-in-no-path':
    'Ninguna corriente va de una alimentación a una carga por {kind} {part}. Uno de sus dos nodos tiene mal el nombre, o se puentea a sí mismo.',
  'no-fuse-in-path':
    '“{place}” se alimenta de una línea sin pasar por ningún fusible ni disyuntor de la caja: solo lo protege el disyuntor aguas arriba.',
  'contact-never-closed': 'Ninguna orden cierra el contacto {contact}: queda abierto para siempre.',
  'contact-never-opened':
    'El contacto {contact} está cerrado en reposo y ninguna orden lo abre: queda cerrado para siempre.',
  'limit-contact-unsensed':
    'Ninguna entrada de sensor abre el contacto limitador {contact}. Correcto si es un termostato propio; si no, nombrarlo en “opens” de la entrada limitadora.',
  'command-in-no-profile': 'Ningún perfil tiene la orden {command}: la caja nunca la da.',
  'command-of-no-output': 'La orden {command} no es la de ninguna salida de ningún lugar.',
  'output-never-on':
    '“{place}”, {function}: ningún perfil la enciende, con ninguna alimentación. Seguirla desde la alimentación: fusible, contacto, nodo, borne, orden, perfil.',
  'output-dead-on-feed':
    '“{place}”, {function}: ningún perfil la enciende con la alimentación “{feed}”; con otra, sí.',
  'output-on-when-off':
    '“{place}”, {function}: está encendida con su orden {command} apagada. Estaban activas: {on}.',
  'output-without-return':
    '“{place}” tiene una salida y ningún retorno: la corriente no puede volver. Nombrar el retorno en “common”.',
  'transformer-volts':
    'El transformador {part} recibe {volts:V} con la alimentación “{feed}” en el mejor caso; su primario es para {plate:V}.',
  'electronics-dead':
    'La electrónica {part} no recibe su tensión con la alimentación “{feed}”: la caja no arrancaría.',
  'jumper-shorts-feed':
    'El puente {jumper} en “{position}” pone en cortocircuito la alimentación “{feed}”. Decir en “jumpers” de esa alimentación dónde debe estar, o corregir lo que une.',
  'feed-shorted':
    'La alimentación “{feed}” está en cortocircuito con todo apagado, estén donde estén los puentes.',
  'command-shorts-feed':
    'La alimentación “{feed}” queda en cortocircuito cuando están activas: {on}.',
  'feed-never-chosen':
    'La alimentación “{feed}” nunca se elige: donde serviría, sirve “{other}”. Tienen el mismo sistema y el mismo número de conductores.',
  'no-limit':
    'La caja tiene un calefactor y ningún contacto con “role: limit”: nada lo detiene si se calienta de más.',
  'limit-not-in-series':
    '“{place}” sigue encendido con todos los contactos limitadores abiertos: un contacto limitador debe estar en su camino.',
  'limit-opens-nothing':
    'Lo que abre “{input}” no conduce corriente con el calefactor encendido: el limitador no actuaría sobre nada.',
  'sensor-in-no-place':
    'Los bornes de “{input}” no son los de un lugar que admita una sonda: ahí no se puede conectar ninguna.',
  'profile-like-another':
    'El perfil {profile} hace lo mismo que {other}: los mismos modos con cada alimentación, el mismo filtrado.',
  'profile-never-heats':
    'El perfil {profile} tiene la orden de calentar y nunca calienta: ver “heatsWith” y “heatYieldsTo”.',
  'limit-like-another':
    'Un límite de corriente de {limit} deja funcionar lo mismo que {other}, con cada alimentación y perfil.',
  'limit-changes-nothing':
    'Todos los límites de corriente dejan funcionar lo mismo: sin “assumes” en una alimentación la caja no descarta nada por ellos.',
  'yield-never-fires':
    'La calefacción cede ante {command} con la alimentación “{feed}”, y nunca funcionan juntas en ningún perfil.',
  'yield-shed-anyway':
    'La calefacción cede ante {command} con la alimentación “{feed}”; sus amperios supuestos ya las separan con el mayor límite de corriente.',
  'exclusive-never-fires': 'Ningún perfil podría activar dos de estas juntas: {commands}.',
  'assumes-never-exceed':
    'Los amperios supuestos de la alimentación “{feed}” suman {most:A} como máximo; el límite de corriente más bajo deja tomar {least:A}. Nunca se descarta nada.',
  'too-many-commands':
    'El perfil {profile} tiene más de {most} órdenes: no se pueden recorrer sus modos, así que nada suyo se puede demostrar.',
  'not-all-tried':
    'Alimentación “{feed}”: se probaron {tried:number} de {of:number} o más estados. Lo que no se probó no está demostrado.',
  'lead-in-no-circuit': 'El conductor {lead} de “{load}” no está en ningún circuito suyo.',
  'plug-misses-lead': 'Ningún pin de la clavija de “{load}” es su conductor {lead}.',
  'line-never-arrives':
    'Lo que llega como {function} nunca alcanza el borne {terminal}, con todo cerrado.',
  'lines-joined': '{function} y {other} están unidos dentro del dispositivo, con todo cerrado.',
  'ground-fault-misses-line':
    'Con todas las piezas abiertas que suma {part}, {function} sigue pasando: el dispositivo no la vería.',
  'device-in-no-cable': 'Ningún cable llega al dispositivo {device} ni sale de él.',
  'nothing-moves-water':
    'Ninguna carga dice que mueve agua por el calefactor (“movesWaterThroughHeater”): no se hallará ninguna caja que caliente de forma segura.',
  'no-ground-fault-device': 'Ningún dispositivo de este suministro tiene una parte diferencial.',
  'still-unknown': 'Aún no se conoce: {reason}. Un plan dará una cota, o lo preguntará.',
}

export const LINT_TALK_ES: Table<typeof LINT_TALK_EN> = {
  clean: '{file}: limpio.',
  counted: '{file}: {warnings:number} por corregir, {notices:number} por saber.',
  refused: '{file} aún no se puede usar: {errors:number} por corregir antes.',
  kinds:
    'Puede ser una caja de control, un dispositivo de suministro o un levantamiento: “schema: {kinds}”.',
  drawn: 'La tarjeta está dibujada en {file}.',
  undrawn: 'La tarjeta no se dibujó: {why}.',
  watching: 'Vigilando {file}. Guardarlo para verlo de nuevo; Ctrl-C termina.',
  gone: '{file} ya no está; se espera a que vuelva.',
  stopped: 'Detenido.',
  'watch-json': '--watch es para personas y --json para programas: dar uno de los dos.',
  'out-alone': '--out dice dónde dibuja --watch la tarjeta: dar también --watch.',
  'same-file': '{file} es la propia descripción: nombrar otro archivo para el dibujo.',
  'warning-mark': 'ADVERTENCIA',
  'notice-mark': 'AVISO',
}
