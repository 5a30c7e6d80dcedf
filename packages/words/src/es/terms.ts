import type {
  DIAGNOSED_EN,
  DIAGNOSTIC_EN,
  REVIEW_EN,
  SEVERITY_EN,
  VERDICT_EN,
} from '../en/terms.ts'
import type { Table } from '../words.ts'

/*
 * The words chosen, one for one thing, for Latin America and Spain alike; instructions stand in the
 * infinitive. docs/nomenclature.md has the same table with what is not said.
 *
 *   tub                  bañera                   survey                levantamiento
 *   control box, box     caja de control, caja    board                 tarjeta
 *   supply; feed         suministro; alimentación panel                 tablero
 *   breaker              disyuntor                disconnect            seccionador
 *   ground-fault device  interruptor diferencial  to trip, to reset     disparar, rearmar
 *   leg 1, leg 2         línea 1, línea 2         neutral, earth        neutro, tierra
 *   hot, return          fase, retorno            mains                 red
 *   live, dead           con tensión, sin tensión to prove dead         verificar ausencia de tensión
 *   off, on (supply)     cortar, dar tensión      off, on (a load)      apagar, encender
 *   to lock, tag         bloquear, etiqueta       open (a switch)       abierto
 *   cable                cable                    wire, lead, conductor conductor
 *   terminal             borne                    lug (crimped)         terminal
 *   plug, socket         clavija, toma            outlet                tomacorriente
 *   to land, to plug in  conectar, enchufar       to cap, cap           aislar, capuchón
 *   jumper, strap        puente, puente de motor  to bridge             puentear
 *   torque, size         par de apriete, calibre  rated                 nominal
 *   plate                placa                    landing               conexionado
 *   load, place          carga, lugar             command               orden
 *   profile, setting     perfil, ajuste           current limit         límite de corriente
 *   heater, pump         calefactor, bomba        circulation pump      bomba de circulación
 *   blower, ozonator     soplador, ozonizador     keypad, probe         teclado, sonda
 *   flow, flow proof     flujo, prueba de flujo   limit contact         contacto limitador
 *   bond                 unión equipotencial      union of a pipe       unión roscada
 *   finding, change      hallazgo, cambio         holds, breaks         cumple, no cumple
 *   bay, carton          compartimento, embalaje  lid, blanking plate   tapa, tapa ciega
 *   ladder, rung, rail   escalera, peldaño, riel  fault                 defecto
 *   low voltage          muy baja tensión         (“baja tensión” alone is mains in half the world)
 *
 * Keys and values of the files stay as the files write them.
 */

export const SEVERITY_ES: Table<typeof SEVERITY_EN> = {
  danger: 'PELIGRO',
  warning: 'ADVERTENCIA',
  caution: 'ATENCIÓN',
  notice: 'AVISO',
}

export const VERDICT_ES: Table<typeof VERDICT_EN> = {
  holds: 'cumple',
  breaks: 'no cumple',
  provided: 'cumple con condiciones',
  'not-shown': 'no demostrado',
  'experts-differ': 'los expertos difieren',
}

export const DIAGNOSTIC_ES: Table<typeof DIAGNOSTIC_EN> = {
  'not-readable': 'no se puede leer: {is}. Puede ser: {may}.',
  'too-large': 'es demasiado grande: {is}. Puede tener {may}.',
  'yaml-syntax': 'aquí no es YAML: {is}. Se espera {may}.',
  'too-many-aliases': 'se repite demasiadas veces: {is}. Puede tener {may}.',
  'unknown-key': 'clave desconocida {is}. Puede ser: {may}.',
  'missing-key': '{path} es {is}. Se espera {may}.',
  'wrong-type': '{path} es {is}. Se espera {may}.',
  'wrong-value': '{path} es {is}. Puede ser: {may}.',
  'wrong-quantity': '{path} es {is}. Puede ser {may}.',
  'unknown-name': '{path} es {is}. Puede ser {may}.',
  'duplicate-name': '{path} es {is}. Se espera {may}.',
  contradiction: '{path} es {is}. Puede ser: {may}.',
  'other-job':
    'este conexionado es para {is}; aquí hay {may}. Entregar el conexionado de estos, o los datos del suyo.',
  implausible: '{path} es {is}, algo que casi nunca se da; lo habitual es {may}. Comprobarlo.',
}

export const DIAGNOSED_ES: Table<typeof DIAGNOSED_EN> = {
  warning: 'advertencia: {told}',
  'did-you-mean': '¿Se quiso decir "{near}"?',
  'whole-file': 'el archivo',
}

export const REVIEW_ES: Table<typeof REVIEW_EN> = {
  mark: 'traducción sin revisar',
  notice:
    'Traducción aún sin revisar por una persona cualificada; en caso de duda vale el texto inglés.',
}
