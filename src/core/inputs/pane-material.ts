import { type ChoiceInput, choice } from '../calculation.js';

interface Properties {
  /** Units of the symbols that each material gives. */
  readonly symbols: Readonly<Record<string, string>>;
  readonly glass: Readonly<Record<string, number>>;
  readonly acrylic: Readonly<Record<string, number>>;
  readonly source: string;
}

/** What the panes are made of; a calculation says which of its properties it needs. */
export const paneMaterial = (properties?: Properties): ChoiceInput =>
  choice({
    name: 'pane material',
    words: ['glass or acrylic', 'made of', 'material'],
    ask: 'Glass or acrylic?',
    default: 'glass',
    options: {
      glass: { label: 'glass', words: ['glass', 'glas'], ...(properties && { gives: properties.glass }) },
      acrylic: {
        label: 'acrylic',
        words: [
          'acrylic',
          'acryl',
          'perspex',
          'plexi',
          'plexiglas',
          'plexiglass',
          'pmma',
          'plastic tank',
          'plastic aquarium',
          'of plastic',
        ],
        ...(properties && { gives: properties.acrylic }),
      },
    },
    ...(properties && { symbols: properties.symbols, source: properties.source }),
    profile: 'display.material',
  });
