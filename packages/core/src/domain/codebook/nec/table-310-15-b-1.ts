import type { Banded } from './banded.ts'
import { bandIn } from './banded.ts'
import type { HeatColumn } from './table-310-16.ts'

type AmbientBand = { readonly upTo: number } & Readonly<Partial<Record<HeatColumn, number>>>

/** Bands of whole degrees; what lies between two, such as 30.4 °C, belongs to the hotter one. */
export const TABLE_310_15_B_1: Banded<AmbientBand> = {
  standard: 'NEC',
  edition: '2020',
  clause: 'table 310.15(B)(1), based on 30 °C',
  read: 'page',
  bandUnit: '°C',
  unit: '1',
  bands: [
    { upTo: 10, '60 °C': 1.29, '75 °C': 1.2, '90 °C': 1.15 },
    { upTo: 15, '60 °C': 1.22, '75 °C': 1.15, '90 °C': 1.12 },
    { upTo: 20, '60 °C': 1.15, '75 °C': 1.11, '90 °C': 1.08 },
    { upTo: 25, '60 °C': 1.08, '75 °C': 1.05, '90 °C': 1.04 },
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
    { upTo: 85, '90 °C': 0.29 },
  ],
}

/**
 * Share of the printed ampacity that is left at an ambient temperature, by insulation.
 *
 * @param celsius - of the air [°C], up to 85
 * @returns [1]; above 1 below 26 °C; undefined where the conductor may not be used
 * @source [NEC-310.15-B-1] table 310.15(B)(1)
 */
export const ambientFactor = (celsius: number, column: HeatColumn): number | undefined =>
  bandIn(TABLE_310_15_B_1, celsius)?.[column]
