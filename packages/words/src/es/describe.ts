import type { DESCRIBE_EN, SKELETON_EN } from '../en/describe.ts'
import type { LinedTable, Table } from '../words.ts'

export const SKELETON_ES: LinedTable<typeof SKELETON_EN> = {
  head: [
    'Una caja de control, por describir según su etiqueta de cableado. Es válida tal como está: cada',
    'nombre es real y cada valor inventado. Ir de arriba abajo, poner en cada valor lo que dice la',
    'etiqueta, quitar y añadir líneas, y ejecutar lint después de cada parte.',
    'Lo que sigue a # explica. Las cantidades llevan su unidad: 20 A, 240 V, 14 AWG, 120 mm.',
  ],
  each: 'Uno por línea:',
  more: 'Todo lo que puede figurar aquí: tubwright describe --schema control-box',
  label: 'Mi caja',
  maker: 'Su fabricante',
  note: 'Lo que el instalador deba saber de ella.',
  limitEntered: 'interruptores pequeños 2 y 3',
  afterReset: 'El perfil y el límite de corriente se conservan.',
  jumpers: [
    'Donde la etiqueta muestre un puente, escribirlo en lugar de [], cada palabra como aquí:',
    '- id: J1',
    '  label: puente de tensión de la bomba A',
    '  positions:',
    '    - { id: v120, label: 120 V, joins: [[RETURN-A, N]] }',
    '    - { id: v240, label: 240 V, joins: [[RETURN-A, L2]] }',
    '  factory: v240',
    '  rated: 20 A',
  ],
}

export const DESCRIBE_ES: Table<typeof DESCRIBE_EN> = {
  written: 'Una caja para empezar: {file}',
  next: 'Después:',
  'next-edit': 'editarla, con la etiqueta al lado, mientras esto dibuja y comprueba cada guardado:',
  'next-lint': 'comprobarla una vez más:',
  'next-plan': 'planear una bañera con ella:',
  exists: '{file} ya existe y no se sobrescribió: dar otro nombre con --id.',
  'no-folder': 'la carpeta {folder} no se puede crear: {why}.',
  'wrong-word': '{option} {word}: puede ser {may}.',
  'wrong-id': '--id {word}: una letra, luego letras, cifras o guiones, 40 como máximo.',
  'two-families': '--feeds {feeds}: una caja es para líneas de 120 V o para 230 V, no para ambas.',
  twice: '{option}: “{word}” figura dos veces.',
  'too-many-pumps': '--outputs nombra más de {most:number} bombas: escribir las demás a mano.',
  'profile-needs': '--profiles {profile} necesita {output} entre --outputs.',
}
