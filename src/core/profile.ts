import type { Calculation, Input, ProfileKey } from './calculation.js';
import { calculations } from './calculations/index.js';

/** A number that a tank's page keeps, and the calculations that use it. */
export interface ProfileField {
  readonly key: ProfileKey;
  readonly section: string;
  readonly input: Input;
  readonly usedBy: readonly string[];
}

function collect(): Map<string, ProfileField> {
  const fields = new Map<string, ProfileField>();
  for (const calculation of calculations as readonly Calculation[]) {
    for (const input of Object.values(calculation.inputs)) {
      if (input.profile === undefined) continue;
      const known = fields.get(input.profile);
      fields.set(input.profile, {
        key: input.profile,
        section: input.profile.split('.')[0]!,
        input: known
          ? { ...known.input, words: [...new Set([...(known.input.words ?? []), ...(input.words ?? [])])] }
          : input,
        usedBy: [...(known?.usedBy ?? []), calculation.id],
      });
    }
  }
  return fields;
}

/** Every number that a tank can keep, by key; what the calculations ask for decides. */
export const profileFields: ReadonlyMap<string, ProfileField> = collect();

/** The fields as the inputs of one big question, for reading a statement about a tank. */
export const profileInputs: Readonly<Record<string, Input>> = Object.fromEntries(
  [...profileFields].map(([key, { input }]) => [key, { ...input, needed: false }]),
);
