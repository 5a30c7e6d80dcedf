import type { BoxChanges, Finding } from '@tubwright/core'
import { readControlBox, SKELETON_KINDS, writeSkeleton } from '@tubwright/formats'
import { describe, expect, it } from 'vitest'
import { SPANISH } from '../src/es/index.ts'
import { ENGLISH } from '../src/index.ts'
import { spoken } from '../src/spoken.ts'

const finding = (message: string, params: Finding['params'], rest: Partial<Finding> = {}) =>
  SPANISH.tellFinding({
    rule: 'VERIFY-0',
    message,
    params,
    verdict: 'breaks',
    severity: 'danger',
    subjects: [],
    ...rest,
  })

const match = (message: string, params: Finding['params']) =>
  SPANISH.tellMatch({ message, subjects: [], params })

const ofLoad = { load: 'x', label: 'X', cost: 1 }

describe('word for word', () => {
  it.each([
    [
      'Cortocircuito franco: gf.P2 conduciría 1335 A (1200 A nominales) y dispara al instante. Con todo apagado.',
      () => finding('dead-short', { part: 'gf.P2', amps: 1335.2, rated: 1200 }, { on: [] }),
    ],
    [
      'pump A (borne) conduce 12.4 A; su corriente nominal es 12 A. Peor con: heat.',
      () =>
        finding(
          'above-rating',
          { label: 'pump A', kind: 'terminal', amps: 12.4, rated: 12 },
          { on: ['heat'] },
        ),
    ],
    [
      'x.a es un conductor de neutro (verde/amarillo) y está a la tensión de línea: la próxima mano lo tomará por uno sin tensión.',
      () =>
        finding('neutral-carries-line', {
          end: 'x.a',
          function: 'neutral',
          colour: 'green-yellow',
        }),
    ],
    [
      'Lo que puede funcionar a la vez toma 35.6 A de una línea; el límite de corriente permite 32 A. No ocurre mientras Bomba ≤ 9 A.',
      () =>
        finding(
          'draw-above-limit',
          { amps: 35.6, limit: 32 },
          { provided: [{ load: 'p', circuit: 'c', label: 'Bomba', atMost: 9 }] },
        ),
    ],
    [
      'El suministro es de 120 V, una línea; la caja admite 120/240 V, dos líneas.',
      () => match('not-for-system', { system: 'single-leg', offers: 'split-phase' }),
    ],
    [
      'Necesita neutro; a la bañera llega línea 1, línea 2, tierra.',
      () => match('conductor-missing', { missing: 'neutral', here: 'leg1, leg2, earth' }),
    ],
    [
      'P necesita 120 o 240 V; ahí ofrece 12 V.',
      () => match('wrong-volts', { load: 'P', plate: '120 or 240', offers: '12' }),
    ],
    [
      'X: un soplador con conductor de tierra, en lugar de lo que hay, sin él.',
      () =>
        SPANISH.tellChange({
          kind: 'replace',
          of: 'blower',
          from: { earthed: false },
          to: { earthed: true },
          ...ofLoad,
        }),
    ],
    [
      'advertencia: supply.breaker es "500 A", algo que casi nunca se da; lo habitual es IS. Comprobarlo.',
      () =>
        SPANISH.tellDiagnostic({
          code: 'implausible',
          severity: 'warning',
          path: ['supply', 'breaker'],
          is: '"500 A"',
          may: 'IS',
        }),
    ],
    [
      'línea 1 y línea 2 están unidos dentro del dispositivo, con todo cerrado.',
      () =>
        SPANISH.tellLint({
          id: 'lines-joined',
          severity: 'warning',
          path: [],
          params: { function: 'leg1', other: 'leg2' },
        }),
    ],
    [
      'Aún no se conoce: no medido. Un plan dará una cota, o lo preguntará.',
      () =>
        SPANISH.tellLint({
          id: 'still-unknown',
          severity: 'notice',
          path: [],
          params: { reason: 'not measured' },
        }),
    ],
    [
      'la electrónica K de Caja',
      () => SPANISH.tellColdPart({ kind: 'electronics', subject: 'box.K', of: 'Caja', name: 'K' }),
    ],
    [
      'el mayor disyuntor detrás del cual puede estar',
      () => SPANISH.fieldText('control-box.largestBreaker'),
    ],
  ])('%s', (text, tell) => {
    expect(tell()).toBe(text)
  })

  it('says where a search stopped', () => {
    const stopped: BoxChanges = {
      outcome: 'limit-reached',
      of: 'sets',
      limit: 9,
      search: { considered: 9 },
    }
    expect(SPANISH.tellOutcome(stopped)).toEqual([
      'Detenido tras 9 conjuntos de cambios: eso no demuestra nada.',
    ])
  })
})

describe('words of the files', () => {
  it('become those of the language, and labels stay', () => {
    const params = { kind: 'fuse', load: 'fuse', other: 'leg1', amps: 3, colour: 'of my own' }
    expect(spoken(SPANISH.values, 'any', params)).toEqual({ ...params, kind: 'fusible' })
  })

  it('stay as they are in English', () => {
    const params = { kind: 'circulation-pump', here: 'leg1, second-earth', plate: '120 or 240' }
    expect(spoken(ENGLISH.values, 'any', params)).toEqual(params)
  })

  it('take no member of every object for a word', () => {
    const params = { kind: 'constructor', list: 'toString' }
    expect(spoken(SPANISH.values, 'any', params)).toEqual(params)
  })
})

describe('an insulation test in Spanish', () => {
  it('names what is unplugged for it', () => {
    const part = { kind: 'electronics', subject: 'box.E1', of: 'Caja', name: 'E1' } as const
    const unplug = [{ part, dies: true, falsifies: false }]
    const told = SPANISH.tellInsulation(
      { kind: 'insulated', volts: 500, unplug, charges: ['p'] },
      () => 'Bomba',
    )
    expect(told).toContain('Primero desenchufar o soltar:')
    expect(told).toContain(
      '  la electrónica E1 de Caja: le llega la tensión de prueba, y se destruye.',
    )
    expect(told.at(-1)).toBe(
      'Descargar tras la prueba, pues un condensador conserva su carga: Bomba.',
    )
  })
})

describe('a skeleton in Spanish', () => {
  it.each(Object.entries(SKELETON_KINDS))('%s can be read back', (id, answers) => {
    const text = writeSkeleton({ id, ...answers }, SPANISH.fieldText, SPANISH.skeleton)
    expect(text).toContain('Una caja de control, por describir')
    const { value, diagnostics } = readControlBox(`${id}.yaml`, text)
    expect(diagnostics).toEqual([])
    expect(value?.label).toBe('Mi caja')
  })

  it('has fields that stand on one line', () => {
    for (const text of Object.values(SPANISH.fields)) expect(text).not.toMatch(/\n|#/u)
  })
})
