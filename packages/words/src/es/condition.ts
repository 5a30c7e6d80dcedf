import type { CONDITION_EN, CONDITION_PAGE_EN } from '../en/condition.ts'
import type { Table } from '../words.ts'

/** What a supply is found to be, from readings at the tub. */
export const CONDITION_ES: Table<typeof CONDITION_EN> = {
  sound: 'La alimentación está bien.',
  'split-phase': 'Es una alimentación de 120/240 V, no la que dice el levantamiento.',
  wye: 'Son dos líneas de una estrella de 120/208 V: un calefactor de 240 V da allí tres cuartos.',
  'high-leg':
    'Una línea es la alta de un triángulo: no sirve a ninguna bañera. Apagar; decide un electricista.',
  'same-leg':
    'Los dos vivos vienen de una misma línea del cuadro: lo que necesita dos no recibe nada.',
  off: 'Un dispositivo del camino está apagado o ha disparado.',
  'leg-open':
    'Una línea está abierta. Lo que parece llevar vuelve por una carga entre las dos líneas.',
  'neutral-open':
    'El neutro está abierto: las cargas a neutro reciben de más o de menos. Apagar en el tablero.',
  'neutral-poor':
    'El neutro tiene una mala unión: las cargas a neutro reciben de más o de menos. Apagar en el tablero.',
  joint: 'Una línea tiene una mala unión: allí se calienta con carga.',
  'earth-open': 'La tierra está abierta: una falta pone el metal en tensión. Apagar en el tablero.',
  'neutral-earth-swapped':
    'Neutro y tierra están cambiados: la tierra lleva corriente. Apagar en el tablero.',
  'line-neutral-swapped': 'Línea y neutro están cambiados.',
}

/** Words around the condition of a supply. */
export const CONDITION_PAGE_ES: Table<typeof CONDITION_PAGE_EN> = {
  failed: 'Estas lecturas no pueden juzgarse: una es de un conductor que no llega a la bañera.',
  'may-sound': 'una alimentación en orden',
  'may-split-phase': '120/240 V en lugar de lo levantado',
  'may-wye': 'dos líneas de una estrella',
  'may-high-leg': 'una línea alta',
  'may-same-leg': 'los dos vivos en una línea',
  'may-off': 'un dispositivo apagado',
  'may-leg-open': 'una línea abierta',
  'may-neutral-open': 'un neutro abierto',
  'may-neutral-poor': 'un mal neutro',
  'may-joint': 'una mala unión en una línea',
  'may-earth-open': 'una tierra abierta',
  'may-neutral-earth-swapped': 'neutro y tierra cambiados',
  'may-line-neutral-swapped': 'línea y neutro cambiados',
  stop: 'ALTO: {danger} Cortado en el tablero y bloqueado; ha de mirarlo un electricista.',
  maybe: 'Posible y aún no demostrado: {danger}',
  'danger-neutral':
    'El neutro no hace contacto: corte en el tablero, y nada funciona hasta que lo haga.',
  'danger-earth':
    'La tierra no hace contacto: un defecto pone el metal con tensión. Corte en el tablero.',
  'danger-earth-carries-current':
    'La tierra lleva corriente: el metal puede tener tensión. Corte en el tablero.',
  'danger-polarity': 'Fase y neutro están cambiados: lo que se apaga sigue con tensión.',
  'danger-high-leg': 'Una línea está demasiado alta respecto al neutro. Corte en el tablero.',
  'danger-joint':
    'Un empalme se calienta con carga: se busca y se rehace antes de que funcione el calefactor.',
  'danger-over-volts':
    'Las cargas a neutro reciben muchos más voltios de los que admiten. Corte en el tablero.',
  'danger-neutral-to-earth': 'El neutro está a voltios de la tierra: algo en él no hace contacto.',
  title: 'Qué dicen las lecturas',
  unnamed: 'Las lecturas admiten más de una de estas:',
  none: 'Nada conocido da estas lecturas. Mirar el medidor y dónde estaban sus puntas.',
  'off-band':
    'La alimentación está bien salvo sus voltios: de {from:percent} a {to:percent} del nominal.',
  fits: '{fault} ({where})',
  'fits-ohms': '{fault} ({where}, de {from:ohm} a {to:ohm})',
  'fits-bare': '{fault}',
  'where-ohms': '{where}: de {from:ohm} a {to:ohm}',
  'next-volts': 'Leer ahora, {situation}: de {from} a {to}.',
  'next-amps': 'Leer ahora, {situation}: los amperios del calefactor.',
  beside:
    'Lo que los voltios en la bañera no pueden mostrar: si la tierra está entera. Probarlo por ohmios, sin tensión.',
  'situation-loads-off': 'con las cargas entre líneas apagadas',
  'situation-idle': 'en reposo',
  'situation-heating': 'con el calefactor en marcha',
  'place-source': 'antes de {thing}',
  'place-device': 'en {thing}',
  'place-cable': 'dentro de {thing}',
  caution:
    'Las lecturas dentro de una caja abierta son solo para quien tiene un medidor homologado y ya lo ha usado con la red; nunca por teléfono con quien lo hace por primera vez.',
}
