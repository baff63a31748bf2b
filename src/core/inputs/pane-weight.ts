import { quantity } from '../calculation.js';
import { glassThickness } from './display.js';
import { paneMaterial } from './pane-material.js';

/** Panes that carry water: nothing is no pane, as it may be where only volumes count. */
export const carryingPane = quantity('length', {
  ...glassThickness,
  range: [3, 40, 'mm'],
  slips: [
    [40.000001, 400, 'Panes are measured in millimetres or fractions of an inch: 12 mm, 1/2 in.'],
    [0, 2.999999, 'That is thinner than any pane that holds water: check the unit.'],
  ],
});

const DENSITIES = {
  symbols: { rho_m: 'kg/m^3' },
  glass: { rho_m: 2500 },
  acrylic: { rho_m: 1190 },
  source: 'density of float glass: EN 572-1; of cast acrylic: ISO 7823-1 (both from memory)',
};

/** What the panes are made of, and how dense that is where it is neither plain glass nor acrylic: `rho_p` before `rho_m`. */
export const paneDensityInputs = {
  material: paneMaterial(DENSITIES),
  density: quantity('density', {
    symbol: 'rho_p',
    name: 'density of the panes',
    words: ['density', 'pane density'],
    range: [900, 4000, 'kg/m3'],
    needed: false,
    ask: 'How dense are the panes?',
    example: '2500 kg/m3 for glass',
  }),
};

/** Open box: outside less inside is the panes, whichever way they lap. */
export const PANES = 'L*W*H - (L - 2*t)*(W - 2*t)*(H - t_b)';
