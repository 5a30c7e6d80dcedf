import type { Banded } from '../nec/banded.ts'
import { bandIn } from '../nec/banded.ts'
import type { HeatColumn } from '../nec/table-310-16.ts'

type AmbientBand = { readonly upTo: number } & Readonly<Partial<Record<HeatColumn, number>>>

/** Printed at each temperature, from 35 °C on; what lies between two belongs to the hotter one. */
export const CE_TABLE_5A: Banded<AmbientBand> = {
  standard: 'CE Code',
  edition: '2024',
  clause: 'table 5A',
  read: 'page',
  bandUnit: '°C',
  unit: '1',
  bands: [
    { upTo: 30, '60 °C': 1, '75 °C': 1, '90 °C': 1 },
    { upTo: 35, '60 °C': 0.91, '75 °C': 0.94, '90 °C': 0.96 },
    { upTo: 40, '60 °C': 0.82, '75 °C': 0.88, '90 °C': 0.91 },
    { upTo: 45, '60 °C': 0.71, '75 °C': 0.82, '90 °C': 0.87 },
    { upTo: 50, '60 °C': 0.58, '75 °C': 0.75, '90 °C': 0.82 },
    { upTo: 55, '60 °C': 0.41, '75 °C': 0.67, '90 °C': 0.76 },
    { upTo: 60, '75 °C': 0.58, '90 °C': 0.71 },
    { upTo: 65, '75 °C': 0.47, '90 °C': 0.65 },
    { upTo: 70, '75 °C': 0.33, '90 °C': 0.58 },
    { upTo: 75, '90 °C': 0.5 },
    { upTo: 80, '90 °C': 0.41 },
  ],
}

/**
 * Share of the printed ampacity that is left at an ambient temperature, by insulation.
 *
 * Nothing is added below 30 °C, unlike in the NEC.
 *
 * @param celsius - of the air [°C], up to 80
 * @returns [1]; undefined where the conductor may not be used
 * @source [CEC-T5A] table 5A
 */
export const ceAmbientFactor = (celsius: number, column: HeatColumn): number | undefined =>
  bandIn(CE_TABLE_5A, celsius)?.[column]
