import { caution } from '../calculation.js';

export const carryItEmpty = caution(
  'caution',
  'Carry it empty, hands under the bottom pane, never by the brace or the rim; gloves with grip and closed shoes; one person counts, and the way is clear before anybody lifts.',
);

export const measureTheWay = caution(
  'note',
  'Fingers, handles and packing add 5 to 10 cm (2 to 4 in); skirting, banisters, radiators and lamps take as much away. Cut a cardboard template and walk the whole way, lift and stairs included.',
);

/** Glass stood on another face than its bottom. */
export const padTheFace = caution(
  'caution',
  'A glass tank on its side or end stands on one pane’s edge: lay it on foam over a board, take bulkheads and glass covers off first, and ask the maker whether it may be turned.',
);
