import type { MATCH_EN } from '../en/match.ts'
import type { Table } from '../words.ts'

export const MATCH_ES: Table<typeof MATCH_EN> = {
  'not-for-region': 'No lleva marca para {region} (tiene {offers}).',
  'not-for-frequency': 'El suministro tiene {hertz:Hz}; la caja es para {offers}.',
  'not-for-system': 'El suministro es de {system}; la caja admite {offers}.',
  'conductor-missing': 'Necesita {missing}; a la bañera llega {here}.',
  'high-leg':
    'Aquí no sirve ninguna caja: una línea de este suministro está a unos 208 V del neutro. Pedir a un electricista dos líneas que estén a 120 V cada una.',
  'conductor-too-small':
    'Ninguna caja sirve tal como está: {conductor} de {cable} es de {size}, demasiado delgado para un disyuntor de {breaker:A}. Hay que cambiar el tendido o el disyuntor.',
  'terminal-does-not-hold':
    'Su borne “{terminal}” admite de {from} a {to}; {conductor} es de {size}.',
  'no-earth-lead':
    'Ninguna caja sirve tal como está: {load} no tiene conductor de tierra ni doble aislamiento. Un defecto dejaría su metal con tensión.',
  'breaker-too-large':
    'Puede estar detrás de {largest:A} como máximo; el disyuntor es de {breaker:A}.',
  'no-setting-low-enough':
    'Su límite de corriente más bajo deja tomar {least:A}; el 80 % del disyuntor son {share:A}.',
  'too-big': 'Mide {width:mm} × {height:mm} × {depth:mm}: no entra en el compartimento.',
  'no-place': 'No tiene lugar para {load} ({kind}).',
  'probe-does-not-suit': 'Ninguna entrada suya lee {load} con su curva ({curve}).',
  'too-many-amps': '{load} consume {amps:A}; sus contactos conducen {rated:A} como máximo.',
  'wrong-volts': '{load} necesita {plate} V; ahí ofrece {offers} V.',
  'too-few-places':
    'De {loads} cargas, sondas y teclado incluidos, no todas tienen un lugar propio.',
  'no-profile-moves-water':
    'En ningún perfil de equipo funciona la bomba que alimenta el calefactor mientras calienta.',
  'ask-breaker': '¿Qué disyuntor alimenta la bañera?',
  'ask-amps': '¿Cuánto consume {load} ({circuit})? Leer la placa o medir.',
  'narrow-amps': '¿Cuánto consume exactamente {load} ({circuit})?',
  'ask-keypad':
    '¿Qué teclado va en {box}? Tiene lugar para uno, su embalaje no trae ninguno y el levantamiento no nombra ninguno.',
  'ask-keypad-maker':
    '¿Está hecho {load} para {box}? Su embalaje no trae teclado, y el de otro fabricante no se puede usar.',
  'needs-region': 'una marca para {region}',
  'needs-frequency': 'una caja para {hertz:Hz}',
  'needs-system': 'un suministro de {system}',
  'brings-conductors': 'una alimentación que trae solo {here}',
  'brings-high-leg': 'un triángulo (delta) con una línea alta',
  'brings-small-conductor': '{cable} con {conductor} de {size} detrás de {breaker:A}',
  'brings-size': '{conductor} de {size}',
  'needs-no-earth': '{load} sin tierra',
  'has-breaker': 'un disyuntor de {breaker:A}',
  'needs-current-limit': 'un límite de corriente de {share:A} o menos',
  'has-room': 'un compartimento de {width:mm} × {height:mm} × {depth:mm}',
  'needs-load-served': '{load}, {plate} V',
  'needs-probe-read': '{load}: lectura con su curva{plate}',
  'needs-own-places': 'un lugar para cada una de {count} cargas',
  'needs-moving-water': 'agua que pase por el calefactor mientras calienta',
}
