import plates from '../../../data/plate-coefficients.json' with { type: 'json' };
import { model } from '../model.js';

type Point = readonly [x: number, y: number];

/** Straight lines between the points of a table; not a number outside it, since nothing is known there. */
function between(points: readonly Point[], x: number): number {
  const next = points.findIndex(([x1]) => x <= x1 * (1 + 1e-12));
  if (next < 0 || x < points[0]![0] * (1 - 1e-12)) return Number.NaN;
  const [x1, y1] = points[next]!;
  const [x0, y0] = points[Math.max(0, next - 1)]!;
  return x1 === x0 ? y1 : y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
}

const hydrostatic = (column: Exclude<keyof (typeof plates.hydrostatic)[number], 'length_to_height'>): Point[] =>
  plates.hydrostatic.map((row): Point => [row.length_to_height, row[column]]);

function tableModel(name: string, points: readonly Point[], meaning: string, source: string) {
  return model({
    name,
    args: { r: '1' },
    unit: '1',
    meaning: `${meaning}; straight lines between ${points.map(([x, y]) => `${x}: ${y}`).join(', ')}`,
    source,
    apply: (r = Number.NaN) => between(points, r),
  });
}

/** Nominal thicknesses of float glass [m], EN 572-2. */
const SHEETS = [2, 3, 4, 5, 6, 8, 10, 12, 15, 19, 25].map((mm) => mm / 1000);

export const plateModels = [
  tableModel(
    'beta_top_free',
    hydrostatic('beta_top_free'),
    'largest bending stress in a pane under water whose top edge is free, r = length over water height',
    plates.hydrostatic_source,
  ),
  tableModel(
    'beta_top_supported',
    hydrostatic('beta_top_supported'),
    'largest bending stress in a pane under water held along its whole top edge, r = length over water height',
    plates.hydrostatic_source,
  ),
  tableModel(
    'alpha_top_free',
    hydrostatic('alpha_top_free'),
    'deflection of the middle of the free top edge of a pane under water, r = length over water height',
    plates.hydrostatic_source,
  ),
  tableModel(
    'alpha_top_supported',
    hydrostatic('alpha_top_supported'),
    'largest deflection of a pane under water held along its whole top edge, r = length over water height',
    plates.hydrostatic_source,
  ),
  tableModel(
    'beta_four_edges',
    plates.uniform_four_edges.map(({ long_to_short, beta }): Point => [long_to_short, beta]),
    'largest bending stress in an evenly loaded pane held at its four edges, r = longer over shorter side',
    plates.uniform_source,
  ),
  model({
    name: 'next_sheet',
    args: { t: 'm' },
    unit: 'm',
    meaning: `thinnest float glass that is at least t thick: ${SHEETS.map((sheet) => sheet * 1000).join(', ')} mm; unknown above`,
    source: 'nominal thicknesses of float glass: EN 572-2',
    apply: (t = Number.NaN) => SHEETS.find((sheet) => sheet >= t - 1e-9) ?? Number.NaN,
  }),
];
