import type { SURVEY_RUN_EN } from '../../en/web/survey-run.ts'
import type { Table } from '../../words.ts'

/** El levantamiento: cómo está unido el recorrido, y cuánto falta de cada grupo. */
export const SURVEY_RUN_ES: Table<typeof SURVEY_RUN_EN> = {
  'survey.not-begun': 'sin empezar',
  'survey.supply-asks': 'Preguntas que hace además un veredicto sobre el suministro: {count}.',
  'survey.supply-asks-none': 'Un veredicto sobre el suministro no pregunta nada más.',
  'survey.to-supply': 'Ver qué pregunta',
  'survey.withdrawn-count': 'Quitados: {count}',
  'survey.run-first': 'Primero se pregunta qué hay entre tablero y bañera.',
  'survey.wires-on': '¿Qué conductores siguen desde él?',
  'survey.as-marked-from': 'Donde empieza: ¿está cada conductor donde dice su marca?',
  'survey.as-marked-to': 'Donde termina: ¿está cada conductor donde dice su marca?',
  'survey.piece-towards': 'Hasta: {device}',
  'survey.device-unsaid': 'Un dispositivo, sin decir cuál',
  'survey.between': '{from} → {to}',
  'survey.between-which': '¿Entre cuáles?',
  'survey.put-between':
    '{device} se puso aquí: {piece}. El largo de los dos tramos, y dónde está cada conductor en él, se pregunta con los conductores hasta la bañera.',
  'survey.undo': 'Deshacer',
  'survey.go-on-to-tub': 'Un tramo desde él hasta la bañera',
  'survey.loose-nothing-in': '{what} no está unido a nada: ¿qué conductor entra?',
  'survey.loose-nothing-on': 'Ningún conductor sigue desde {what}.',
  'survey.loose-no-beginning': '{what} no cuelga de nada: ¿dónde empieza?',
  'survey.loose-no-end': '{what} no lleva a nada: ¿dónde termina?',
  'survey.loose-in-a-ring': '{what} vuelve a donde empieza: ¿dónde termina?',
  'survey.loose-own-circuit': 'Donde empieza un segundo circuito, eso se dice en «Más sobre esto».',
}
