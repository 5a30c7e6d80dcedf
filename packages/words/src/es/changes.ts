import type {
  ANOTHER_EN,
  CHANGE_EN,
  CHANGES_EN,
  CURRENT_EN,
  PLAN_CHANGES_EN,
  SPEC_EN,
  STOPPED_EN,
  SUPPLY_EN,
  TO_GET_EN,
} from '../en/changes.ts'
import type { Table } from '../words.ts'

export const CHANGE_ES: Table<typeof CHANGE_EN> = {
  replace: '{load}: {another} de {to}, en lugar de lo que hay, de {from}.',
  'replace-earthed': '{load}: {another} con conductor de tierra, en lugar de lo que hay, sin él.',
  'replace-earthed-too':
    '{load}: {another} de {to}, con conductor de tierra, en lugar de lo que hay, de {from}.',
  'from-carton': '{load}: en su lugar, “{to}” del embalaje.',
  'new-keypad':
    '{load}: teclado nuevo, “{to}” del embalaje; el de otro fabricante nunca se reutiliza.',
  'new-keypad-and-plate':
    '{load}: teclado nuevo y tapa ciega; “{to}” del embalaje, pues el de otro fabricante nunca se reutiliza.',
  'leave-out': 'Prescindir de {load}: queda sin suministro, con sus conductores aislados.',
  adapter: '{load}: un adaptador; su clavija ({plug}) no entra en ninguna toma que la admita.',
  'adapter-bare': '{load}: una clavija para sus conductores sin conector.',
  'blanking-plate':
    'Teclado: una tapa ciega; el recorte es de {width:mm} × {height:mm}, el teclado nuevo cubre {ownWidth:mm} × {ownHeight:mm}.',
}

export const SPEC_ES: Table<typeof SPEC_EN> = {
  volts: '{value:V}',
  amps: '{value:A} como máximo',
  current: '{value}',
  curve: 'curva {value}',
  'found-amps': '{value:A}',
}

export const CURRENT_ES: Table<typeof CURRENT_EN> = {
  ac: 'corriente alterna',
  dc: 'corriente continua',
}

export const ANOTHER_ES: Table<typeof ANOTHER_EN> = {
  pump: 'una bomba',
  'circulation-pump': 'una bomba de circulación',
  heater: 'un calefactor',
  ozonator: 'un ozonizador',
  blower: 'un soplador',
  light: 'una luz',
  audio: 'un amplificador',
  sanitiser: 'un equipo de desinfección',
  keypad: 'un teclado',
  probe: 'una sonda',
}

export const SUPPLY_ES: Table<typeof SUPPLY_EN> = {
  'not-for-region': 'un lugar cuya marca lleve ({offers})',
  'not-for-frequency': 'un suministro de {offers}',
  'not-for-system': 'un suministro de {offers}',
  'conductor-missing': 'un tendido que traiga también {missing}',
  'high-leg': 'dos líneas que estén a 120 V cada una',
  'conductor-too-small':
    'un conductor {conductor} más grueso en {cable}, o un disyuntor más pequeño',
  'terminal-does-not-hold': 'un conductor {conductor} de {from} a {to}',
  'breaker-too-large': 'un disyuntor de {largest:A} como máximo, con un tendido adecuado',
  'no-setting-low-enough': 'un disyuntor mayor, con un tendido adecuado',
}

export const STOPPED_ES: Table<typeof STOPPED_EN> = {
  sets: 'Detenido tras {limit} conjuntos de cambios: eso no demuestra nada.',
  plans: 'Detenido tras planear {limit} conjuntos de cambios: eso no demuestra nada.',
  solves: 'Detenido tras {limit} conexionados del conjunto más barato: eso no demuestra nada.',
}

export const CHANGES_ES: Table<typeof CHANGES_EN> = {
  holds: 'Cambios más baratos con los que un plan cumple, costo {cost} (relativo):',
  waits:
    'Cambios más baratos, costo {cost} (relativo); si un plan cumple depende de una respuesta:',
  'not-tried':
    'Cambios más baratos según sus requisitos, costo {cost} (relativo); aún no hay plan:',
  along: 'Junto con ellos:',
  'only-supply': 'Solo ayudaría un cambio del suministro: {which}.',
  'not-supply-alone': 'Un cambio del suministro no bastaría: {which}.',
  'nothing-helps': 'Ningún cambio en las cargas ayudaría: {which}',
  unmended: 'Ningún cambio ayudaría: {which}',
  none: 'Ningún cambio ayudaría: se probaron todos los conjuntos ({considered}).',
  'no-plan':
    'Según sus requisitos serviría con cambios ({tried} probados), pero ninguno lleva a un plan que cumpla.',
}

export const TO_GET_ES: Table<typeof TO_GET_EN> = {
  replace: 'COMPRAR',
  adapter: 'COMPRAR O HACER',
  'blanking-plate': 'COMPRAR O HACER',
  'from-carton': 'EN EL EMBALAJE',
  'leave-out': 'NADA QUE COMPRAR',
}

export const PLAN_CHANGES_ES: Table<typeof PLAN_CHANGES_EN> = {
  heading: 'Primero, cambiar en la bañera',
  'as-changed': 'El plan es de la bañera después de estos cambios, no como se encontró.',
}

export const CHANGED_NOTE_ES = 'Solo después de estos cambios en la bañera: {changes}'
