import type { Calculation, ProfileKey } from '../core/calculation.js';
import type { Given, GivenValue } from '../core/outcome.js';
import type { StoredValue } from './ports.js';

/** A number of a tank as it is kept. */
export const toStored = (value: GivenValue): StoredValue =>
  'si' in value ? { si: value.si, ...(value.unit === undefined ? {} : { unit: value.unit }) } : { text: value.text };

/** A number from a tank's page. */
export const fromStored = ({ si, unit, text = '' }: StoredValue): GivenValue =>
  si === undefined ? { text, from: 'profile' } : { si, from: 'profile', ...(unit === undefined ? {} : { unit }) };

/** What a tank has for the inputs of a calculation. @param valueAt the number that it keeps under a key, if any */
export const inputsOfTank = ({ inputs }: Calculation, valueAt: (key: ProfileKey) => GivenValue | undefined): Given =>
  Object.fromEntries(
    Object.entries(inputs).flatMap(([id, { profile }]) => {
      const value = profile && valueAt(profile);
      return value ? [[id, value]] : [];
    }),
  );
