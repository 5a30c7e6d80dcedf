import type { SUPPLY_WEB_EN } from '../../en/web/supply.ts'
import type { Table } from '../../words.ts'

/** Lo que dice un código sobre el suministro. */
export const SUPPLY_WEB_ES: Table<typeof SUPPLY_WEB_EN> = {
  'supply.title': 'Suministro',
  'supply.open': 'Aún no se puede juzgar el suministro: faltan {count} respuestas.',
  'supply.no-power': 'No le dé tensión.',
  'supply.count-breaks': 'Lo que no cumple: {count}.',
  'supply.count-differ': 'Donde los expertos difieren: {count}.',
  'supply.count-open': 'Lo que falta por saber: {count}.',
  'supply.count-holds': 'Lo que cumple: {count}.',
  'supply.next': 'Responder ahora: {ask}',
  'supply.run': 'El recorrido, tramo a tramo',
  'supply.run-drawing': 'El recorrido del tablero a la bañera',
  'supply.yard-drawing': 'El lugar, visto desde arriba',
  'supply.yard': 'El lugar',
  'supply.panel': 'Tablero',
  'supply.tub': 'La bañera',
  'supply.length': '{length} de largo',
  'supply.whole-circuit': 'De todo el circuito',
  'supply.these-hold': 'Estos cumplen: {count}',
  'supply.breaks-title': 'Lo que no cumple',
  'supply.differ-title': 'Donde los expertos difieren',
  'supply.open-title': 'Lo que falta por saber',
  'supply.holds-title': 'Lo que cumple ({count})',
  'supply.rule': 'Regla {rule}',
  'supply.no-yard': 'El lugar alrededor de la bañera está sin levantar: no se dice nada de él.',
  'supply.to-yard': 'Decir qué hay alrededor',
  'supply.condition': 'Lo que dicen las seis lecturas',
  'supply.no-readings': 'No se tomó ninguna lectura en la bañera.',
  'supply.not-arriving': 'Una lectura es de un conductor que no llega a la bañera: {conductor}.',
  'supply.danger-neutral':
    'El neutro no hace contacto: corte en el tablero, y nada funciona hasta que lo haga.',
  'supply.danger-earth':
    'La tierra no hace contacto: un defecto pone el metal con tensión. Corte en el tablero.',
  'supply.danger-earth-carries-current':
    'La tierra lleva corriente: el metal puede tener tensión. Corte en el tablero.',
  'supply.danger-polarity': 'Fase y neutro están cambiados: lo que se apaga sigue con tensión.',
  'supply.danger-high-leg':
    'Una línea está demasiado alta respecto al neutro. Corte en el tablero.',
  'supply.danger-joint':
    'Un empalme se calienta con carga: se busca y se rehace antes de que funcione el calefactor.',
  'supply.danger-over-volts':
    'Las cargas a neutro reciben muchos más voltios de los que admiten. Corte en el tablero.',
  'supply.danger-neutral-to-earth':
    'El neutro está a voltios de la tierra: algo en él no hace contacto.',
  'supply.perhaps': 'Quizá: {danger}',
  'supply.no-condition': 'Estas lecturas no se pueden juzgar aquí.',
  'supply.to-readings': 'Anotar seis lecturas',
  'supply.more-readings': 'Ver o cambiar las lecturas',
  'supply.depends': 'De qué más depende',
  'supply.page': 'La página del electricista',
  'supply.page-help': 'Una página, solo cifras, en blanco y negro.',
  'supply.page-file': 'suministro',
  'supply.page-show': 'Ver la página del electricista',
  'supply.page-preview': 'La página del electricista tal como se imprimirá',
}
