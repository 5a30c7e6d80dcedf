import type { COLD_ASK_EN, METER_EN } from '../en/cold.ts'
import type { Table } from '../words.ts'

export const COLD_ASK_ES: Table<typeof COLD_ASK_EN> = {
  element:
    '¿Cuánto toma {of}, en vatios o amperios, o cuánto mide en frío? Escribirlo en su circuito "{name}".',
  winding:
    '¿Cuánto mide {of} en frío entre los conductores de su circuito "{name}", con sus puentes como se encontraron? Escribirlo ahí como "ohms".',
  probe: '¿Qué curva tiene {of}? Escribirla como su "curve".',
  'load-electronics':
    '¿Cuánto mide {of} en frío? Escribirlo como "ohms" en su circuito "{name}"; o desenchufar y medir sin ello.',
  primary:
    '¿Cuánto mide el primario de {name} en {of}, según su fabricante? Escribirlo ahí como "primaryOhms".',
  secondary:
    '¿Cuánto mide el secundario de {name} en {of}? Ningún archivo lo dice: soltar uno de sus conductores y medir sin él.',
  electronics:
    '¿Cuánto mide la electrónica {name} de {of}? Ningún archivo lo dice: soltarla y medir sin ella.',
  'ground-fault':
    '¿Cuánto mide la electrónica diferencial {name} de {of}? Ningún archivo lo dice: soltar ahí los conductores y medir sin ella.',
  semiconductor: '¿Cuánto deja pasar el triac {name} de {of}? Ningún archivo lo dice.',
  input:
    '¿Cuánto mide la entrada de sensor "{name}" de {of}? Ningún archivo lo dice: desenchufar ahí y medir la sonda sola.',
}

export const METER_ES: Table<typeof METER_EN> = {
  points: '{a} a {b}, sin tensión',
  plugged: 'Enchufado: {loads}.',
  'plugged-none': 'Enchufado: nada.',
  'supply-off': 'Suministro suelto de la caja.',
  'supply-open': 'Suministro conectado, su seccionador abierto.',
  'supply-closed': 'Suministro conectado, su seccionador cerrado, sin tensión aguas arriba.',
  celsius: 'Sondas a {celsius:C}.',
  open: 'abierto (más de 1 MΩ)',
  ohms: '{expected:ohm} ({low:ohm} a {high:ohm}, incluido el medidor)',
  above: 'más de {low:ohm}: solo los une el aislamiento, cerca de {expected:ohm}',
  'not-shown': 'no demostrado: puede ser cualquier valor de {least:ohm} a {greatest:ohm}.',
  'not-shown-open': 'no demostrado: puede ser cualquier valor desde {least:ohm} hasta abierto.',
  charges: 'El medidor empieza bajo y sube, pues se carga un condensador: {loads}. Esperar.',
  joined: 'Los une el cobre o un contacto cerrado: no hay aislamiento que probar.',
  insulated:
    '{volts:V} continuos: cerca de {expected:ohm} si está sano (hasta {least:ohm} de mínimo).',
  apart: '{volts:V} continuos: nada de lo descrito los une.',
  limits:
    'Más de {good:ohm} es bueno, para una sola pieza. Más de {least:ohm} basta. Menos de {suspect:ohm} es sospechoso; entre ambos, secar y probar de nuevo.',
  unplug: 'Primero desenchufar o soltar:',
  dies: '  {part}: le llega la tensión de prueba, y se destruye.',
  falsifies: '  {part}: deja pasar corriente, y la prueba mide mal.',
  both: '  {part}: se destruye, y deja pasar corriente.',
  nothing: 'Nada de lo descrito tiene que desenchufarse para ello.',
  suppressors:
    'Los supresores de sobretensiones no figuran en ningún archivo: soltarlos también, pues por diseño miden bajo.',
  discharge: 'Descargar tras la prueba, pues un condensador conserva su carga: {loads}.',
}
