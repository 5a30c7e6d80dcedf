import type { CANNOT_EN, SETTLED_BY_EN } from '../en/plan.ts'
import type { Table } from '../words.ts'

export const CANNOT_ES: Table<typeof CANNOT_EN> = {
  'not-for-system': 'ninguna de sus alimentaciones admite el sistema de este suministro.',
  'conductor-missing': 'su alimentación necesita un conductor que no llega a la bañera.',
  'no-setting-low-enough':
    'su límite de corriente más bajo está por encima del 80 % del disyuntor.',
  'too-few-places':
    'no todas las cargas tienen un lugar propio que las admita: no queda ninguno para {loads}.',
  'volts-not-together':
    'ninguna posición de sus puentes da a todas las cargas a la vez la tensión de su placa.',
}

export const SETTLED_BY_ES: Table<typeof SETTLED_BY_EN> = {
  'ask-breaker':
    'Escribirlo en el levantamiento, por ejemplo "breaker: 50 A" bajo "supply"; vale un intervalo o uno de varios valores.',
}
