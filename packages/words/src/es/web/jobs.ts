import type { JOBS_EN } from '../../en/web/jobs.ts'
import type { Table } from '../../words.ts'

/** La lista de trabajos. */
export const JOBS_ES: Table<typeof JOBS_EN> = {
  'jobs.title': 'Trabajos',
  'jobs.new': 'Trabajo nuevo',
  'jobs.search': 'Buscar en los trabajos',
  'jobs.none': 'Aún no hay trabajos. Uno nuevo pide cerca de una docena de respuestas.',
  'jobs.none-found': 'Ningún trabajo tiene esas palabras en su nombre.',
  'jobs.open-file': 'Abrir un archivo de trabajo o un levantamiento',
  'jobs.demo': 'Tienda de prueba',
  'jobs.demo-help':
    'Bañeras y cajas inventadas para probarlo todo. Nunca se mezclan con trabajos reales.',
  'jobs.demo-reset': 'Vaciar la tienda de prueba',
  'jobs.demo-reset-sure': '¿Tirar todo lo hecho en la tienda de prueba?',
  'jobs.demo-tub': 'Empezar con una bañera de prueba',
  'jobs.begin': 'Empezar',
  'jobs.untitled': 'Bañera sin nombre',
  'jobs.stopped': 'ALTO: ningún trabajo hasta levantarlo',
  'jobs.entries': '{entries} anotaciones, última {at}',
  'jobs.merged': 'Reunido: {added} anotaciones nuevas.',
  'jobs.refused': 'No se puede abrir este archivo: {why}',
  'jobs.default-title': 'Bañera del {date}',
  'jobs.save-file': 'Guardar el trabajo como archivo',
  'jobs.save-survey': 'Guardar el levantamiento como YAML',
}
