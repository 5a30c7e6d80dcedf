import type { FINDINGS_EN } from '../../en/web/findings.ts'
import type { Table } from '../../words.ts'

/** Lo hallado en el cableado y lo que detiene todo trabajo. */
export const FINDINGS_ES: Table<typeof FINDINGS_EN> = {
  'findings.title': 'Hallazgos',
  'findings.no-plan': 'Aún no hay plan tomado. Los hallazgos son de un conexionado.',
  'findings.to-match': 'Elegir una caja',
  'findings.holds': 'Cumple.',
  'findings.holds-provided': 'Cumple, siempre que se atienda lo dicho abajo.',
  'findings.breaks': 'No cumple. No le dé tensión.',
  'findings.as-planned': 'Juzgado según el plan en {box}.',
  'findings.as-built':
    'Juzgado como se encontró: {count} extremos o puentes no están donde dice el plan.',
  'findings.none': 'No se halló nada.',
  'findings.proof':
    '{modes} modos y {transitions} pasos entre ellos, {solves} circuitos resueltos. La ley de corrientes se cumple hasta {kcl} de la corriente mayor.',
  'findings.rule': 'Regla {rule}',
  'findings.survey-changed':
    'El levantamiento cambió después de tomar este plan. Lo que se ve aquí se juzga con el levantamiento de ahora; los cables añadidos desde entonces están sueltos y los quitados no figuran. Tome un plan de nuevo:',
  'stop.title': 'Detener todo trabajo',
  'stop.which': '¿Qué ocurre?',
  'stop.shock': 'Cualquier descarga u hormigueo',
  'stop.burning': 'Olor, humo o algo derretido',
  'stop.hot-water':
    'Agua más caliente que lo ajustado con el calefactor encendido: más de 2 °F (1 °C) de sobra durante minutos, o más de 106 °F (41 °C)',
  'stop.bypass':
    'Una protección puenteada: limitador, prueba de flujo, termostato o interruptor diferencial',
  'stop.stands': 'ALTO: {what}',
  'stop.do-shock':
    'Nadie en el agua ni junto a ella. No toque bañera, tubos ni caja. Corte en el disyuntor del tablero, no en la bañera, y bloquéelo. Verifique la ausencia de tensión antes de que nadie se acerque. Quien recibió la descarga debe ver a un médico.',
  'stop.do-burning':
    'Corte en el disyuntor del tablero y aléjese. Si hay fuego: salga y llame a los bomberos; no eche agua. Deje los paneles cerrados hasta que esté frío y se haya verificado la ausencia de tensión.',
  'stop.do-hot-water':
    'Todos fuera, tapa abierta, tensión cortada en el disyuntor. No entre a probar. La calefacción queda apagada hasta comprobar el limitador, los contactos y las sondas.',
  'stop.do-bypass':
    'Corte la tensión y bloquee. Quite el puente. Nada se pone en marcha, tampoco para una prueba, hasta que la protección funcione y se haya comprobado.',
  'stop.clear': 'Este alto solo se levanta diciendo qué se halló.',
  'stop.found': 'Qué se halló y qué se hizo',
  'stop.found-hint': 'En una frase: al menos {least} letras.',
  'stop.clear-button': 'Está hallado y reparado: levantar el alto',
  'stop.disagree': 'Alguien levantó este alto mientras otra persona lo daba. Sigue en pie.',
  'stop.history': 'Altos hasta ahora',
  'stop.cleared': '{what}: levantado por {by}, {at}. Se halló: {found}',
  'stop.raised': '{what}: dado por {by}, {at}',
}
