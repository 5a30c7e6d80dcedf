/** Loads in VA, area in ft². `shared` is after 10 kVA, `service` in A at 240 V. */
export const DWELLINGS = [
  {
    name: 'D2(a)',
    loads: { area: 1500, circuits: 3, plates: [12_000, 2500, 1200, 5000] },
    heating: [[{ kind: 'four heaters or more', va: 9000 }], [{ kind: 'cooling', va: 1380 }]],
    general: 29_700,
    shared: 17_880,
    climate: 3600,
    sum: 21_480,
  },
  {
    name: 'D2(b)',
    loads: { area: 1500, circuits: 3, plates: [4000, 4000, 5100, 4500, 1200, 5000] },
    heating: [[{ kind: 'cooling', va: 10_080 }], [{ kind: 'fewer than four heaters', va: 1500 }]],
    general: 32_800,
    shared: 19_120,
    climate: 10_080,
    sum: 29_200,
  },
  {
    name: 'D2(c)',
    loads: { area: 2000, circuits: 3, plates: [12_000, 4500, 1200, 5000] },
    heating: [
      [
        { kind: 'heat pump', va: 5760 },
        { kind: 'supplementary or central heat', va: 15_000 },
      ],
    ],
    general: 33_200,
    shared: 19_280,
    climate: 15_510,
    sum: 34_790,
  },
] as const

/** What the annex says of the service [A]: computed, or the standard one above. */
export const SERVICES = [
  { name: 'D2(b)', computed: 122 },
  { name: 'D2(c)', standard: 150 },
] as const
