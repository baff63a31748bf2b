import { type Condition, choice } from '../calculation.js';

/** What is weighed out, with the mass that carries one mole of calcium or magnesium, or one equivalent of alkalinity. */
export const chemical = choice({
  name: 'chemical',
  words: ['chemical', 'powder', 'salt'],
  ask: 'Which chemical is it? The label names its water: a dihydrate and an anhydrous powder differ by a third.',
  options: {
    sodium_bicarbonate: {
      label: 'sodium bicarbonate',
      words: ['baking soda', 'bicarbonate', 'bicarb', 'bicarbonate of soda', 'nahco3', 'sodium hydrogen carbonate'],
      gives: { M: 0.084006 },
    },
    sodium_carbonate: {
      label: 'sodium carbonate, anhydrous',
      words: ['soda ash', 'sodium carbonate', 'carbonate', 'baked soda', 'baked baking soda', 'na2co3'],
      gives: { M: 0.105988 / 2 },
    },
    calcium_chloride_dihydrate: {
      label: 'calcium chloride dihydrate',
      words: [
        'cacl2 dihydrate',
        'dihydrate',
        '77 calcium chloride',
        'calcium chloride 77',
        'calcium chloride flakes',
        'cacl2 2h2o',
      ],
      gives: { M: 0.147008 },
    },
    calcium_chloride_anhydrous: {
      label: 'calcium chloride, anhydrous',
      words: [
        'anhydrous calcium chloride',
        'anhydrous cacl2',
        'cacl2 anhydrous',
        'calcium chloride pellets',
        '94 calcium chloride',
        'calcium chloride 94',
      ],
      gives: { M: 0.110978 },
    },
    magnesium_chloride: {
      label: 'magnesium chloride hexahydrate',
      words: ['magnesium chloride', 'mgcl2', 'mag chloride'],
      gives: { M: 0.203295 },
    },
    magnesium_sulfate: {
      label: 'magnesium sulfate heptahydrate',
      words: ['magnesium sulfate', 'magnesium sulphate', 'epsom', 'epsom salt', 'mgso4'],
      gives: { M: 0.246466 },
    },
    magnesium_mix: {
      label: 'magnesium chloride and sulfate, 8 to 1',
      words: ['magnesium mix', 'both magnesium salts', 'magnesium chloride and sulfate', '8 to 1', '8 parts to 1'],
    },
  },
  symbols: { M: 'kg/mol' },
  source:
    'stoichiometry; molar masses: IUPAC 2021 abridged atomic masses, per mole of metal or per equivalent of alkalinity',
});

const is = (option: string): Condition => ({ is: ['chemical', option] });

export const raisesAlkalinity: Condition = { any: [is('sodium_bicarbonate'), is('sodium_carbonate')] };
export const isCarbonate = is('sodium_carbonate');
export const isBicarbonate = is('sodium_bicarbonate');
export const raisesCalcium: Condition = {
  any: [is('calcium_chloride_dihydrate'), is('calcium_chloride_anhydrous')],
};
export const isMagnesiumMix = is('magnesium_mix');
export const isMagnesiumSulfate = is('magnesium_sulfate');
export const raisesMagnesium: Condition = {
  any: [is('magnesium_chloride'), isMagnesiumSulfate, isMagnesiumMix],
};
export const raisesMetal: Condition = { any: [raisesCalcium, raisesMagnesium] };
