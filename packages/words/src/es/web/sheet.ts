import type { SHEET_WEB_EN } from '../../en/web/sheet.ts'
import type { Table } from '../../words.ts'

/** La hoja de trabajo en la página. */
export const SHEET_WEB_ES: Table<typeof SHEET_WEB_EN> = {
  'sheet.title': 'Hoja',
  'sheet.whole': 'La hoja entera',
  'sheet.lid': 'Hoja de la tapa',
  'sheet.parts': 'Qué imprimir',
  'sheet.part-front': 'Primera página',
  'sheet.part-bring': 'Qué llevar',
  'sheet.part-board': 'Tarjetas',
  'sheet.part-ladder': 'Escalera',
  'sheet.part-wires': 'Tabla de conductores',
  'sheet.part-tables': 'Tablas',
  'sheet.part-steps': 'Pasos',
  'sheet.part-load-sheet': 'Hoja de cargas',
  'sheet.print': 'Imprimir',
  'sheet.save': 'Guardar como archivo',
  'sheet.preview': 'La hoja tal como se imprimirá',
  'sheet.no-plan': 'Aún no hay plan tomado, así que no hay hoja.',
  'sheet.job-file': 'El trabajo entero',
  'sheet.job-file-help':
    'Un archivo con todo: levantamiento, plan, marcas, lecturas, fotos. Otra persona puede abrirlo, seguir y devolverlo: las dos copias se reúnen.',
}
